// The deeds of the trade: one method a function of schema api, named as it is there. The body of a deed is the JSON
// object that the function's own comment describes (schema/api/); the answer is the function's.
//
// Every method: done whole, or a DbError is thrown and nothing has changed. Repeating it with the same request number
// and body after a lost connection is harmless and answers the same. A refusal at the saw that the book remembers comes
// back as {"refused": code, "words": text}.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "client/gateway/connection.h"
#include "client/gateway/request_number.h"
#include "schema/terms/length.h"

namespace heatkeep {

using Json = nlohmann::json;

class Deeds {
 public:
  explicit Deeds(Connection& connection) : connection_(connection) {}

  Json DefineGrade(const RequestNumber& request, const Json& grades);
  Json DefineShop(const RequestNumber& request, const Json& shop);
  Json SetRules(const RequestNumber& request, const Json& rules);
  Json AllowGrade(const RequestNumber& request, const std::string& asked, const std::string& offered, const std::string& reason);
  Json AllowSection(const RequestNumber& request, const Json& asked, const Json& offered, const std::string& reason);

  Json ReceiveDelivery(const RequestNumber& request, const Json& delivery);
  Json OpenBalance(const RequestNumber& request, const Json& balance);
  Json FileDocument(const RequestNumber& request, const Json& document);
  Json DefineLimits(const RequestNumber& request, const Json& limits);
  Json PassOnDocument(const RequestNumber& request, const Json& passed);

  Json CorrectLength(const RequestNumber& request, const std::string& tag, Length length, std::optional<Length> doubt,
                     const std::string& cause, const std::string& measured_with = {});
  Json Quarantine(const RequestNumber& request, const std::string& tag, const std::string& reason);
  Json CloseConflict(const RequestNumber& request, std::int64_t conflict, const std::string& words, bool free);

  Json AddCutList(const RequestNumber& request, const Json& cut_list);
  Json CommitPlan(const RequestNumber& request, const Json& plan);
  Json CancelPlan(const RequestNumber& request, std::int64_t plan, const std::string& reason);
  Json Replan(const RequestNumber& request, const Json& mended);
  // measured_with: the tape or readout; empty: not said.
  Json MeasureAtSaw(const RequestNumber& request, const std::string& tag, Length length, const std::string& cause,
                    const std::string& measured_with = {});
  Json ReportMissing(const RequestNumber& request, const std::string& tag, const std::string& reason);
  // heat_read: the last characters of the heat as read from the metal; empty: nobody read it
  Json Pull(const RequestNumber& request, const std::string& tag, const std::string& saw, std::int64_t plan, const std::string& heat_read);
  Json RecordCut(const RequestNumber& request, const Json& cut);
  Json Ship(const RequestNumber& request, const Json& shipment);
  Json SealBook(const RequestNumber& request);

 private:
  Json Call(const std::string& call, std::initializer_list<Param> params);

  Connection& connection_;
};

}  // namespace heatkeep
