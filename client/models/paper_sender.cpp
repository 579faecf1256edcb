#include "client/models/paper_sender.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <stdexcept>

namespace heatkeep {
namespace {

constexpr int kPrinterPatience = 20'000;  // ms

void SendToPrinter(const QString& printer, const QString& file) {
  QProcess lp;
  lp.start("lp", {"-d", printer, file});
  if (lp.waitForFinished(kPrinterPatience) && lp.exitStatus() == QProcess::NormalExit && lp.exitCode() == 0) return;
  const QString said = QString::fromLocal8Bit(lp.readAllStandardError()).simplified();
  throw std::runtime_error("printer " + printer.toStdString() + ": " + (said.isEmpty() ? lp.errorString() : said).toStdString());
}

}  // namespace

PaperWay WayFor(const QString& kind, const QString& printer, const QString& folder) {
  const QString into = !printer.isEmpty() ? QDir::tempPath()
      : !folder.isEmpty()                 ? folder
                                          : QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + "/papers";
  if (!QDir().mkpath(into)) throw std::runtime_error("the folder " + into.toStdString() + " cannot be made");
  return {printer, into + "/" + kind + "-" + QDateTime::currentDateTimeUtc().toString("yyyyMMdd-hhmmss-zzz") + ".pdf"};
}

void Send(const PaperWay& way, const std::function<void(const std::string& file)>& write) {
  write(way.file.toStdString());
  if (way.printer.isEmpty()) return;
  SendToPrinter(way.printer, way.file);
  QFile::remove(way.file);
}

}  // namespace heatkeep
