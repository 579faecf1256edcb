// A tape or readout in words, with the doubt that a length read from it carries.
#pragma once

#include <QCoreApplication>
#include <QString>

#include "client/gateway/device_readings.h"
#include "client/models/qt_words.h"
#include "client/models/reading_units.h"

namespace heatkeep {

struct DeviceText {
  Q_DECLARE_TR_FUNCTIONS(heatkeep::DeviceText)

 public:
  // "tape 3, ±0.5 mm"; "tape 4, ±1.0 mm, its calibration is over".
  static QString Of(const DeviceRow& device, Length tape_doubt, const ReadingUnits& units) {
    const QString words = tr("%1, \u00B1%2").arg(Q(device.device), units.Stop(device.doubt.value_or(tape_doubt)));
    return device.overdue ? tr("%1, its calibration is over").arg(words) : words;
  }
};

inline QString DeviceWords(const DeviceRow& device, Length tape_doubt, const ReadingUnits& units) {
  return DeviceText::Of(device, tape_doubt, units);
}

}  // namespace heatkeep
