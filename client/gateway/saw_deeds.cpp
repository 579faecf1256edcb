#include "client/gateway/saw_deeds.h"

#include "client/gateway/call_deed.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

Param TextOf(const Json& body, const char* key) {
  const auto at = body.find(key);
  if (at == body.end() || at->is_null()) return std::nullopt;
  return at->is_string() ? at->get<std::string>() : at->dump();
}

}  // namespace

Json SawDeeds::Call(const std::string& call, std::initializer_list<Param> params) { return CallDeed(connection_, call, params); }

Json SawDeeds::Reserve(const RequestNumber& request, const Json& body) { return Call("reserve($1, $2)", {request.text, body.dump()}); }
Json SawDeeds::PullForLine(const RequestNumber& request, const Json& body) {
  return Call("pull_for_line($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::SplitPiece(const RequestNumber& request, const Json& body) {
  return Call("split_piece($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::RecordCut(const RequestNumber& request, const Json& body) { return Call("record_cut($1, $2)", {request.text, body.dump()}); }
Json SawDeeds::MakeUpBundle(const RequestNumber& request, const Json& body) {
  return Call("make_up_bundle($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::RecordBundle(const RequestNumber& request, const Json& body) {
  return Call("record_bundle($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::TakeTestSlice(const RequestNumber& request, const Json& body) {
  return Call("take_test_slice($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::ReuseReject(const RequestNumber& request, const Json& body) {
  return Call("reuse_reject($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::PiecesToStock(const RequestNumber& request, const Json& body) {
  return Call("pieces_to_stock($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::NotCut(const RequestNumber& request, const Json& body) { return Call("not_cut($1, $2)", {request.text, body.dump()}); }
Json SawDeeds::ChangeOrder(const RequestNumber& request, const Json& body) {
  return Call("change_order($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::Recut(const RequestNumber& request, const Json& body) { return Call("recut($1, $2)", {request.text, body.dump()}); }
Json SawDeeds::FirstPiece(const RequestNumber& request, const Json& body) {
  return Call("first_piece($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::HandOver(const RequestNumber& request, const Json& body) { return Call("hand_over($1, $2)", {request.text, body.dump()}); }
Json SawDeeds::ReportDefect(const RequestNumber& request, const Json& body) {
  return Call("report_defect($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::ReportHalfCut(const RequestNumber& request, const Json& body) {
  return Call("report_half_cut($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::DefineBins(const RequestNumber& request, const Json& body) {
  return Call("define_bins($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::ScrapPiece(const RequestNumber& request, const Json& body) {
  return Call("scrap_piece($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::ScrapTicket(const RequestNumber& request, const Json& body) {
  return Call("scrap_ticket($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::RecordConsent(const RequestNumber& request, const Json& body) {
  return Call("record_consent($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::SetSaw(const RequestNumber& request, const Json& body) { return Call("set_saw($1, $2)", {request.text, body.dump()}); }
Json SawDeeds::FitBand(const RequestNumber& request, const Json& body) { return Call("fit_band($1, $2)", {request.text, body.dump()}); }
Json SawDeeds::SendOffline(const RequestNumber& request, const Json& body) {
  return Call("send_offline($1, $2)", {request.text, body.dump()});
}
Json SawDeeds::SendKept(const Json& deed) {
  Json body;
  for (const char* key : {"device", "seq", "deed", "request", "true_at", "body"}) body[key] = deed.at(key);
  return SendOffline({deed.at("send").get<std::string>()}, body);
}

Json SawDeeds::Pull(const RequestNumber& request, const Json& body) {
  return Call("pull($1, $2, $3, $4, p_heat_read => $5, p_measured_nm => $6)",
              {request.text, TextOf(body, "tag"), TextOf(body, "saw"), TextOf(body, "plan"), TextOf(body, "heat_read"),
               TextOf(body, "measured_nm")});
}
Json SawDeeds::Unreserve(const RequestNumber& request, const Json& body) {
  return Call("unreserve($1, $2, $3)", {request.text, TextOf(body, "tag"), TextOf(body, "reason")});
}
Json SawDeeds::LapsePromises(const RequestNumber& request, const Json&) { return Call("lapse_promises($1)", {request.text}); }
Json SawDeeds::TakeOver(const RequestNumber& request, const Json& body) {
  return Call("take_over($1, $2)", {request.text, TextOf(body, "saw")});
}
Json SawDeeds::AnswerDefect(const RequestNumber& request, const Json& body) {
  return Call("answer_defect($1, $2, $3, $4)", {request.text, TextOf(body, "report"), TextOf(body, "answer"), TextOf(body, "words")});
}
Json SawDeeds::SignConsent(const RequestNumber& request, const Json& body) {
  return Call("sign_consent($1, $2)", {request.text, TextOf(body, "consent")});
}
Json SawDeeds::TakeTagBlock(const RequestNumber& request, const Json& body) {
  return Call("take_tag_block($1, $2, $3, $4)", {request.text, TextOf(body, "device"), TextOf(body, "site"), TextOf(body, "size")});
}

}  // namespace heatkeep
