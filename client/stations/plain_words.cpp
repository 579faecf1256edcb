#include "client/stations/plain_words.h"

#include <QEvent>
#include <QRegularExpression>
#include <algorithm>

namespace heatkeep {
namespace {

bool IsHead(const QString& line) {
  const auto letters = std::ranges::count_if(line, [](QChar c) { return c.isLetter(); });
  return letters > 2 && line == line.toUpper() && std::ranges::none_of(line, [](QChar c) { return c.isDigit(); });
}

QString WithHeads(const QString& words) {
  QStringList lines;
  for (const QString& line : words.split('\n')) lines << (IsHead(line) ? "<b>" + line.toHtmlEscaped() + "</b>" : line.toHtmlEscaped());
  return "<div style=\"white-space: pre-wrap\">" + lines.join("<br>") + "</div>";
}

}  // namespace

QString Unbroken(const QString& words) {
  static const QRegularExpression between(R"((?<=\d) (?=(?:mm|m|in|ft|kg|t|lb|%|\d+/\d+)(?!\w)))");
  return QString(words).replace(between, QString(QChar::Nbsp));
}

PlainWords::PlainWords(const QFont& font, Use use, const QString& words, QWidget* parent) : QLabel(parent), use_(use) {
  setFont(font);
  setTextFormat(Qt::PlainText);
  setWordWrap(true);
  setText(words);
  Color();
}

void PlainWords::setText(const QString& words) {
  said_ = words;
  QLabel::setText(heads_ ? WithHeads(Unbroken(words)) : Unbroken(words));
}

void PlainWords::HeadLines() {
  heads_ = true;
  setTextFormat(Qt::RichText);
  setText(said_);
}

void PlainWords::Color() {
  coloring_ = true;
  QPalette colors = palette();
  colors.setColor(QPalette::WindowText, ColorOf(use_));
  setPalette(colors);
  coloring_ = false;
}

void PlainWords::changeEvent(QEvent* event) {
  QLabel::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && !coloring_) Color();
}

}  // namespace heatkeep
