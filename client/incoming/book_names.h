// The words a file may use because the book knows them: checked line by line before a deed, so that every bad line is
// named and nothing is half-applied.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "client/intake/file_rows.h"

namespace heatkeep::incoming {

class BookNames {
 public:
  // `facts`: how the file was read, for naming the row of a spreadsheet.
  BookNames(Connection& connection, std::string file, const intake::TableFacts& facts);

  // Each adds a problem for `line` when the book does not know the word. Empty words are passed.
  void Grade(int line, const std::string& word);
  void Party(int line, const std::string& what, const std::string& word);
  void Place(int line, const std::string& word);

  // Another problem of the file that only the book's rules make one.
  void Problem(int line, const std::string& wrong, const std::string& expected);

  const std::vector<intake::FileProblem>& problems() const { return problems_; }

 private:
  void Need(const std::set<std::string>& known, int line, const std::string& what, const std::string& word, const std::string& expected);

  std::string file_, sheet_;
  std::set<std::string> grades_, parties_, places_;
  std::vector<intake::FileProblem> problems_;
};

}  // namespace heatkeep::incoming
