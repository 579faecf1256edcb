// make_scenario REFERENCE-FOLDER OUTPUT-FOLDER: writes the files of Ostrel Shaftworks, the demo shop. The
// same bytes on every machine. Exit 0 when all is written, 2 with one line on standard error when not.
#include <exception>
#include <filesystem>
#include <iostream>
#include <span>

#include "seed/scenario/csv.h"
#include "seed/scenario/cut_lists.h"
#include "seed/scenario/reference.h"
#include "seed/scenario/shop.h"
#include "seed/scenario/stock.h"

int main(int argc, char** argv) {
  using namespace heatkeep::scenario;
  const std::span<char*> words(argv, static_cast<std::size_t>(argc));
  if (words.size() != 3) {
    std::cerr << "make_scenario: two folders are expected: the one of grades.csv, and where to write\n";
    return 2;
  }
  try {
    const std::filesystem::path out = words[2];
    const auto grades = read_reference(words[1]);
    const Stock stock = make_stock(grades);
    const CutLists lists = make_cut_lists(stock);
    std::filesystem::create_directories(out);
    write_bytes(out / "shop.json", shop_file());
    write_bytes(out / "people.csv", people_file());
    write_bytes(out / "opening.csv", opening_file(stock));
    write_bytes(out / "deliveries.csv", deliveries_file(stock));
    write_bytes(out / "certificates.csv", certificates_file(stock, grades));
    write_bytes(out / "cutlist_a.csv", lists.a);
    write_bytes(out / "cutlist_b.csv", lists.b);
    write_bytes(out / "cutlist_c.csv", lists.c);
  } catch (const std::exception& e) {
    std::cerr << "make_scenario: " << e.what() << '\n';
    return 2;
  }
  return 0;
}
