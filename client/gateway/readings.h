// What people look at, read from the book's views. Each throws DbError; an empty answer means there is none.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// All pieces in the shop, or those of a grade (designation or number; empty: any), by section, grade, length.
std::vector<StockRow> ReadStock(Connection& connection, const std::string& grade = {});

// What was measured otherwise than written, from day to day (both ISO dates, included; empty: any), of a heat (empty: any), oldest first.
std::vector<MeasuredRow> ReadMeasured(Connection& connection, const std::string& from, const std::string& to, const std::string& heat);

struct PlanRow {
  std::int64_t plan = 0;
  std::string state, aim, saw, proof, made_by, made_at, due;
};
enum class Plans { All, Live };  // live: neither done nor cancelled
std::vector<PlanRow> ReadPlans(Connection& connection, Plans which = Plans::All);

// The pick list and saw sheet of a plan, blocks in walking order; nothing where there is no such plan.
std::optional<Sheet> ReadSheet(Connection& connection, std::int64_t plan);

// The tags of a plan's pieces that are no longer promised to it: held, quarantined, lapsed or cancelled since. (Not those it
// takes again in another way.)
std::vector<std::string> ReadDropped(Connection& connection, std::int64_t plan);

// The trace record of an order, a heat (of one mill, or of all where mill is empty) or a piece (tag, or earlier tag), without
// its proof. Nothing where the book knows no such thing. Read it in a Snapshot, so that all of it is of one state.
std::optional<TraceRecord> ReadTrace(Connection& connection, const std::string& kind, const std::string& name,
                                     const std::string& mill = {});

// Which heats went into an order; nothing where nothing was cut for it.
std::optional<OrderHeats> ReadOrderHeats(Connection& connection, const std::string& order);

// The balance of every lot of a heat.
std::vector<HeatBalance> ReadBalances(Connection& connection, const std::string& kind, const std::string& name,
                                      const std::string& mill = {});

// One check of the whole book, or of what was written since its last seal: the rules that are verified, each with what was seen. Never
// empty.
struct CheckRow {
  std::string check, detail;
  bool ok = false;
};
std::vector<CheckRow> VerifyBook(Connection& connection, bool only_new);

std::int64_t ReadSchemaVersion(Connection& connection);  // 0: an empty book
std::string ReadBookIdentity(Connection& connection);    // names this book among all others, for what is kept outside of it
std::string ReadSetting(Connection& connection, const std::string& name, const std::string& otherwise);  // as in force now
std::string ReadServerTime(Connection& connection);  // ISO 8601, in the session's time zone

std::string ReadCurrency(Connection& connection);  // "EUR"; empty where the shop has not said

struct ConflictRow {
  std::int64_t conflict = 0;
  std::string kind, tag, words, closed_by, closing_words;  // closed_by empty: open
};
std::vector<ConflictRow> ReadConflicts(Connection& connection);

struct CutListRow {
  std::string name;
  int lines = 0;
  std::int64_t pieces = 0, cut = 0, planned = 0, open = 0;
  std::string due;
};
std::vector<CutListRow> ReadCutLists(Connection& connection);

// The words of a view's column, each once: for checking a file before a deed.
std::vector<std::string> ReadNames(Connection& connection, const std::string& view, const std::string& column);

// The functions of schema api that this login may call.
std::vector<std::string> ReadActions(Connection& connection);

// The roles that may call this deed or read this view, in the order clerk, planner, saw, quality, owner.
std::vector<std::string> RolesThatMay(Connection& connection, const std::string& door);

}  // namespace heatkeep
