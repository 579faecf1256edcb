// The deeds at a saw and the lead's about them: one method a function of schema api, named as it is there. Every body is
// the JSON object that the function's own comment describes (schema/api/); those of the last group are taken apart here.
//
// Promised as in client/gateway/deeds.h: done whole, or a DbError and nothing has changed; the same request number again
// answers the same; a refusal that the book remembers comes back as {"refused": code, "words": text}.
#pragma once

#include <initializer_list>
#include <nlohmann/json.hpp>
#include <string>

#include "client/gateway/connection.h"
#include "client/gateway/request_number.h"

namespace heatkeep {

class SawDeeds {
 public:
  using Json = nlohmann::json;
  explicit SawDeeds(Connection& connection) : connection_(connection) {}

  Json Reserve(const RequestNumber& request, const Json& body);
  Json PullForLine(const RequestNumber& request, const Json& body);
  Json SplitPiece(const RequestNumber& request, const Json& body);
  Json RecordCut(const RequestNumber& request, const Json& body);
  Json MakeUpBundle(const RequestNumber& request, const Json& body);
  Json RecordBundle(const RequestNumber& request, const Json& body);
  Json TakeTestSlice(const RequestNumber& request, const Json& body);
  Json ReuseReject(const RequestNumber& request, const Json& body);
  Json PiecesToStock(const RequestNumber& request, const Json& body);
  Json NotCut(const RequestNumber& request, const Json& body);
  Json ChangeOrder(const RequestNumber& request, const Json& body);
  Json Recut(const RequestNumber& request, const Json& body);
  Json FirstPiece(const RequestNumber& request, const Json& body);
  Json HandOver(const RequestNumber& request, const Json& body);
  Json ReportDefect(const RequestNumber& request, const Json& body);
  Json ReportHalfCut(const RequestNumber& request, const Json& body);
  Json DefineBins(const RequestNumber& request, const Json& body);
  Json ScrapPiece(const RequestNumber& request, const Json& body);
  Json ScrapTicket(const RequestNumber& request, const Json& body);
  Json RecordConsent(const RequestNumber& request, const Json& body);
  Json SetSaw(const RequestNumber& request, const Json& body);
  Json FitBand(const RequestNumber& request, const Json& body);
  Json SendOffline(const RequestNumber& request, const Json& body);
  Json SendKept(const Json& deed);  // one that a saw's queue kept (client/queue/saw_queue.h): "send", "device", "seq", "deed", "request",
                                    // "true_at", "body"

  Json Pull(const RequestNumber& request, const Json& body);           // {"tag","saw","plan"?,"heat_read"?,"measured_nm"?}
  Json Unreserve(const RequestNumber& request, const Json& body);      // {"tag","reason"}
  Json LapsePromises(const RequestNumber& request, const Json& body);  // {}
  Json TakeOver(const RequestNumber& request, const Json& body);       // {"saw"}
  Json AnswerDefect(const RequestNumber& request, const Json& body);   // {"report","answer","words"}
  Json SignConsent(const RequestNumber& request, const Json& body);    // {"consent"}
  Json TakeTagBlock(const RequestNumber& request, const Json& body);   // {"device","site","size"}

 private:
  Json Call(const std::string& call, std::initializer_list<Param> params);

  Connection& connection_;
};

}  // namespace heatkeep
