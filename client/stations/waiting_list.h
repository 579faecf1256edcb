// The left pane: what waits, one entry under the other, each with a sign, a title, up to two lines below it and a word at the right; the
// one being done is marked. Keys: up and down.
#pragma once

#include <QListWidget>
#include <QString>
#include <vector>

#include "client/stations/sign.h"

namespace heatkeep {

struct WaitingEntry {
  QString key = {};  // names it, stays selected through a refresh
  QString title = {}, below = {};
  QString right = {};  // due, count, mass
  Sign sign = Sign::None;
  bool mono = false;     // the title is a tag or a heat
  bool section = false;  // a heading between entries; cannot be chosen
};

class WaitingList : public QListWidget {
  Q_OBJECT

 public:
  explicit WaitingList(QWidget* parent = nullptr);

  void Show(const std::vector<WaitingEntry>& entries, const QString& empty_words);
  void Choose(const QString& key);  // signals Chosen when it was another
  QString chosen() const;
  const std::vector<WaitingEntry>& entries() const { return entries_; }

 signals:
  void Chosen(const QString& key);

 protected:
  void focusInEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;  // another width: other lines

 private:
  std::vector<WaitingEntry> entries_;
  QString empty_words_;
};

}  // namespace heatkeep
