// The papers station: anything scanned or typed is traced; a hold is previewed, placed, undone; an unknown word is said to be unknown.
#include "client/stations/papers_station.h"

#include <QFile>

#include "tests/stations/desk_test.h"

namespace heatkeep {
namespace {

class PapersStationTest : public DeskTest {
 protected:
  PapersStation& OpenPapers(const std::string& login = "quality") {
    OpenDesk(login, [this](Desk& desk) { return std::vector<Station*>{station = new PapersStation(desk)}; });
    return *station;
  }
  // A certified bar of M2208 of which 14 x 290 were cut for O1 and one drop is left; its tag.
  std::string CutBar() {
    const std::string tag = shop.ReceiveCertified({})[0];
    shop.AddLine({});
    shop.Fetch(tag, {{.count = 14, .length = 290}});
    shop.Record(tag, Json::array({Trim(), Good(14, 290)}), DropLeft(1900));
    return tag;
  }
  void AskFor(const QString& what) {
    PasteIn(what);
    Press(Qt::Key_Return);
    ShowsWhat(what.toStdString());
  }
  // A file as a mill sends it: small, but whole.
  QString Certificate() {
    const QString path = folder.filePath("certificate.pdf");
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("%PDF-1.4\n1 0 obj<</Type/Catalog>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n");
    return path;
  }
  void ShowsWhat(const std::string& name) {
    WaitFor([&] { return station->work().answer() && station->work().answer()->what.name == name && !station->work().busy(); },
            name.c_str());
  }

