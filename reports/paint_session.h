// Painting needs one QGuiApplication in the process; a program without a display gets an offscreen one.
// Call PaintSession() before any report or piece bar is painted; later calls cost nothing. When the program
// already made its own application (the desk), that one is used. Fonts: DejaVu Sans and DejaVu Sans Mono;
// throws std::runtime_error when the machine has neither, because a sheet of empty boxes must not be printed.
// Call it first from the main thread.
#pragma once

#include <QFont>

namespace heatkeep {

void PaintSession();

enum class Face { Sans, Mono };

// A font of that face with a height of `pixels` logical units (at least 1), unhinted so that print is true.
QFont PaintFont(Face face, double pixels, bool bold = false);

}  // namespace heatkeep
