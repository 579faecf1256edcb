#include "schema/terms/plain_text.h"

#include <array>
#include <cstdio>
#include <utility>

namespace heatkeep {
namespace {

struct Sign {
  std::string_view typed, plain;
};

constexpr std::array<Sign, 32> kSigns{{
    {"\u00A0", " "},    {"\u2002", " "},    {"\u2003", " "},    {"\u2007", " "},    {"\u2009", " "},    {"\u200A", " "},
    {"\u202F", " "},    {"\u3000", " "},    {"\u2018", "'"},    {"\u2019", "'"},    {"\u2032", "'"},    {"\u00B4", "'"},
    {"\u201C", "\""},   {"\u201D", "\""},   {"\u201E", "\""},   {"\u2033", "\""},   {"''", "\""},       {"\u2010", "-"},
    {"\u2011", "-"},    {"\u2012", "-"},    {"\u2013", "-"},    {"\u2014", "-"},    {"\u2212", "-"},    {"\u00D7", "x"},
    {"\u2044", "/"},    {"\u00BD", " 1/2"}, {"\u00BC", " 1/4"}, {"\u00BE", " 3/4"}, {"\u215B", " 1/8"}, {"\u215C", " 3/8"},
    {"\u215D", " 5/8"}, {"\u215E", " 7/8"},
}};

// The sign that `rest` begins with, or null.
const Sign* SignAt(std::string_view rest) {
  for (const Sign& sign : kSigns) {
    if (rest.starts_with(sign.typed)) return &sign;
  }
  return nullptr;
}

std::string WithoutSigns(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const bool plain = static_cast<unsigned char>(text.front()) < 0x80 && text.front() != '\'';
    if (const Sign* sign = plain ? nullptr : SignAt(text)) {
      out += sign->plain;
      text.remove_prefix(sign->typed.size());
    } else {
      out += text.front();
      text.remove_prefix(1);
    }
  }
  return out;
}

bool IsBlank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '\f' || c == '\v'; }

// The character at the front of well-formed UTF-8 and its bytes; a broken byte is a character of its own.
std::pair<char32_t, std::size_t> CharacterAt(std::string_view rest) {
  const auto byte = [&rest](std::size_t i) { return static_cast<unsigned char>(rest[i]); };
  const std::size_t size = byte(0) < 0xC0 ? 1 : byte(0) < 0xE0 ? 2 : byte(0) < 0xF0 ? 3 : 4;
  if (size == 1 || size > rest.size()) return {byte(0), 1};
  char32_t character = byte(0) & (0xFFU >> (size + 1));
  for (std::size_t i = 1; i < size; ++i) character = character << 6U | (byte(i) & 0x3FU);
  return {character, size};
}

bool IsUnreadable(char32_t c) {
  return c < 0x20 || (c >= 0x7F && c <= 0x9F) || c == 0x200B || c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) ||
      (c >= 0x2060 && c <= 0x206F) || c == 0xFEFF;
}

}  // namespace

std::string UnreadableCharacter(std::string_view utf8) {
  while (!utf8.empty()) {
    const auto [character, size] = CharacterAt(utf8);
    if (IsUnreadable(character)) {
      char shown[12];
      std::snprintf(shown, sizeof shown, "U+%04X", static_cast<unsigned>(character));
      return shown;
    }
    utf8.remove_prefix(size);
  }
  return "";
}

std::string PlainText(std::string_view utf8) {
  // Twice: two typographic apostrophes become two plain ones, and those an inch mark.
  const std::string plain = WithoutSigns(WithoutSigns(utf8));
  std::string out;
  for (char c : plain) {
    if (!IsBlank(c)) {
      out += c;
    } else if (!out.empty() && out.back() != ' ') {
      out += ' ';
    }
  }
  if (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

std::string LowerCase(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

std::string UpperCase(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  }
  return out;
}

}  // namespace heatkeep
