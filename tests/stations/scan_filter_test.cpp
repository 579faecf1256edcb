// A scanner that acts as a keyboard, and hands: what is scanned reaches no field, what is typed reaches its field whole.
#include "client/stations/scan_filter.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <QWidget>
#include <QWindow>

namespace heatkeep {
namespace {

class ScanFilterTest : public testing::Test {
 protected:
  ScanFilterTest() {
    filter.Set(kGap, {});
    auto* down = new QVBoxLayout(&page);
    down->addWidget(field = new QLineEdit);
    down->addWidget(button = new QPushButton("do"));
    page.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    field->setFocus();
  }
  void Strike(const QString& text) {
    for (const QChar c : text)
      QTest::sendKeyEvent(QTest::Click, page.windowHandle(), Qt::Key(c.toUpper().unicode()), QString(c), Qt::NoModifier);
  }
  void Enter() { QTest::keyClick(page.windowHandle(), Qt::Key_Return); }
  void Rest() { QTest::qWait(2 * kGap); }
  QStringList Scans() const {
    QStringList all;
    for (const auto& call : scanned) all.append(call[0].toString());
    return all;
  }

  static constexpr int kGap = 200;
  ScanFilter filter;
  QSignalSpy scanned{&filter, &ScanFilter::Scanned};
  QWidget page;
  QLineEdit* field;
  QPushButton* button;
};

TEST_F(ScanFilterTest, AScanIsOneSignalAndNothingOfItReachesTheFocusedField) {
  Strike("A000001D");
  Enter();
  EXPECT_EQ(Scans(), QStringList{"A000001D"});
  Rest();
  EXPECT_EQ(field->text(), "");
}

TEST_F(ScanFilterTest, WhatIsTypedReachesTheFieldWholeAndInOrder) {
  for (const QChar c : QString("round 80")) {
    Strike(c);
    Rest();
  }
  EXPECT_EQ(field->text(), "round 80");
  EXPECT_TRUE(Scans().isEmpty());
}

TEST_F(ScanFilterTest, AFewQuickKeysAndEnterAreTyped) {
  QSignalSpy entered(field, &QLineEdit::returnPressed);
  Strike("12");
  Enter();
  EXPECT_EQ(field->text(), "12");
  EXPECT_EQ(entered.size(), 1);
  EXPECT_TRUE(Scans().isEmpty());
}

TEST_F(ScanFilterTest, QuickKeysWithoutAnEnterAreGivenBack) {
  Strike("heat 33");
  Rest();
  EXPECT_EQ(field->text(), "heat 33");
  EXPECT_TRUE(Scans().isEmpty());
}

TEST_F(ScanFilterTest, TheSecondLineEndOfAScannerDoesNothing) {
  QSignalSpy entered(field, &QLineEdit::returnPressed);
  Strike("B1-2-3");
  Enter();
  Enter();
  EXPECT_EQ(Scans(), QStringList{"B1-2-3"});
  EXPECT_EQ(entered.size(), 0);
}

TEST_F(ScanFilterTest, ASpaceOfAScanPressesNoButtonAndOneOfAHandDoes) {
  QSignalSpy pressed(button, &QPushButton::clicked);
  button->setFocus();
  Strike("26 1184 A");
  Enter();
  EXPECT_EQ(Scans(), QStringList{"26 1184 A"});
  EXPECT_EQ(pressed.size(), 0);
  Strike(" ");
  Rest();
  EXPECT_EQ(pressed.size(), 1);
}

TEST_F(ScanFilterTest, WithAPrefixASlowScanIsAScanAndQuickTypingIsTyping) {
  filter.Set(kGap, "~");
  Strike("A000001D");
  Enter();
  EXPECT_EQ(field->text(), "A000001D");
  field->clear();
  Strike("~B10");
  QTest::qWait(2 * kGap);
  Strike("0002X");
  Enter();
  EXPECT_EQ(Scans(), QStringList{"B100002X"});
  EXPECT_EQ(field->text(), "");
}

TEST_F(ScanFilterTest, TheSeparatorsOfAnEnvelopeBelongToTheScan) {
  Strike("[)>");
  const auto control = [&](Qt::Key key) { QTest::keyClick(page.windowHandle(), key, Qt::ControlModifier); };
  control(Qt::Key_6);
  Strike("06");
  control(Qt::Key_BracketRight);
  Strike("SA000001D");
  control(Qt::Key_6);
  control(Qt::Key_D);
  Enter();
  EXPECT_EQ(Scans(), QStringList{QString("[)>") + QChar(30) + "06" + QChar(29) + "SA000001D" + QChar(30) + QChar(4)});
}

}  // namespace
}  // namespace heatkeep
