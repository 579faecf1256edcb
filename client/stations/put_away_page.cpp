#include "client/stations/put_away_page.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "reports/sheet_words.h"

namespace heatkeep {

PutAwayPage::PutAwayPage(Desk& desk, ReceivingWork& work, QWidget* parent) : QWidget(parent), desk_(desk), work_(work) {
  auto* down = Down(this);
  down->addWidget(head_ = new PlainWords(FontOf(Size::StationHead, true)));
  down->addWidget(what_ = new PlainWords(FontOf(Size::SectionHead)));
  down->addSpacing(kInside);
  auto* row = new QHBoxLayout;
  row->setSpacing(kInside);
  row->addWidget(place_ = new QLineEdit, 1);
  place_->setFont(MonoOf(Size::SawBody, true));
  place_->setFixedHeight(kGlove);
  place_->setPlaceholderText(tr("scan or type the place"));
  place_->setAccessibleName(tr("place"));
  row->addWidget(put_ = new DeedButton(desk.link, "put_away", tr("Put away"), Qt::Key_F1, DeedButton::Weight::Primary));
  put_->setMinimumSize(160, kGlove);
  down->addLayout(row);
  down->addWidget(sign_ = new SignLine(Size::SectionHead));
  down->addSpacing(kInside);
  down->addWidget(tags_ = new PlainWords(MonoOf(Size::SectionHead)));
  down->addStretch(1);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(labels_ = new DeedButton(desk.link, "label_printed", tr("Labels that wait"), Qt::Key_F4));
  labels_->setMinimumWidth(200);
  buttons->addWidget(open_ = new DeedButton(desk.link, "open_bundle", tr("The strap is cut"), Qt::Key_F6));
  open_->setMinimumWidth(200);
  for (DeedButton* button : {labels_, open_}) button->setMinimumHeight(kGlove);
  buttons->addWidget(
      strap_ = new PlainWords(
          FontOf(Size::Table), Use::Quiet,
          tr("Cutting a strap lets go what is under tension and bars roll: chock first, stand at the end, never in line with it.")),
      1);
  buttons->addStretch();
  down->addLayout(buttons);
  connect(open_, &QPushButton::clicked, this, [this] { work_.OpenBundle(group_.first.bundle); });
  connect(place_, &QLineEdit::returnPressed, this, &PutAwayPage::PutAway);
  connect(put_, &QPushButton::clicked, this, &PutAwayPage::PutAway);
  connect(labels_, &QPushButton::clicked, this, [this] {
    QStringList tags;
    for (const std::string& tag : group_.tags) tags.append(Q(tag));
    emit LabelsWanted(tags);
  });
}

void PutAwayPage::PutAway() {
  if (!place_->text().trimmed().isEmpty()) TakePlace(place_->text().trimmed());
}

void PutAwayPage::Forget() {
  one_.clear();
  place_->setText({});
}

void PutAwayPage::TakeTag(const std::string& tag) {
  one_ = tag;
  Fill();
  Say(Sign::Waiting, tr("%1: now its place").arg(Q(tag)));
}

void PutAwayPage::TakePlace(const QString& place) {
  work_.PutAway(one_.empty() || !group_.first.bundle.empty() ? group_.tags : std::vector<std::string>{one_}, place.toStdString());
}

void PutAwayPage::Show(const GateGroup& group) {
  group_ = group;
  Fill();
}

void PutAwayPage::Fill() {
  const AtGateRow& row = group_.first;
  const auto count = group_.tags.size();
  head_->setText(count == 1 || !one_.empty() ? tr("Where does %1 lie?").arg(Q(tag())) : tr("Where do these %1 bars lie?").arg(count));
  QStringList words{tr("%1 x %2 %3 %4   heat %5   %6, %7")
                        .arg(count)
                        .arg(Q(row.section), Q(row.grade), Q(row.condition), row.heat.empty() ? tr("not known") : Q(HeatInGroups(row.heat)),
                             units().Words(row.length, Rounding::Down), units().Words(group_.mass))};
  if (!row.blocked.empty()) words << BookWords(row.blocked);
  if (!row.bundle.empty())
    words << tr("Strapped as %1: it goes as one. Cut the strap first where bars go to several places.").arg(Q(row.bundle));
  else if (count > 1) words << tr("The place alone: all of them. A tag, then the place: that one.");
  what_->setText(words.join('\n'));
  QStringList tags;
  for (const std::string& tag : group_.tags) tags.append(one_ == tag ? "> " + Q(tag) : Q(tag));
  tags_->setText(tags.join("   "));
  put_->SetWanted(!work_.busy());
  for (QWidget* only_strapped : std::initializer_list<QWidget*>{open_, strap_}) only_strapped->setVisible(!row.bundle.empty());
  open_->SetWanted(!row.bundle.empty() && !work_.busy());
}

std::string PutAwayPage::tag() const { return !one_.empty() ? one_ : group_.tags.empty() ? std::string() : group_.tags.front(); }

}  // namespace heatkeep
