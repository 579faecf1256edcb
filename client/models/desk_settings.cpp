#include "client/models/desk_settings.h"

#include <QFileInfo>
#include <QSettings>
#include <algorithm>

namespace heatkeep {
namespace {

template <typename Word>
Word WordOf(const QSettings& from, const QString& key, std::initializer_list<std::pair<const char*, Word>> words, Word otherwise) {
  const QString kept = from.value(key).toString();
  for (const auto& [name, word] : words)
    if (kept == name) return word;
  return otherwise;
}

template <typename Word>
QString NameIn(std::initializer_list<std::pair<const char*, Word>> words, Word word) {
  for (const auto& [name, each] : words)
    if (each == word) return name;
  return {};
}

using LengthAs = ReadingUnits::LengthAs;
using MassAs = ReadingUnits::MassAs;
const std::initializer_list<std::pair<const char*, LengthAs>> kLengths{
    {"mm", LengthAs::Mm}, {"inch-fractions", LengthAs::InchFraction}, {"inch-decimals", LengthAs::InchDecimal}};
const std::initializer_list<std::pair<const char*, MassAs>> kMasses{{"kg", MassAs::Kg}, {"lb", MassAs::Lb}};
const std::initializer_list<std::pair<const char*, DeskSettings::Look>> kLooks{
    {"system", DeskSettings::Look::System}, {"light", DeskSettings::Look::Light}, {"dark", DeskSettings::Look::Dark}};

}  // namespace

DeskSettings DeskSettings::Load(const QSettings& from) {
  DeskSettings s;
  s.units.length = WordOf(from, "lengths", kLengths, LengthAs::Mm);
  s.units.mass = WordOf(from, "masses", kMasses, MassAs::Kg);
  s.look = WordOf(from, "look", kLooks, Look::System);
  s.scale = std::clamp(from.value("scale", s.scale).toInt(), 75, 300);
  s.language = from.value("language").toString();
  s.saw = from.value("saw").toString();
  s.measured_with = from.value("measured_with").toString();
  s.queue_file = from.value("queue_file").toString();
  s.label_printer = from.value("label_printer").toString();
  s.label_folder = from.value("label_folder").toString();
  s.paper_printer = from.value("paper_printer").toString();
  s.paper_folder = from.value("paper_folder").toString();
  s.scan_prefix = from.value("scan_prefix").toString();
  s.scan_gap_ms = std::clamp(from.value("scan_gap_ms", s.scan_gap_ms).toInt(), 5, 500);
  s.kept_folder = QFileInfo(from.fileName()).absolutePath() + "/unanswered";
  return s;
}

void DeskSettings::Save(QSettings& to) const {
  to.setValue("lengths", NameIn(kLengths, units.length));
  to.setValue("masses", NameIn(kMasses, units.mass));
  to.setValue("look", NameIn(kLooks, look));
  to.setValue("scale", scale);
  to.setValue("language", language);
  to.setValue("saw", saw);
  to.setValue("measured_with", measured_with);
  to.setValue("queue_file", queue_file);
  to.setValue("label_printer", label_printer);
  to.setValue("label_folder", label_folder);
  to.setValue("paper_printer", paper_printer);
  to.setValue("paper_folder", paper_folder);
  to.setValue("scan_prefix", scan_prefix);
  to.setValue("scan_gap_ms", scan_gap_ms);
  to.sync();
}

}  // namespace heatkeep