  PapersStation* station = nullptr;
};

TEST_F(PapersStationTest, EscLeavesTheQuestionOfAHoldAndWhatIsTypedThenIsLookedUp) {
  CutBar();
  OpenPapers();
  AskFor("M2208");
  Press(Qt::Key_F5);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question");
  Press(Qt::Key_Escape);
  EXPECT_FALSE(window->findChild<QLineEdit*>("answer")->isVisible());
  Press(Qt::Key_Escape);
  EXPECT_TRUE(window->scan_field()->hasFocus());
  TypeIn("O1");
  Press(Qt::Key_Return);
  ShowsWhat("O1");
  EXPECT_EQ(shop.Number("select count(*) as n from api.holds"), 0);
}

TEST_F(PapersStationTest, AHeatTypedIsItsFamilyTreeItsBalanceAndItsPapers) {
  CutBar();
  OpenPapers();
  Picture("papers_empty");
  TypeIn("M2208");
  Press(Qt::Key_Return);
  ShowsWhat("M2208");
  EXPECT_EQ(station->work().answer()->what.kind, "heat");
  EXPECT_EQ(station->tree()->pieces(), 2) << "the bar and its drop";
  ASSERT_EQ(station->work().answer()->record->balances.size(), 1U);
  ASSERT_EQ(station->work().answer()->documents.size(), 1U);
  EXPECT_EQ(station->work().answer()->documents[0].type, "3.1");
  Picture("papers_heat");
}

TEST_F(PapersStationTest, ATagScannedIsThePieceWithWhatHappenedToIt) {
  const std::string tag = CutBar();
  OpenPapers();
  ScanIn(QString::fromStdString(tag));
  ShowsWhat(tag);
  EXPECT_EQ(station->work().answer()->what.kind, "piece");
  ASSERT_FALSE(station->work().answer()->history.empty());
  EXPECT_EQ(station->work().answer()->history.front().deed, "record_cut");
  Picture("papers_piece");
}

TEST_F(PapersStationTest, AnOrderSaysWhichHeatsWentIntoIt) {
  CutBar();
  OpenPapers();
  TypeIn("O1");
  Press(Qt::Key_Return);
  ShowsWhat("O1");
  EXPECT_TRUE(station->work().answer()->record->heats->one_heat);
  Picture("papers_order");
}

TEST_F(PapersStationTest, AHoldIsPreviewedThenPlacedThenUndoneByOneKey) {
  CutBar();
  OpenPapers();
  TypeIn("M2208");
  Press(Qt::Key_Return);
  ShowsWhat("M2208");
  Press(Qt::Key_F5);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the preview and the question");
  Picture("papers_preview");
  EXPECT_EQ(shop.Number("select count(*) as n from book.hold"), 0) << "a preview changes nothing";
  TypeIn("crack found");
  Press(Qt::Key_Return);
  WaitFor(
      [&] {
        return shop.Number("select count(*) as n from book.hold where heat = 'M2208' and lifted_by is null and reason = 'crack found'") ==
            1;
      },
      "the hold");
  WaitFor([&] { return window->last()->sign() == Sign::Done && !station->work().answer()->holds.empty(); }, "what is shown to say so");
  Picture("papers_held");
  Press(Qt::Key_Z, Qt::ControlModifier);
  WaitFor([&] { return shop.Number("select count(*) as n from book.hold where lifted_by is null") == 0; }, "the hold to be off again");
}

TEST_F(PapersStationTest, ARecordOnPaperCanBeProvedLater) {
  CutBar();
  OpenPapers();
  TypeIn("O1");
  Press(Qt::Key_Return);
  ShowsWhat("O1");
  const std::string text = Printed();
  EXPECT_NE(text.find("Family tree"), std::string::npos);
  EXPECT_NE(text.find("Record\u2019s digest"), std::string::npos) << text;
  EXPECT_EQ(shop.Number("select count(*) as n from book.printed_record"), 1);
}

TEST_F(PapersStationTest, ACertificateIsFiledWithItsFileByKeysAndUndoneByAHold) {
  shop.Receive({.heat = "M4000"});
  OpenPapers();
  AskFor("M4000");
  Press(Qt::Key_F3);
  WaitFor([&] { return station->filing(); }, "the form");
  const TypedDocument prepared = station->form()->document();
  EXPECT_EQ(prepared.issuer, "Vandrek") << "what the metal says already stands there";
  EXPECT_EQ(prepared.heat, "M4000");
  EXPECT_EQ(prepared.section, "round 80");
  EXPECT_EQ(prepared.condition, "+QT");
  station->form()->choose_file = [file = Certificate()] { return file; };
  Press(Qt::Key_F2);
  TypeIn("C-77");
  Press(Qt::Key_Return);
  Press(Qt::Key_Return);
  PasteIn("2026-01-02");
  for (QLineEdit* field : station->form()->findChildren<QLineEdit*>())
    if (field->accessibleName().startsWith("Analysis")) field->setFocus();
  PasteIn("C 0.41 Si 0.26");
  Picture("papers_filing");
  Press(Qt::Key_F1);
  WaitFor(
      [&] {
        return shop.Number(
                   "select count(*) as n from book.document where number = 'C-77' and accepted_by = 'test_quality' and file_sha256 is not null") ==
            1;
      },
      "the document");
  EXPECT_EQ(shop.Word("select papers::text as w from book.lot where heat = 'M4000'"), "3.1");
  EXPECT_EQ(shop.Number("select ppm_x100 as n from book.analysis where element = 'C'"), 410'000) << "0.41 % in millionths of a percent";
  WaitFor([&] { return !station->filing() && station->work().answer()->documents.size() == 1 && !station->work().busy(); },
          "what is shown");
  Picture("papers_filed");
  Press(Qt::Key_Z, Qt::ControlModifier);
  WaitFor(
      [&] {
        return shop.Number(
                   "select count(*) as n from book.hold where scope = 'certificate' and reason = 'accepted by mistake' and lifted_by is null") ==
            1;
      },
      "the hold");
}

TEST_F(PapersStationTest, AFileDroppedOnTheWindowIsFiledAndWhatItContradictsIsSaid) {
  shop.Receive({.heat = "M4000"});
  Do(shop.quality, "define_limits",
     {Json::array({{{"grade", "42CrMo4"}, {"element", "C"}, {"most", 450000}, {"source", "invented"}}}).dump()});
  OpenPapers();
  AskFor("M4000");
  DropFile(Certificate());
  WaitFor([&] { return station->filing(); }, "the form");
  EXPECT_EQ(station->form()->document().file, Certificate());
  TypedDocument typed = station->form()->document();
  typed.number = "C-78";
  typed.issued = "2026-01-02";
  typed.analysis = "C 0.47";
  station->form()->Show(typed);
  Press(Qt::Key_F1);
  WaitFor([&] { return window->last()->sign() == Sign::Refusal; }, "the words");
  EXPECT_TRUE(station->form()->sign()->words().startsWith("CONTRADICTS: ") && station->form()->sign()->words().contains("0.45"))
      << station->form()->sign()->words().toStdString();
  Picture("papers_contradicts");
  EXPECT_EQ(shop.Number("select count(*) as n from book.document"), 0) << "and nothing is released by it";
  EXPECT_EQ(shop.Word("select papers_state::text as w from book.lot where heat = 'M4000'"), "awaited");
  typed.heat = "M4O00";
  typed.analysis = "C 0.41";
  station->form()->Show(typed);
  Press(Qt::Key_F1);
  WaitFor([&] { return station->form()->sign()->words().contains("there is no such lot"); }, "the other heat");
}

TEST_F(PapersStationTest, WhatIsNoPartOfADocumentIsSaidBeforeAnythingIsAsked) {
  TypedDocument typed{.file = {},
                      .issuer = "Vandrek",
                      .number = "C-1",
                      .issued = "2026-01-02",
                      .heat = "M4000",
                      .section = "round 80",
                      .grade = "42CrMo4",
                      .condition = "+QT",
                      .analysis = {},
                      .tests = {},
                      .validated_by = {}};
  const auto wrong = [](const TypedDocument& document) {
    try {
      DocumentBody(document);
      return std::string("nothing");
    } catch (const BadText& error) { return std::string(error.what()); }
  };
  EXPECT_EQ(wrong(typed), "nothing");
  TypedDocument bad = typed;
  bad.analysis = "C 0.41 Xx 1";
  EXPECT_NE(wrong(bad).find("\"Xx\" is no element"), std::string::npos) << wrong(bad);
  bad = typed;
  bad.tests = "Rm";
  EXPECT_NE(wrong(bad).find("has no value"), std::string::npos) << wrong(bad);
  bad = typed;
  bad.issued = "2.1.2026";
  EXPECT_NE(wrong(bad), "nothing");
  bad = typed;
  bad.heat.clear();
  EXPECT_NE(wrong(bad).find("the heat is not said"), std::string::npos) << wrong(bad);
  typed.tests = "Rm 1028 Re 775 A 16.5";
  const nlohmann::json lot = DocumentBody(typed)["lots"][0];
  EXPECT_EQ(lot["tests"][0]["value_milli"], 1'028'000);
  EXPECT_EQ(lot["tests"][2], (nlohmann::json{{"property", "A"}, {"value_milli", 16'500}, {"unit", "%"}}));
}

TEST_F(PapersStationTest, WhatTheClerkFiledIsAcceptedByQuality) {
  shop.Receive({.heat = "M4000"});
  OpenPapers("clerk");
  AskFor("M4000");
  EXPECT_NE(window->last()->sign(), Sign::Refusal)
      << "what waits is shown to a login that decides nothing: " << window->last()->words().toStdString();
  Press(Qt::Key_F3);
  WaitFor([&] { return station->filing(); }, "the form");
  TypedDocument typed = station->form()->document();
  typed.number = "C-79";
  typed.issued = "2026-01-02";
  station->form()->Show(typed);
  Press(Qt::Key_F1);
  WaitFor([&] { return shop.Number("select count(*) as n from book.document where accepted_by is null") == 1; }, "the document");
  window.reset();
  link.reset();
  OpenPapers("quality");
  AskFor("M4000");
  Press(Qt::Key_F4);
  WaitFor([&] { return shop.Number("select count(*) as n from book.document where accepted_by = 'test_quality'") == 1; }, "its acceptance");
}

TEST_F(PapersStationTest, AHoldThatWasLiftedIsPlacedAgainByOneKey) {
  shop.ReceiveCertified({});
  shop.Hold("M2208");
  OpenPapers();
  AskFor("M2208");
  Press(Qt::Key_F6);
  TypeIn("ok");
  Press(Qt::Key_Return);
  WaitFor([&] { return shop.Number("select count(*) as n from book.hold where lifted_by is null") == 0; }, "the hold to be off");
  WaitFor([&] { return window->last()->sign() == Sign::Done; }, "the word of it");
  Press(Qt::Key_Z, Qt::ControlModifier);
  WaitFor([&] { return shop.Number("select count(*) as n from book.hold where lifted_by is null and heat = 'M2208'") == 1; },
          "the hold again");
}

TEST_F(PapersStationTest, AnOrderLeavesUnderItsNote) {
  CutBar();
  OpenPapers("planner");
  TypeIn("O1");
  Press(Qt::Key_Return);
  ShowsWhat("O1");
  Press(Qt::Key_F9);
  WaitFor([&] { return window->findChild<QLineEdit*>("answer")->isVisible(); }, "the question");
  TypeIn("118");
  Press(Qt::Key_Return);
  WaitFor(
      [&] {
        return shop.Number(
                   "select count(*) as n from book.stroke s join book.shipment_line l using (shipment_line_id) join book.shipment h using (shipment_id) where h.note = '118'") ==
            14;
      },
      "the shipment");
}

TEST_F(PapersStationTest, WhatTheBookDoesNotKnowIsSaidAndNothingElseIsShownForIt) {
  OpenPapers();
  TypeIn("M22O8");
  Press(Qt::Key_Return);
  WaitFor([&] { return window->last()->sign() == Sign::Warning; }, "the words");
  EXPECT_FALSE(station->work().answer().has_value());
}

TEST_F(PapersStationTest, WhatWaitsForPapersIsAtTheLeft) {
  shop.Receive({.heat = "M4000"});
  OpenPapers();
  WaitFor([&] { return station->work().waiting().awaited.size() == 1; }, "the heat without papers");
  EXPECT_EQ(station->work().waiting().awaited[0].heat, "M4000");
}

}  // namespace
}  // namespace heatkeep
