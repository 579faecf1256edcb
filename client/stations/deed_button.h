// A button that does a deed. It follows the database's own privileges: a login that may not do the deed sees it greyed, and is told why.
#pragma once

#include <QKeySequence>
#include <QPushButton>

#include "client/models/book_link.h"
#include "client/stations/desk_look.h"

namespace heatkeep {

class DeedButton : public QPushButton {
  Q_OBJECT

 public:
  enum class Weight { Plain, Primary, Glove, PrimaryGlove };  // Glove: a target of 15 mm with the saw station's letters

  // `deed`: a function of schema api; empty: nobody is refused. `key`: what does the same from the keyboard, shown small behind the words.
  DeedButton(const BookLink& link, const QString& deed, const QString& words, const QKeySequence& key = {}, Weight weight = Weight::Plain,
             QWidget* parent = nullptr);

  void SetWords(const QString& words);
  // Whether there is something to do; the privilege stands beside it.
  void SetWanted(bool wanted);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void Follow();
  bool glove() const { return weight_ == Weight::Glove || weight_ == Weight::PrimaryGlove; }
  bool primary() const { return weight_ == Weight::Primary || weight_ == Weight::PrimaryGlove; }
  QFont KeyFont() const { return FontOf(glove() ? Size::SectionHead : Size::Table); }
  QString KeyWords() const { return key_.toString(QKeySequence::NativeText).replace("Ctrl", tr("Ctrl")); }

  const BookLink& link_;
  QString deed_;
  QKeySequence key_;
  Weight weight_;
  bool wanted_ = true;
};

}  // namespace heatkeep
