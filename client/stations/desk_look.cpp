#include "client/stations/desk_look.h"

#include <QApplication>
#include <QFontDatabase>
#include <QPainter>
#include <QPalette>
#include <QProxyStyle>
#include <QStyleFactory>
#include <QStyleOption>
#include <QVBoxLayout>
#include <utility>

#include "reports/paint_session.h"

namespace heatkeep {
namespace {

Scheme current = Scheme::Light;

bool SystemIsDark() {
  const QPalette system;
  return system.color(QPalette::Window).lightness() < system.color(QPalette::WindowText).lightness();
}

QPalette PaletteOfScheme() {
  const QColor ground = ColorOf(Use::Ground), text = ColorOf(Use::Text), quiet = ColorOf(Use::Quiet), line = ColorOf(Use::Hairline),
               done = ColorOf(Use::Done);
  const bool dark = current == Scheme::Dark;
  const QColor raised = dark ? ground.lighter(135) : ground.darker(104);
  QPalette p(raised, ground);
  p.setColor(QPalette::WindowText, text);
  p.setColor(QPalette::Text, text);
  p.setColor(QPalette::ButtonText, text);
  p.setColor(QPalette::Base, dark ? ground.lighter(115) : ground.lighter(102));
  p.setColor(QPalette::AlternateBase, ground);
  p.setColor(QPalette::ToolTipBase, raised);
  p.setColor(QPalette::ToolTipText, text);
  p.setColor(QPalette::PlaceholderText, quiet);
  p.setColor(QPalette::Mid, line);
  p.setColor(QPalette::Highlight, done);
  p.setColor(QPalette::HighlightedText, ground);
  p.setColor(QPalette::Link, done);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) p.setColor(QPalette::Disabled, role, quiet);
  return p;
}

// Fusion's own frame of a field is a darker ground: nothing to be seen in the dark.
class FieldStyle : public QProxyStyle {
 public:
  FieldStyle() : QProxyStyle(QStyleFactory::create("Fusion")) {}

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const override {
    if (element != PE_FrameLineEdit) return QProxyStyle::drawPrimitive(element, option, painter, widget);
    const bool enabled = option->state.testFlag(State_Enabled), focus = enabled && option->state.testFlag(State_HasFocus);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(ColorOf(focus ? Use::Done : enabled ? Use::Quiet : Use::Hairline), focus ? 2 : 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
    painter->restore();
  }
};

QFont Sized(QFont font, Size size, bool bold) {
  font.setPointSize(static_cast<int>(size));
  font.setBold(bold);
  return font;
}

}  // namespace

void ApplyLook(QApplication& application, DeskSettings::Look look) {
  PaintSession();
  static const bool system_dark = SystemIsDark();
  const bool dark = look == DeskSettings::Look::Dark || (look == DeskSettings::Look::System && system_dark);
  current = dark ? Scheme::Dark : Scheme::Light;
  application.setStyle(new FieldStyle);
  application.setPalette(PaletteOfScheme());
  application.setFont(FontOf(Size::Body));
}

Scheme CurrentScheme() { return current; }

OnPaper::OnPaper() : before_(std::exchange(current, Scheme::Light)) {}
OnPaper::~OnPaper() { current = before_; }

QColor ColorOf(Use use) { return ColorOf(use, current); }

QFont FontOf(Size size, bool bold) {
  static const QFont sans =
      QFontDatabase::hasFamily("DejaVu Sans") ? QFont("DejaVu Sans") : QFontDatabase::systemFont(QFontDatabase::GeneralFont);
  return Sized(sans, size, bold);
}

QFont MonoOf(Size size, bool bold) {
  static const QFont mono =
      QFontDatabase::hasFamily("DejaVu Sans Mono") ? QFont("DejaVu Sans Mono") : QFontDatabase::systemFont(QFontDatabase::FixedFont);
  return Sized(mono, size, bold);
}

QVBoxLayout* Down(QWidget* pane, int spacing) {
  auto* down = new QVBoxLayout(pane);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(spacing);
  return down;
}

}  // namespace heatkeep
