#include "reports/workbook.h"

#include <xlsxwriter.h>

#include <ctime>
#include <stdexcept>

#include "reports/told_time.h"
#include "reports/whole_file.h"

namespace heatkeep {
namespace {

std::time_t TimeOf(const std::string& iso) {
  const std::string digits = DigitsOfTime(iso);
  if (digits.starts_with("0000") || digits.substr(6, 2) == "00")
    return std::time_t{86400} * 365 * 30;  // no date told: one that never changes
  const auto part = [&](std::size_t from, std::size_t size) { return std::stoi(digits.substr(from, size)); };
  std::tm when{};
  when.tm_year = part(0, 4) - 1900;
  when.tm_mon = part(4, 2) - 1;
  when.tm_mday = part(6, 2);
  when.tm_hour = part(8, 2);
  when.tm_min = part(10, 2);
  when.tm_sec = part(12, 2);
  return timegm(&when);
}

void Check(lxw_error error, const std::string& what) {
  if (error != LXW_NO_ERROR) throw std::runtime_error(what + ": " + lxw_strerror(error));
}

class Book {
 public:
  Book(const std::string& path, const std::string& file) : path_(path), book_(workbook_new(file.c_str())) {
    if (book_ == nullptr) throw std::runtime_error(path_ + ": not written: no memory for a workbook");
    head_ = workbook_add_format(book_);
    format_set_bold(head_);
    format_set_text_wrap(head_);
    format_set_align(head_, LXW_ALIGN_VERTICAL_TOP);
  }
  Book(const Book&) = delete;
  Book& operator=(const Book&) = delete;
  ~Book() {
    if (book_ != nullptr) lxw_workbook_free(book_);
  }

  void describe(const std::string& title, const PrintOptions& options) {
    lxw_doc_properties about{};
    std::string title_copy = title;  // the library's fields are char*, it copies them
    std::string author = options.author;
    about.title = title_copy.data();
    about.author = author.data();
    about.created = TimeOf(options.printed_at);
    Check(workbook_set_properties(book_, &about), path_ + ": properties");
  }

  void add(const Table& table, const PrintOptions& options) {
    lxw_worksheet* sheet = workbook_add_worksheet(book_, table.name.c_str());
    if (sheet == nullptr) throw std::runtime_error(path_ + ": not written: bad sheet name " + table.name);
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
      const auto column = static_cast<lxw_col_t>(c);
      lxw_format* format = workbook_add_format(book_);
      const int decimals = table.columns[c].decimals;
      const std::string pattern = decimals > 0 ? "0." + std::string(static_cast<std::size_t>(decimals), '0') : "General";
      format_set_num_format(format, pattern.c_str());
      Check(worksheet_set_column(sheet, column, column, table.columns[c].width, format), path_ + ": column");
      Check(worksheet_write_string(sheet, 0, column, table.columns[c].head.c_str(), head_), path_ + ": head");
    }
    lxw_row_t row = 1;
    for (const auto& cells : table.rows) {
      for (std::size_t c = 0; c < cells.size(); ++c) put(sheet, row, static_cast<lxw_col_t>(c), cells[c]);
      if (options.progress) options.progress("rows of a workbook written", row, table.rows.size());
      ++row;
    }
    worksheet_freeze_panes(sheet, 1, 0);
    if (!table.columns.empty() && !table.rows.empty())
      Check(worksheet_autofilter(sheet, 0, 0, row - 1, static_cast<lxw_col_t>(table.columns.size() - 1)), path_ + ": filter");
    if (table.chart && !table.rows.empty()) draw(sheet, table, *table.chart);
  }

  void close() {
    const lxw_error error = workbook_close(book_);
    book_ = nullptr;
    Check(error, path_ + ": not written");
  }

 private:
  void draw(lxw_worksheet* sheet, const Table& table, const TableChart& wanted) {
    lxw_chart* chart = workbook_add_chart(book_, wanted.bars ? LXW_CHART_COLUMN : LXW_CHART_LINE);
    const auto last = static_cast<lxw_row_t>(table.rows.size());
    const auto column = [](std::size_t c) { return static_cast<lxw_col_t>(c); };
    for (const std::size_t c : wanted.values) {
      lxw_chart_series* line = chart_add_series(chart, nullptr, nullptr);
      chart_series_set_categories(line, table.name.c_str(), 1, column(wanted.labels), last, column(wanted.labels));
      chart_series_set_values(line, table.name.c_str(), 1, column(c), last, column(c));
      chart_series_set_name_range(line, table.name.c_str(), 0, column(c));
    }
    chart_title_set_name(chart, wanted.title.c_str());
    Check(worksheet_insert_chart(sheet, 1, column(table.columns.size() + 1), chart), path_ + ": chart");
  }

  void put(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, const Cell& cell) {
    const std::string where = path_ + ": not written: row " + std::to_string(row) + ", column " + std::to_string(column + 1);
    if (const auto* text = std::get_if<std::string>(&cell))
      Check(text->empty() ? LXW_NO_ERROR : worksheet_write_string(sheet, row, column, text->c_str(), nullptr), where);
    else if (const auto* number = std::get_if<double>(&cell)) Check(worksheet_write_number(sheet, row, column, *number, nullptr), where);
    else Check(worksheet_write_number(sheet, row, column, static_cast<double>(std::get<std::int64_t>(cell)), nullptr), where);
  }

  std::string path_;
  lxw_workbook* book_;
  lxw_format* head_ = nullptr;
};

}  // namespace

double MmCell(Length length) { return static_cast<double>(length.nm) / static_cast<double>(kNmPerMm); }
double KgCell(Mass mass) { return static_cast<double>(mass.g) / 1000.0; }

void WriteWorkbook(const std::string& path, const std::string& title, const std::vector<Table>& tables, const PrintOptions& options) {
  WriteWholeFile(path, [&](const std::string& temporary) {
    Book book(path, temporary);
    book.describe(title, options);
    for (const Table& table : tables) book.add(table, options);
    book.close();
  });
}

}  // namespace heatkeep
