#include "reports/paint_session.h"

#include <QCoreApplication>
#include <QFontDatabase>
#include <QGuiApplication>
#include <algorithm>
#include <cmath>
#include <iostream>
#include <stdexcept>

namespace heatkeep {
namespace {

// Qt keeps a reference to argc and argv for as long as the application lives.
int session_argc = 1;
char session_name[] = "heatkeep";
char* session_argv[] = {session_name, nullptr};

// Offscreen, nothing is kept in a runtime folder: that there is none is no news to the reader of a report.
void WithoutRuntimeFolderTalk(QtMsgType, const QMessageLogContext&, const QString& text) {
  if (!text.contains(QLatin1String("XDG_RUNTIME_DIR"))) std::cerr << text.toStdString() << '\n';
}

}  // namespace

void PaintSession() {
  static const bool ready = [] {
    if (QCoreApplication::instance() == nullptr) {
      if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
      const QtMessageHandler before = qInstallMessageHandler(WithoutRuntimeFolderTalk);
      static QGuiApplication application(session_argc, session_argv);
      qInstallMessageHandler(before);
    } else if (qobject_cast<QGuiApplication*>(QCoreApplication::instance()) == nullptr) {
      throw std::runtime_error("reports: the program runs a QCoreApplication; painting needs a QGuiApplication");
    }
    const QStringList families = QFontDatabase::families();
    for (const char* family : {"DejaVu Sans", "DejaVu Sans Mono"})
      if (!families.contains(QLatin1String(family)))
        throw std::runtime_error(std::string("reports: the font ") + family + " is missing; install the DejaVu fonts (fonts-dejavu-core)");
    return true;
  }();
  static_cast<void>(ready);
}

QFont PaintFont(Face face, double pixels, bool bold) {
  QFont font(face == Face::Mono ? QStringLiteral("DejaVu Sans Mono") : QStringLiteral("DejaVu Sans"));
  font.setStyleHint(face == Face::Mono ? QFont::TypeWriter : QFont::SansSerif);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setPixelSize(std::max(1, static_cast<int>(std::lround(pixels))));
  font.setBold(bold);
  font.setLetterSpacing(QFont::AbsoluteSpacing,
                        0.05);  // no fi ligatures: a text read out of the PDF is the text
  return font;
}

}  // namespace heatkeep
