// The metal balance of a heat: received = where the metal is or went + unexplained, to the nanometre.
// Paper, workbook and JSON say the same sums; whether they are equal is computed here, never taken on trust.
//
// JSON of a balance (keys stay): "mill", "heat", "grade", "section", "condition", "papers" texts;
// "classes": array of { "name", "in": bool, "length_nm", "mass_g" } in the book's order; "in_nm", "out_nm",
// "difference_nm" (in - out), "in_g", "out_g" integers; "balanced": true when difference_nm is 0.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "reports/paper.h"
#include "reports/workbook.h"
#include "schema/terms/rows.h"

namespace heatkeep {

struct BalanceSums {
  Length in, out;
  Mass in_mass, out_mass;
  Length difference() const { return in - out; }
  bool balanced() const { return in == out; }
};
BalanceSums SumsOf(const HeatBalance& balance);

// Letter of a class of metal that went out, A, B, ... in order; "" for metal that came in.
std::string ClassLetter(const HeatBalance& balance, std::size_t index);

// One row a class, the sums at the end.
Table BalanceTable(const HeatBalance& balance, const std::string& name);
nlohmann::ordered_json BalanceJson(const HeatBalance& balance);

// Head, bar, table and check of one balance, as items of a flow.
void AddBalance(Flow& flow, const HeatBalance& balance, double width);

// The bar of a balance: what came in as one bar to scale, split into where it is; letters as in the table.
// Returns its height; paints it when `pen` is given.
double DrawBalanceBar(Pen* pen, double x, double y, double width, const HeatBalance& balance);

// A balance alone. All throw std::runtime_error with the path and the reason and leave an older file as it
// was.
void WriteBalancePdf(const std::string& path, const HeatBalance& balance, const PrintOptions& options, const RecordProof& proof = {});
void WriteBalanceXlsx(const std::string& path, const HeatBalance& balance, const PrintOptions& options, const RecordProof& proof = {});
void WriteBalanceCsv(const std::string& path, const HeatBalance& balance);
std::string BalanceRecordJson(const HeatBalance& balance, const PrintOptions& options,
                              const RecordProof& proof = {});  // {"record", "balance", "printed_at", "author", "proof"}
std::string BalanceSays(const HeatBalance& balance);           // record_says.h

}  // namespace heatkeep
