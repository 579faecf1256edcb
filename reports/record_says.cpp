#include "reports/record_says.h"

#include <nlohmann/json.hpp>

namespace heatkeep {

std::string RecordSays(const nlohmann::ordered_json& record) {
  nlohmann::ordered_json says = record;
  for (const char* passing :
       {"asked_at", "asked_by", "printed_at", "author", "digest", "happenings", "proof", "laps", "digest_before", "digest_after"})
    says.erase(passing);
  return says.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

nlohmann::ordered_json ProofJson(const RecordProof& proof) {
  if (proof.digest.empty()) return nullptr;
  return {{"digest", proof.digest},
          {"content", proof.content},
          {"happenings", proof.happenings},
          {"ends", nlohmann::ordered_json::parse(proof.ends)}};
}

std::string ProofWords(const RecordProof& proof) {
  if (proof.digest.empty()) return "not kept: this record cannot be asked about";
  return proof.digest + ", over " + std::to_string(proof.happenings) + " happenings in the chains it stands on";
}

}  // namespace heatkeep
