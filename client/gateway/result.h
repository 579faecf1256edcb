// The rows of one answer, read by column name. A Result and its Rows hold the answer together: it goes with
// the last.
//
//   for (const Row row : connection.Execute("select tag, length_nm from api.stock"))
//     use(row.Text("tag"), row.Int("length_nm"));
//
// Every getter throws DbError(Bug) when the column is not there, the text is not of that type, or (getters
// that are not Optional...) the value is null.
#pragma once

#include <libpq-fe.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace heatkeep {

class Row {
 public:
  bool IsNull(std::string_view column) const;
  std::int64_t Int(std::string_view column) const;
  bool Bool(std::string_view column) const;
  std::string Text(std::string_view column) const;
  std::optional<std::int64_t> OptionalInt(std::string_view column) const;
  std::optional<std::string> OptionalText(std::string_view column) const;
  std::string TextOrNone(std::string_view column) const;  // "" where the value is null

 private:
  friend class Result;
  Row(std::shared_ptr<const PGresult> result, int index) : result_(std::move(result)), index_(index) {}
  std::optional<std::string_view> Raw(std::string_view column) const;
  std::string_view Wanted(std::string_view column) const;

  std::shared_ptr<const PGresult> result_;
  int index_;
};

class Result {
 public:
  explicit Result(PGresult* owned) : result_(owned, PQclear) {}

  int size() const { return PQntuples(result_.get()); }
  bool empty() const { return size() == 0; }
  Row operator[](int index) const;  // throws DbError(Bug) outside [0, size)
  Row Only() const;                 // the one row; throws DbError(Bug) when there are none or several
  std::int64_t Affected() const;    // rows inserted, updated, deleted; 0 where that makes no sense

  class Iterator {
   public:
    Row operator*() const { return (*result_)[index_]; }
    Iterator& operator++() {
      ++index_;
      return *this;
    }
    bool operator==(const Iterator& other) const { return index_ == other.index_; }

   private:
    friend class Result;
    Iterator(const Result& result, int index) : result_(&result), index_(index) {}
    const Result* result_;
    int index_;
  };
  Iterator begin() const { return {*this, 0}; }
  Iterator end() const { return {*this, size()}; }

 private:
  std::shared_ptr<PGresult> result_;
};

}  // namespace heatkeep
