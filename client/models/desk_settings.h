// What a person set at this desk: units, look, language, and where they work. Kept in a settings file of the account.
#pragma once

#include <QString>

#include "client/models/reading_units.h"

class QSettings;

namespace heatkeep {

struct DeskSettings {
  enum class Look { System, Light, Dark };

  ReadingUnits units;
  Look look = Look::System;
  int scale = 100;        // per cent, of all that is shown; from the next start
  QString language;       // "en", "de"; empty: the system's
  QString saw;            // the saw this desk stands at; empty: none said yet
  QString measured_with;  // the tape or readout that lengths are read from here; empty: not said
  QString queue_file;     // where deeds are kept while the book is away; empty: they are not done then
  QString label_printer;  // a printer of the system; empty: labels are written to label_folder
  QString label_folder;   // PDF files of labels
  QString paper_printer;  // a printer of the system for sheets; empty: they are written to paper_folder
  QString paper_folder;   // PDF files of sheets
  QString scan_prefix;    // what the scanner sends first; empty: a scan is known by its speed
  int scan_gap_ms = 35;   // the longest pause between two characters of a scan

  QString kept_folder;  // beside the settings file: deeds whose answer is missing (client/models/kept_deed.h); not set by a person

  static DeskSettings Load(const QSettings& from);
  void Save(QSettings& to) const;
};

}  // namespace heatkeep
