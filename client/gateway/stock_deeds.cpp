#include "client/gateway/stock_deeds.h"

#include "client/gateway/call_deed.h"

namespace heatkeep {

Json StockDeeds::Call(const char* deed, const RequestNumber& request, const Json& body) {
  return CallDeed(connection_, std::string(deed) + "($1, $2)", {request.text, body.dump()});
}

Json StockDeeds::CallNamed(const char* deed, const RequestNumber& request, const Json& body, std::initializer_list<const char*> needed) {
  Json all = body;
  for (const char* key : needed)
    if (!all.contains(key)) all[key] = nullptr;
  std::string call = std::string(deed) + "(p_request => $1";
  std::vector<Param> params{request.text};
  for (const auto& [key, value] : all.items()) {
    params.push_back(value.is_null() ? Param{std::nullopt} : value.is_string() ? Param{value.get<std::string>()} : Param{value.dump()});
    call += ", p_" + key + " => $" + std::to_string(params.size());
  }
  return CallDeed(connection_, call + ')', params);
}

Json StockDeeds::PutAway(const RequestNumber& request, const Json& body) { return CallNamed("put_away", request, body, {}); }
Json StockDeeds::Quarantine(const RequestNumber& request, const Json& body) { return CallNamed("quarantine", request, body, {}); }
Json StockDeeds::Release(const RequestNumber& request, const Json& body) { return CallNamed("release", request, body, {}); }
Json StockDeeds::PlaceHold(const RequestNumber& request, const Json& body) { return CallNamed("place_hold", request, body, {"mill"}); }
Json StockDeeds::LiftHold(const RequestNumber& request, const Json& body) { return CallNamed("lift_hold", request, body, {}); }
Json StockDeeds::CorrectLength(const RequestNumber& request, const Json& body) {
  return CallNamed("correct_length", request, body, {"doubt_nm"});
}
Json StockDeeds::CorrectReceipt(const RequestNumber& request, const Json& body) {
  return CallNamed("correct_receipt", request, body, {"owner"});
}
Json StockDeeds::AllowAtRisk(const RequestNumber& request, const Json& body) { return CallNamed("allow_at_risk", request, body, {}); }

Json StockDeeds::ExpectDelivery(const RequestNumber& request, const Json& body) { return Call("expect_delivery", request, body); }
Json StockDeeds::PromiseExpected(const RequestNumber& request, const Json& body) { return Call("promise_expected", request, body); }
Json StockDeeds::DecideOver(const RequestNumber& request, const Json& body) { return Call("decide_over", request, body); }
Json StockDeeds::SignOpening(const RequestNumber& request, const Json& body) { return Call("sign_opening", request, body); }
Json StockDeeds::ReverseReceipt(const RequestNumber& request, const Json& body) { return Call("reverse_receipt", request, body); }
Json StockDeeds::FilePapers(const RequestNumber& request, const Json& body) { return Call("file_papers", request, body); }
Json StockDeeds::AcceptDocument(const RequestNumber& request, const Json& body) { return Call("accept_document", request, body); }
Json StockDeeds::ReplaceDocument(const RequestNumber& request, const Json& body) { return Call("replace_document", request, body); }
Json StockDeeds::ChasePapers(const RequestNumber& request, const Json& body) { return Call("chase_papers", request, body); }
Json StockDeeds::DefineLimits(const RequestNumber& request, const Json& body) { return Call("define_limits", request, body); }
Json StockDeeds::CorrectLimits(const RequestNumber& request, const Json& body) { return Call("correct_limits", request, body); }
Json StockDeeds::AttachFile(const RequestNumber& request, const Json& body) { return Call("attach_file", request, body); }
Json StockDeeds::KeepPackage(const RequestNumber& request, const Json& body) { return Call("keep_package", request, body); }
Json StockDeeds::MakeBundle(const RequestNumber& request, const Json& body) { return Call("make_bundle", request, body); }
Json StockDeeds::MoveBundle(const RequestNumber& request, const Json& body) { return Call("move_bundle", request, body); }
Json StockDeeds::OpenBundle(const RequestNumber& request, const Json& body) { return Call("open_bundle", request, body); }
Json StockDeeds::SendToSite(const RequestNumber& request, const Json& body) { return Call("send_to_site", request, body); }
Json StockDeeds::ReceiveTransfer(const RequestNumber& request, const Json& body) { return Call("receive_transfer", request, body); }
Json StockDeeds::SendOutside(const RequestNumber& request, const Json& body) { return Call("send_outside", request, body); }
Json StockDeeds::BackFromOutside(const RequestNumber& request, const Json& body) { return Call("back_from_outside", request, body); }
Json StockDeeds::RecordDamage(const RequestNumber& request, const Json& body) { return Call("record_damage", request, body); }
Json StockDeeds::Downgrade(const RequestNumber& request, const Json& body) { return Call("downgrade", request, body); }
Json StockDeeds::CondemnHold(const RequestNumber& request, const Json& body) { return Call("condemn_hold", request, body); }
Json StockDeeds::ReestablishIdentity(const RequestNumber& request, const Json& body) { return Call("reestablish_identity", request, body); }
Json StockDeeds::FoundPiece(const RequestNumber& request, const Json& body) { return Call("found_piece", request, body); }
Json StockDeeds::FoundAgain(const RequestNumber& request, const Json& body) { return Call("found_again", request, body); }
Json StockDeeds::WriteOff(const RequestNumber& request, const Json& body) { return Call("write_off", request, body); }
Json StockDeeds::Sell(const RequestNumber& request, const Json& body) { return Call("sell", request, body); }
Json StockDeeds::ReturnToSupplier(const RequestNumber& request, const Json& body) { return Call("return_to_supplier", request, body); }
Json StockDeeds::ReturnToOwner(const RequestNumber& request, const Json& body) { return Call("return_to_owner", request, body); }
Json StockDeeds::BuyOver(const RequestNumber& request, const Json& body) { return Call("buy_over", request, body); }
Json StockDeeds::CustomerReturn(const RequestNumber& request, const Json& body) { return Call("customer_return", request, body); }
Json StockDeeds::FreezePlace(const RequestNumber& request, const Json& body) { return Call("freeze_place", request, body); }
Json StockDeeds::UnfreezePlace(const RequestNumber& request, const Json& body) { return Call("unfreeze_place", request, body); }
Json StockDeeds::CountSeen(const RequestNumber& request, const Json& body) { return Call("count_seen", request, body); }
Json StockDeeds::ApproveCount(const RequestNumber& request, const Json& body) { return Call("approve_count", request, body); }
Json StockDeeds::AddDevice(const RequestNumber& request, const Json& body) { return Call("add_device", request, body); }
Json StockDeeds::CalibrateDevice(const RequestNumber& request, const Json& body) { return Call("calibrate_device", request, body); }
Json StockDeeds::ReprintLabel(const RequestNumber& request, const Json& body) { return Call("reprint_label", request, body); }
Json StockDeeds::LabelPrinted(const RequestNumber& request, const Json& body) { return Call("label_printed", request, body); }
Json StockDeeds::LabelFailed(const RequestNumber& request, const Json& body) { return Call("label_failed", request, body); }
Json StockDeeds::AddPhoto(const RequestNumber& request, const Json& body) { return Call("add_photo", request, body); }

}  // namespace heatkeep
