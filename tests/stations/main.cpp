// Widgets are tested on the offscreen platform, with keys that go the way of real ones.
#include <gtest/gtest.h>

#include <QApplication>

#include "reports/paint_session.h"

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  heatkeep::PaintSession();
  testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
