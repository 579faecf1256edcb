// Colours, fonts and distances of all stations, from the one table in reports/palette.h. The scheme is the application's: set once,
// changed with ApplyLook; a widget that paints asks for it when it paints.
#pragma once

#include <QColor>
#include <QFont>

#include "client/models/desk_settings.h"
#include "reports/tone_color.h"

class QApplication;
class QVBoxLayout;
class QWidget;

namespace heatkeep {

// The 8 px grid: inside, between groups, around the page.
inline constexpr int kInside = 8, kBetween = 16, kAround = 24;
// A target for a gloved hand: 15 mm at 96 dots an inch.
inline constexpr int kGlove = 57;

// Throws std::runtime_error where the machine has no font of ours (reports/paint_session.h).
void ApplyLook(QApplication& application, DeskSettings::Look look);
Scheme CurrentScheme();
QColor ColorOf(Use use);  // in the current scheme

// While it lives widgets paint themselves as on paper: in the light scheme. One at a time, on the window's thread.
class OnPaper {
 public:
  OnPaper();
  ~OnPaper();
  OnPaper(const OnPaper&) = delete;
  OnPaper& operator=(const OnPaper&) = delete;

 private:
  Scheme before_;
};

enum class Size {
  Table = 9,
  Body = 10,
  SectionHead = 13,
  SawBody = 16,
  StationHead = 18,
  Key = 37,
  Stop = 40
};  // Key: capitals of 9.5 mm, 16 minutes of arc at 2 m
QFont FontOf(Size size, bool bold = false);
QFont MonoOf(Size size, bool bold = false);  // tags and heats

// A pane whose parts stand one under the other, without a margin of its own.
QVBoxLayout* Down(QWidget* pane, int spacing = kInside);

}  // namespace heatkeep
