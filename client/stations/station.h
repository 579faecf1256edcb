// What every station is: one screen of one person's work. Left what waits, in the middle the one thing being done, right why and the
// papers. The desk's window carries it (desk_window.h) and gives it scans, changes of the book and its state.
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>
#include <functional>

#include "client/models/book_link.h"
#include "client/models/desk_settings.h"
#include "client/models/first_book.h"
#include "client/models/paper_output.h"
#include "client/models/qt_words.h"
#include "client/stations/sign.h"

class QBoxLayout;
class QSplitter;

namespace heatkeep {

// What a station works with. Lives as long as the window.
struct Desk {
  BookLink& link;
  DeskSettings settings;
  FirstBook first = {};
};

// What happened last, for the line at the bottom, and how to undo it where the book has a deed for that.
struct Said {
  Sign sign = Sign::None;
  QString words;
  QString undo_words;          // "take the hold off again"; empty: the book allows no undoing
  std::function<void()> undo;  // does it
};

class Station : public QWidget {
  Q_OBJECT

 public:
  explicit Station(Desk& desk, QWidget* parent = nullptr) : QWidget(parent), desk_(desk) {}

  virtual QString Name() const = 0;  // one word or two, translated
  // Deeds of schema api of which a login needs one to work here.
  virtual QStringList Deeds() const = 0;
  // Shown, or the book is back: reads what waits. What was typed stays.
  virtual void Refresh() = 0;
  // The book has not answered since the desk was started: false where there is nothing to be done without it.
  virtual bool StartAway() { return false; }
  // Somebody did these deeds; reads anew what they touch.
  virtual void Changed(const QStringList& deeds) = 0;
  // A scan, or what was typed into the scan field. False: it is none of this station's, so the desk looks it up.
  virtual bool Take(const QString& scan) = 0;
  // What was scanned or typed here is nowhere known; the bottom line says so. A station that is read from afar says it large.
  virtual void NotFound(const QString& /*words*/) {}
  // A file that was dropped on the window. False: this station takes none like it.
  virtual bool TakeFile(const QString&) { return false; }
  // Worked at now and then: a login that may work elsewhere too does not begin here.
  virtual bool NowAndThen() const { return false; }
  // A private book opens here while it is empty.
  virtual bool OpensEmptyBook() const { return false; }
  // Enter on an empty scan field: the station's main deed.
  virtual void Confirm() {}
  // Esc: ends what is under way here, a long search or a question. False: there is nothing.
  virtual bool Stop() { return false; }
  // What is on the screen, as a paper: a report of the book where there is one, else the screen's own content.
  virtual DeskPaper Paper() = 0;
  // Units, look or language were set anew: everything shown is shown again.
  virtual void Redress() { Refresh(); }

 signals:
  void Happened(const Said& said);
  void LookUp(const QString& what);  // show this (a heat, tag, order, document) at the papers station

 protected:
  Desk& desk() { return desk_; }
  const ReadingUnits& units() const { return desk_.settings.units; }
  // Whether one of these deeds is among `of`.
  static bool Touch(const QStringList& deeds, const QStringList& of);
  // The three panes: left `waiting`, middle `work`, right `why`, with their widths and distances.
  void LayOut(QWidget* waiting, QWidget* work, QWidget* why);

 private:
  Desk& desk_;
};

}  // namespace heatkeep
