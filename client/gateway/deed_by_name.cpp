#include "client/gateway/deed_by_name.h"

#include <functional>
#include <map>

#include "client/gateway/deeds.h"
#include "client/gateway/saw_deeds.h"
#include "client/gateway/stock_deeds.h"

namespace heatkeep {
namespace {

using Call = std::function<Json(Connection&, const RequestNumber&, const Json&)>;

template <typename Door>
Call By(Json (Door::*deed)(const RequestNumber&, const Json&)) {
  return [deed](Connection& book, const RequestNumber& request, const Json& body) { return (Door(book).*deed)(request, body); };
}

Json CloseConflict(Connection& book, const RequestNumber& request, const Json& body) {
  return Deeds(book).CloseConflict(request, body.at("conflict").get<std::int64_t>(), body.at("words").get<std::string>(),
                                   body.at("free").get<bool>());
}

// Of two deeds, both or neither: "document" is filed, and accepted under the request number "accepting".
Json FileThenAccept(Connection& book, const RequestNumber& request, const Json& body) {
  const Json& document = body.at("document");
  Transaction whole(book);
  StockDeeds(book).FilePapers(request, document);
  Json answer = StockDeeds(book).AcceptDocument({body.at("accepting").get<std::string>()},
                                                {{"issuer", document.at("issuer")}, {"number", document.at("number")}});
  whole.Commit();
  return answer;
}

const std::map<std::string, Call>& Calls() {
  static const std::map<std::string, Call> calls{
      {"accept_document", By(&StockDeeds::AcceptDocument)},
      {"add_photo", By(&StockDeeds::AddPhoto)},
      {"approve_count", By(&StockDeeds::ApproveCount)},
      {"attach_file", By(&StockDeeds::AttachFile)},
      {"close_conflict", CloseConflict},
      {"count_seen", By(&StockDeeds::CountSeen)},
      {"file_document", By(&Deeds::FileDocument)},
      {"file_papers", By(&StockDeeds::FilePapers)},
      {"file_papers+accept_document", FileThenAccept},
      {"freeze_place", By(&StockDeeds::FreezePlace)},
      {"hand_over", By(&SawDeeds::HandOver)},
      {"lift_hold", By(&StockDeeds::LiftHold)},
      {"move_bundle", By(&StockDeeds::MoveBundle)},
      {"not_cut", By(&SawDeeds::NotCut)},
      {"open_bundle", By(&StockDeeds::OpenBundle)},
      {"place_hold", By(&StockDeeds::PlaceHold)},
      {"pull", By(&SawDeeds::Pull)},
      {"put_away", By(&StockDeeds::PutAway)},
      {"receive_delivery", By(&Deeds::ReceiveDelivery)},
      {"record_cut", By(&SawDeeds::RecordCut)},
      {"reverse_receipt", By(&StockDeeds::ReverseReceipt)},
      {"ship", By(&Deeds::Ship)},
      {"take_over", By(&SawDeeds::TakeOver)},
      {"unfreeze_place", By(&StockDeeds::UnfreezePlace)},
  };
  return calls;
}

}  // namespace

Json DeedByName(Connection& book, const std::string& deed, const RequestNumber& request, const Json& body) {
  return Calls().at(deed)(book, request, body);
}

}  // namespace heatkeep
