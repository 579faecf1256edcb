// Writes samples of every report, with invented data, into the folder named: sample_sheet FOLDER
#include <cstdio>
#include <exception>
#include <string>

#include "reports/balance_record.h"
#include "reports/pick_list.h"
#include "reports/trace_report.h"
#include "tests/reports/invented_sheet.h"
#include "tests/reports/invented_trace.h"

int main(int argc, char** argv) {
  if (argc != 2) {
    std::fputs("usage: sample_sheet FOLDER\n", stderr);
    return 2;
  }
  try {
    using namespace heatkeep;
    const std::string folder = std::string(argv[1]) + "/";
    const PrintOptions a4{PaperSize::A4, "2026-11-25T07:40:12", "Ostrel Shaftworks"};
    const PrintOptions letter{PaperSize::Letter, "2026-11-25T07:40:12", "Ostrel Shaftworks"};
    WritePickListPdf(folder + "pick_list_a4.pdf", InventedSheet(8), a4);
    WritePickListPdf(folder + "pick_list_letter.pdf", InventedSheet(8), letter, Units::Inch);
    WritePickListPdf(folder + "pick_list_60.pdf", InventedSheet(60), a4);
    WritePickListXlsx(folder + "pick_list.xlsx", InventedSheet(8), a4);
    const TraceRecord trace = InventedTrace(5);
    WriteTracePdf(folder + "trace.pdf", trace, a4);
    WriteTraceXlsx(folder + "trace.xlsx", trace, a4);
    WriteTraceJson(folder + "trace.json", trace);
    WriteBalancePdf(folder + "balance.pdf", InventedBalance(), a4);
    WriteBalanceXlsx(folder + "balance.xlsx", InventedBalance(), a4);
    WriteBalanceJson(folder + "balance.json", InventedBalance(), a4);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "sample_sheet: %s\n", error.what());
    return 1;
  }
  return 0;
}
