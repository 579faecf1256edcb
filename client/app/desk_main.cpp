// The program `heatkeep-desk`: the windows. Usage as `heatkeep`: a book of one's own, or --book, --home, --person; PG* works too.
#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QLibraryInfo>
#include <QSettings>
#include <QStandardPaths>
#include <QTranslator>
#include <cstdio>

#include "client/app/desk_options.h"
#include "client/book/book_error.h"
#include "client/book/own_book.h"
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

}  // namespace

int main(int argc, char** argv) {
  // what is only said needs no display
  for (int i = 1; i < argc; ++i)
    if (const QByteArray word = argv[i]; word == "--help" || word == "-h" || word == "--version" || word == "-v") qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  QApplication::setApplicationName("heatkeep-desk");
  QApplication::setOrganizationName("heatkeep");
  QApplication::setApplicationVersion(HEATKEEP_VERSION);
  QCommandLineParser parser;
  AddOptions(parser);
  parser.process(application);
  try {
    const QString file = parser.isSet("settings") ? parser.value("settings") : QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) + "/desk.ini";
    QSettings kept(file, QSettings::IniFormat);
    const DeskSettings settings = DeskSettings::Load(kept);
    QTranslator words;
    const QLocale locale = settings.language.isEmpty() ? QLocale::system() : QLocale(settings.language);
    if (words.load(locale, "heatkeep", "_", ":/translations")) QApplication::installTranslator(&words);
    ApplyLook(application, settings.look);
    const BookLocation location = FindBook(Chosen(parser));
    OpenOrMakeBook(location);
    BookLink link([location] { return OpenBook(location); });
    DeskWindow window(link, kept, AllStations);
    link.Start();
    window.show();
    return QApplication::exec();
  } catch (const BookError& error) {
    std::fprintf(stderr, "heatkeep-desk: %s\n", error.what());
    return 4;
  } catch (const std::exception& error) {
    std::fprintf(stderr, "heatkeep-desk: %s\n", error.what());
    return 2;
  }
}
