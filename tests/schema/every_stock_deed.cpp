#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

constexpr const char* kDay = "2026-01-02";

Json DocumentOf(const std::string& number, const std::string& heat) {
  return {{"issuer", "Vandrek"},
          {"number", number},
          {"type", "3.1"},
          {"issued_on", kDay},
          {"lots", Json::array({{{"heat", heat}, {"section", Round(80)}, {"condition", "+QT"}, {"grade", "42CrMo4"}}})}};
}

void AtTheDoor(SmallShop& shop) {
  DoBody(shop.planner, "expect_delivery",
         {{"purchase_order", "P1"},
          {"supplier", "Vandrek"},
          {"lines",
           Json::array({{{"line", "1"},
                         {"section", Round(80)},
                         {"grade", "42CrMo4"},
                         {"condition", "+QT"},
                         {"length_nm", Mm(6000)},
                         {"quantity", 3},
                         {"due", "2030-01-01"}}})}});
  shop.AddLine({.order = "S1", .condition = "+QT"});
  DoBody(shop.planner, "promise_expected",
         {{"purchase_order", "P1"}, {"purchase_line", "1"}, {"order", "S1"}, {"line", "10"}, {"bars", 1}});
  shop.Deliver("OVER", {{.heat = "S0", .count = 3, .slip_count = 2}});
  DoBody(shop.planner, "decide_over", {{"supplier", "Vandrek"}, {"note", "OVER"}, {"line", "1"}, {"keep", true}, {"reason", "we need it"}});
  shop.Deliver("WRONG", {{.heat = "S8", .count = 2}});
  const auto jobs = [&] { return shop.Number("select max(label_job_id) as n from book.label_job"); };
  DoBody(shop.clerk, "label_failed", {{"job", jobs()}, {"printer", "gate"}, {"reason", "no ribbon"}});
  DoBody(shop.clerk, "label_printed", {{"jobs", {jobs()}}, {"printer", "gate"}});
  DoBody(shop.quality, "reverse_receipt", {{"note", "WRONG"}, {"supplier", "Vandrek"}, {"reason", "another lorry's slip"}});
  const Json opening{{"name", "stock side"}, {"lines", Json::array({LineJson({.heat = "", .read_from = "none", .kind = "drop"}, "1")})}};
  DoBody(shop.clerk, "open_balance", opening);
  DoBody(shop.planner, "sign_opening", {{"name", "stock side"}});
  DoBody(shop.quality, "define_limits", Json::array({{{"grade", "42CrMo4"}, {"element", "C"}, {"most", 460000}, {"source", "invented"}}}));
  DoBody(shop.quality, "correct_limits",
         {{"reason", "misread"},
          {"limits", Json::array({{{"grade", "42CrMo4"}, {"element", "C"}, {"most", 450000}, {"source", "invented"}}})}});
  shop.Receive({.heat = "S2"});
  DoBody(shop.clerk, "chase_papers", {{"mill", "Vandrek"}, {"heat", "S2"}, {"chase_on", "2030-01-01"}, {"words", "asked by letter"}});
  DoBody(shop.clerk, "file_papers", DocumentOf("S2/1", "S2"));
  DoBody(shop.quality, "accept_document", {{"issuer", "Vandrek"}, {"number", "S2/1"}});
  Json newer = DocumentOf("S2/1", "S2");
  newer["reason"] = "a test value was misprinted";
  DoBody(shop.quality, "replace_document", newer);
}

void OnTheRack(SmallShop& shop) {
  const auto tags = shop.ReceiveCertified({.heat = "S3", .count = 6});
  DoBody(shop.clerk, "make_bundle", {{"bundle", "strap 1"}, {"tags", {tags[0], tags[1]}}});
  DoBody(shop.clerk, "move_bundle", {{"bundle", "strap 1"}, {"place", "GATE"}});
  DoBody(shop.saw, "open_bundle", {{"bundle", "strap 1"}});
  DoBody(shop.clerk, "send_to_site", {{"tags", {tags[0]}}, {"site", "van"}, {"note", "T1"}});
  DoBody(shop.clerk, "receive_transfer", {{"tag", tags[0]}, {"place", "VAN-1"}, {"length_nm", Mm(5999)}});
  DoBody(shop.quality, "add_device", {{"device", "tape 1"}, {"kind", "tape"}, {"site", "main"}});
  DoBody(shop.quality, "calibrate_device",
         {{"device", "tape 1"}, {"calibrated_on", kDay}, {"due_on", "2030-01-01"}, {"doubt_nm", Mm(1)}, {"certificate", "K 7"}});
  const Json photo = DoBody(shop.clerk, "add_photo", {{"tag", tags[2]}, {"kind", "mark"}, {"file_base64", SmallPng()}});
  DoBody(shop.saw, "reprint_label", {{"tag", tags[2]}, {"why", "torn"}, {"old_destroyed", true}, {"photo_id", photo.at("photo_id")}});
  DoBody(shop.saw, "record_damage", {{"tag", tags[2]}, {"kind", "bent"}, {"usable", true}, {"words", "3 mm over the length"}});
  DoBody(shop.planner, "send_outside", {{"tag", tags[2]}, {"party", "Hardening works"}, {"process", "heat treatment"}, {"note", "H1"}});
  DoBody(shop.quality, "back_from_outside", {{"tag", tags[2]}, {"place", "B1-1"}, {"length_nm", Mm(6000)}, {"condition", "+N"}});
  DoBody(shop.quality, "downgrade", {{"tag", tags[3]}, {"to", "2.2"}, {"reason", "tests of another section"}});
  const std::int64_t hold = shop.Hold("S3").at("hold_id");
  DoBody(shop.quality, "condemn_hold", {{"hold_id", hold}, {"reason", "letter of the mill"}});
  DoBody(shop.clerk, "return_to_supplier", {{"tag", tags[4]}, {"note", "R1"}, {"claim", "C1"}, {"reason", "condemned"}});
}

