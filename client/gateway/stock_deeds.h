// The deeds of the stock side: one method a function of schema api, named as it is there. The body is the JSON object that
// the function's own comment describes (schema/api/); "true_at" (late entries) and "device" may be in every one.
//
// As with Deeds: done whole, or a DbError is thrown and nothing has changed; the same request number again is harmless.
#pragma once

#include "client/gateway/deeds.h"

namespace heatkeep {

class StockDeeds {
 public:
  explicit StockDeeds(Connection& connection) : connection_(connection) {}

  // The keys of these bodies are the names of the function's arguments: "tag", "place", ...
  Json PutAway(const RequestNumber& request, const Json& body);
  Json Quarantine(const RequestNumber& request, const Json& body);
  Json Release(const RequestNumber& request, const Json& body);
  Json PlaceHold(const RequestNumber& request, const Json& body);
  Json LiftHold(const RequestNumber& request, const Json& body);
  Json CorrectLength(const RequestNumber& request, const Json& body);
  Json CorrectReceipt(const RequestNumber& request, const Json& body);
  Json AllowAtRisk(const RequestNumber& request, const Json& body);

  Json ExpectDelivery(const RequestNumber& request, const Json& body);
  Json PromiseExpected(const RequestNumber& request, const Json& body);
  Json DecideOver(const RequestNumber& request, const Json& body);
  Json SignOpening(const RequestNumber& request, const Json& body);

  Json ReverseReceipt(const RequestNumber& request, const Json& body);

  Json FilePapers(const RequestNumber& request, const Json& body);
  Json AcceptDocument(const RequestNumber& request, const Json& body);
  Json ReplaceDocument(const RequestNumber& request, const Json& body);
  Json ChasePapers(const RequestNumber& request, const Json& body);
  Json DefineLimits(const RequestNumber& request, const Json& body);
  Json CorrectLimits(const RequestNumber& request, const Json& body);
  Json AttachFile(const RequestNumber& request, const Json& body);
  Json KeepPackage(const RequestNumber& request, const Json& body);

  Json MakeBundle(const RequestNumber& request, const Json& body);
  Json MoveBundle(const RequestNumber& request, const Json& body);
  Json OpenBundle(const RequestNumber& request, const Json& body);
  Json SendToSite(const RequestNumber& request, const Json& body);
  Json ReceiveTransfer(const RequestNumber& request, const Json& body);
  Json SendOutside(const RequestNumber& request, const Json& body);
  Json BackFromOutside(const RequestNumber& request, const Json& body);

  Json RecordDamage(const RequestNumber& request, const Json& body);
  Json Downgrade(const RequestNumber& request, const Json& body);
  Json CondemnHold(const RequestNumber& request, const Json& body);
  Json ReestablishIdentity(const RequestNumber& request, const Json& body);
  Json FoundPiece(const RequestNumber& request, const Json& body);
  Json FoundAgain(const RequestNumber& request, const Json& body);
  Json WriteOff(const RequestNumber& request, const Json& body);

  Json Sell(const RequestNumber& request, const Json& body);
  Json ReturnToSupplier(const RequestNumber& request, const Json& body);
  Json ReturnToOwner(const RequestNumber& request, const Json& body);
  Json BuyOver(const RequestNumber& request, const Json& body);
  Json CustomerReturn(const RequestNumber& request, const Json& body);

  Json FreezePlace(const RequestNumber& request, const Json& body);
  Json UnfreezePlace(const RequestNumber& request, const Json& body);
  Json CountSeen(const RequestNumber& request, const Json& body);
  Json ApproveCount(const RequestNumber& request, const Json& body);

  Json AddDevice(const RequestNumber& request, const Json& body);
  Json CalibrateDevice(const RequestNumber& request, const Json& body);
  Json ReprintLabel(const RequestNumber& request, const Json& body);
  Json LabelPrinted(const RequestNumber& request, const Json& body);
  Json LabelFailed(const RequestNumber& request, const Json& body);
  Json AddPhoto(const RequestNumber& request, const Json& body);

 private:
  Json Call(const char* deed, const RequestNumber& request, const Json& body);
  // Each key of the body is an argument; those in `needed` that are not said are null.
  Json CallNamed(const char* deed, const RequestNumber& request, const Json& body, std::initializer_list<const char*> needed);

  Connection& connection_;
};

}  // namespace heatkeep
