#include "client/gateway/deeds.h"

#include "client/gateway/call_deed.h"

namespace heatkeep {

Json Deeds::Call(const std::string& call, std::initializer_list<Param> params) { return CallDeed(connection_, call, params); }

Json Deeds::DefineGrade(const RequestNumber& request, const Json& grades) {
  return Call("define_grade($1, $2)", {request.text, grades.dump()});
}
Json Deeds::DefineShop(const RequestNumber& request, const Json& shop) { return Call("define_shop($1, $2)", {request.text, shop.dump()}); }
Json Deeds::SetRules(const RequestNumber& request, const Json& rules) { return Call("set_rules($1, $2)", {request.text, rules.dump()}); }
Json Deeds::AllowGrade(const RequestNumber& request, const std::string& asked, const std::string& offered, const std::string& reason) {
  return Call("allow_grade($1, $2, $3, $4)", {request.text, asked, offered, reason});
}
Json Deeds::AllowSection(const RequestNumber& request, const Json& asked, const Json& offered, const std::string& reason) {
  return Call("allow_section($1, $2, $3, $4)", {request.text, asked.dump(), offered.dump(), reason});
}
Json Deeds::ReceiveDelivery(const RequestNumber& request, const Json& delivery) {
  return Call("receive_delivery($1, $2)", {request.text, delivery.dump()});
}
Json Deeds::OpenBalance(const RequestNumber& request, const Json& balance) {
  return Call("open_balance($1, $2)", {request.text, balance.dump()});
}
Json Deeds::FileDocument(const RequestNumber& request, const Json& document) {
  return Call("file_document($1, $2)", {request.text, document.dump()});
}
Json Deeds::DefineLimits(const RequestNumber& request, const Json& limits) {
  return Call("define_limits($1, $2)", {request.text, limits.dump()});
}
Json Deeds::PassOnDocument(const RequestNumber& request, const Json& passed) {
  return Call("pass_on_document($1, $2)", {request.text, passed.dump()});
}
Json Deeds::Quarantine(const RequestNumber& request, const std::string& tag, const std::string& reason) {
  return Call("quarantine($1, $2, $3)", {request.text, tag, reason});
}
Json Deeds::CloseConflict(const RequestNumber& request, std::int64_t conflict, const std::string& words, bool free) {
  return Call("close_conflict($1, $2, $3, $4)", {request.text, conflict, words, free});
}
Json Deeds::AddCutList(const RequestNumber& request, const Json& cut_list) {
  return Call("add_cut_list($1, $2)", {request.text, cut_list.dump()});
}
Json Deeds::CommitPlan(const RequestNumber& request, const Json& plan) { return Call("commit_plan($1, $2)", {request.text, plan.dump()}); }
Json Deeds::CancelPlan(const RequestNumber& request, std::int64_t plan, const std::string& reason) {
  return Call("cancel_plan($1, $2, $3)", {request.text, plan, reason});
}
Json Deeds::Replan(const RequestNumber& request, const Json& mended) { return Call("replan($1, $2)", {request.text, mended.dump()}); }
Json Deeds::MeasureAtSaw(const RequestNumber& request, const std::string& tag, Length length, const std::string& cause,
                         const std::string& measured_with) {
  return Call("measure_at_saw($1, $2, $3, $4, nullif($5, ''))", {request.text, tag, length.nm, cause, measured_with});
}
Json Deeds::ReportMissing(const RequestNumber& request, const std::string& tag, const std::string& reason) {
  return Call("report_missing($1, $2, $3)", {request.text, tag, reason});
}
Json Deeds::CorrectLength(const RequestNumber& request, const std::string& tag, Length length, std::optional<Length> doubt,
                          const std::string& cause, const std::string& measured_with) {
  return Call("correct_length($1, $2, $3, $4, $5, p_measured_with => nullif($6, ''))",
              {request.text, tag, length.nm, doubt ? std::optional(doubt->nm) : std::nullopt, cause, measured_with});
}
Json Deeds::Pull(const RequestNumber& request, const std::string& tag, const std::string& saw, std::int64_t plan,
                 const std::string& heat_read) {
  return Call("pull($1, $2, $3, $4, p_heat_read => $5)", {request.text, tag, saw, plan, heat_read});
}
Json Deeds::RecordCut(const RequestNumber& request, const Json& cut) { return Call("record_cut($1, $2)", {request.text, cut.dump()}); }
Json Deeds::Ship(const RequestNumber& request, const Json& shipment) { return Call("ship($1, $2)", {request.text, shipment.dump()}); }
Json Deeds::SealBook(const RequestNumber& request) { return Call("seal_book($1)", {request.text}); }

}  // namespace heatkeep