void Counted(SmallShop& shop) {
  const auto tags = shop.ReceiveCertified({.heat = "S4", .length = 640, .count = 3, .place = "B3", .kind = "drop"});
  DoBody(shop.planner, "freeze_place", {{"place", "B3"}});
  DoBody(shop.planner, "unfreeze_place", {{"place", "B3"}, {"reason", "tomorrow"}});
  DoBody(shop.planner, "freeze_place", {{"place", "B3"}});
  DoBody(shop.clerk, "count_seen", {{"place", "B3"}, {"seen", Json::array({{{"tag", tags[0]}}})}, {"done", true}});
  DoBody(shop.planner, "approve_count", {{"place", "B3"}, {"words", "looked under the rack"}});
  DoBody(shop.clerk, "found_again", {{"tag", tags[1]}, {"read", "S4"}, {"length_nm", Mm(640)}, {"place", "B3"}});
  DoBody(shop.owner, "write_off", {{"tag", tags[2]}, {"reason", "not found in a month"}});
  const std::string found =
      DoBody(shop.saw, "found_piece", {{"section", Round(80)}, {"length_nm", Mm(300)}, {"marks", "none"}, {"place", "QUAR"}}).at("tag");
  DoBody(shop.quality, "reestablish_identity",
         {{"tag", found}, {"method", "analysis"}, {"result", "Cr 1.0, Mo 0.2"}, {"grade", "42CrMo4"}});
}

void Leaving(SmallShop& shop) {
  const auto ours = shop.ReceiveCertified({.heat = "S5", .count = 1});
  DoBody(shop.planner, "sell",
         {{"tags", ours}, {"order", "X1"}, {"customer", "Pallant"}, {"note", "L1"}, {"papers", "3.1"}, {"papers_sent", true}});
  DoBody(shop.clerk, "customer_return",
         {{"customer", "Pallant"},
          {"note", "B1"},
          {"reason", "bought twice"},
          {"identity", "our tag"},
          {"held_by", "Pallant"},
          {"tag", ours[0]},
          {"length_nm", Mm(6000)},
          {"place", "QUAR"}});
  const auto theirs = shop.ReceiveCertified({.heat = "S6", .count = 2, .owner = "Ister"});
  DoBody(shop.planner, "return_to_owner",
         {{"tag", theirs[0]}, {"note", "L2"}, {"fate", "returned"}, {"writing", "signed by their driver"}});
  DoBody(shop.planner, "buy_over", {{"tag", theirs[1]}, {"writing", "letter of 3 March"}, {"cents_per_tonne", 90000}});
}

}  // namespace

Json DoBody(Connection& who, const std::string& deed, const Json& body) { return Do(who, deed, {body.dump()}); }

std::string SmallPng() { return "iVBORw0KGgoAAAANSUhEUg=="; }

void AddVanAndRack(SmallShop& shop) {
  const auto place = [](const char* name, const char* site, const char* kind) {
    return Json{{"place", name}, {"site", site}, {"kind", kind}};
  };
  DoBody(shop.owner, "define_shop",
         {{"sites", Json::array({{{"site", "van"}, {"letter", "V"}, {"offline_letter", "W"}}})},
          {"places", {place("VAN-1", "van", "rack"), place("B3", "main", "rack")}}});
}

void DoEveryStockDeed(SmallShop& shop) {
  AddVanAndRack(shop);
  AtTheDoor(shop);
  OnTheRack(shop);
  Counted(shop);
  Leaving(shop);
}

}  // namespace heatkeep
