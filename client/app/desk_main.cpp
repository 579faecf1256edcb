// The program `heatkeep-desk`: the windows. Usage as `heatkeep`: a book of one's own, or --book, --home, --person; PG* works too.
#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QLibraryInfo>
#include <QSettings>
#include <QStandardPaths>
#include <QTranslator>
#include <cstdio>
#include <iostream>
#include <optional>

#include "client/app/desk_options.h"
#include "client/book/book_error.h"
#include "client/command/demo_shop.h"
#include "client/command/ready_book.h"
#include "client/models/book_link.h"
#include "client/stations/all_stations.h"
#include "client/stations/desk_look.h"
#include "client/stations/desk_window.h"

namespace {

using namespace heatkeep;

BookChoice Chosen(const QCommandLineParser& parser) {
  return {parser.value("book").toStdString(), parser.value("person").toStdString(), parser.value("home").toStdString()};
}

void AddOptions(QCommandLineParser& parser) {
  parser.setApplicationDescription("The desk of Heatkeep: one station a role. Example: heatkeep-desk --book service=shop");
  parser.addHelpOption();
  parser.addVersionOption();
  for (const auto& [name, takes, help] : kDeskOptions) parser.addOption({name, help, takes});
}

// The file of this desk's settings; known before there is an application, since it says how large everything is.
QString SettingsFile(int argc, char** argv) {
  for (int i = 1; i < argc; ++i) {
    const QString word = QString::fromLocal8Bit(argv[i]);
    if (word == "--settings" && i + 1 < argc) return QString::fromLocal8Bit(argv[i + 1]);
    if (word.startsWith("--settings=")) return word.mid(11);
  }
  return QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) + "/desk.ini";
}

}  // namespace

int main(int argc, char** argv) {
  // what is only said needs no display
  for (int i = 1; i < argc; ++i)
    if (const QByteArray word = argv[i]; word == "--help" || word == "-h" || word == "--version" || word == "-v")
      qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication::setApplicationName("heatkeep-desk");
  QApplication::setOrganizationName("heatkeep");
  QApplication::setApplicationVersion(HEATKEEP_VERSION);
  const QString file = SettingsFile(argc, argv);
  if (const int scale = DeskSettings::Load(QSettings(file, QSettings::IniFormat)).scale;
      scale != 100 && qEnvironmentVariableIsEmpty("QT_SCALE_FACTOR"))
    qputenv("QT_SCALE_FACTOR", QByteArray::number(scale / 100.0));
  QApplication application(argc, argv);
  QCommandLineParser parser;
  AddOptions(parser);
  parser.process(application);
  try {
    QSettings kept(file, QSettings::IniFormat);
    const DeskSettings settings = DeskSettings::Load(kept);
    QTranslator words;
    const QLocale locale = settings.language.isEmpty() ? QLocale::system() : QLocale(settings.language);
    if (words.load(locale, "heatkeep", "_", ":/translations")) QApplication::installTranslator(&words);
    ApplyLook(application, settings.look);
    BookLocation location = FindBook(Chosen(parser));
    const BookLocation own = location;
    const std::filesystem::path demo = location.own ? command::DemoHome(location.home) : std::filesystem::path();
    for (;;) {
      std::optional<bool> to_demo;
      const FirstBook first{.own = location.own,
                            .demo = location.own && location.home == demo,
                            .make_demo =
                                [demo](const FirstBook::Tell& tell) {
                                  command::MakeDemo(demo, [&tell](int done, int all, const std::string& step) {
                                    tell(done, all, QString::fromStdString(step));
                                  });
                                },
                            .open =
                                [&to_demo](bool open) {
                                  to_demo = open;
                                  QApplication::quit();
                                }};
      try {
        command::OpenReadyBook(location, std::cerr);
      } catch (const DbError& error) {
        // a shop's book that cannot be reached now: the window says so, a saw goes on with what it kept, and it is tried again all the time
        if (location.own || error.kind != DbError::Kind::Unreachable) throw;
      }
      BookLink link([location] { return OpenBook(location); });
      DeskWindow window(link, kept, AllStations, first);
      link.Start();
      window.show();
      const int ended = QApplication::exec();
      if (!to_demo) return ended;
      location.home = *to_demo ? demo : own.home;
    }
  } catch (const BookError& error) {
    std::fprintf(stderr, "heatkeep-desk: %s\n", error.what());
    return 4;
  } catch (const std::exception& error) {
    std::fprintf(stderr, "heatkeep-desk: %s\n", error.what());
    return 2;
  }
}
