#include "client/command/option_values.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

#include "schema/terms/bad_text.h"

namespace heatkeep::command {
namespace {

// Letters to be put in, left out, changed or swapped with their neighbour until `a` is `b`.
std::size_t Apart(const std::string& a, const std::string& b) {
  std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
  for (std::size_t i = 0; i <= a.size(); ++i)
    for (std::size_t j = 0; j <= b.size(); ++j) {
      if (i == 0 || j == 0) {
        d[i][j] = i + j;
        continue;
      }
      d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
    }
  return d[a.size()][b.size()];
}

}  // namespace

std::string OneOfWords(const std::vector<std::string>& words) {
  std::string all;
  for (std::size_t i = 0; i < words.size(); ++i) all += (i == 0 ? "" : i + 1 < words.size() ? ", " : " or ") + words[i];
  return all;
}

std::vector<std::string> Near(const std::string& typed, const std::vector<std::string>& known) {
  std::vector<std::pair<std::size_t, std::string>> near;
  for (const std::string& word : known) {
    const bool begun = typed.size() >= 3 && word.starts_with(typed);
    const std::size_t apart = begun ? 1 : Apart(typed, word);
    if (apart <= std::max<std::size_t>(1, std::min(typed.size(), word.size()) / 3)) near.emplace_back(apart, word);
  }
  std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<std::string> words;
  for (const auto& [apart, word] : near)
    if (apart == near.front().first && words.size() < 3) words.push_back(word);
  return words;
}

CLI::Validator OneOf(std::vector<std::string> words) {
  std::string set = "{";
  for (const std::string& word : words) set += (set.size() > 1 ? "," : "") + word;
  return {[words = std::move(words)](const std::string& typed) -> std::string {
            if (std::find(words.begin(), words.end(), typed) != words.end()) return {};
            const std::vector<std::string> near = Near(typed, words);
            return Quoted(typed) + " is not known; expected " + OneOfWords(words) +
                (near.empty() ? "" : "; perhaps " + OneOfWords(near) + " is meant");
          },
          set + "}"};
}

CLI::Validator Between(double least, double most) {
  const auto text = [](double number) {
    std::array<char, 32> digits{};
    return std::string(digits.data(), std::to_chars(digits.data(), digits.data() + digits.size(), number, std::chars_format::fixed).ptr);
  };
  const std::string range = text(least) + " to " + text(most);
  return {[least, most, range](const std::string& typed) -> std::string {
            double number = least;  // what is no number at all is told so when it is read
            std::from_chars(typed.data(), typed.data() + typed.size(), number);
            return number >= least && number <= most ? "" : Quoted(typed) + " is out of range; expected " + range;
          },
          range};
}

}  // namespace heatkeep::command
