#include "client/gateway/conninfo.h"

#include <libpq-fe.h>

#include <memory>
#include <stdexcept>

namespace heatkeep {

std::string ConninfoPair(std::string_view keyword, std::string_view value) {
  std::string pair(keyword);
  pair += "='";
  for (const char c : value) {
    if (c == '\'' || c == '\\') pair += '\\';
    pair += c;
  }
  return pair + '\'';
}

std::string ConninfoFor(const std::string& conninfo, const std::string& person) {
  char* complaint = nullptr;
  const std::unique_ptr<PQconninfoOption, decltype(&PQconninfoFree)> options(PQconninfoParse(conninfo.c_str(), &complaint),
                                                                             &PQconninfoFree);
  const std::unique_ptr<char, decltype(&PQfreemem)> owned(complaint, &PQfreemem);
  if (!options)
    // libpq's own words may quote the string, and so a password in it: they are not passed on.
    throw std::invalid_argument(
        "the connection string of the book cannot be read; expected for example "
        "'host=db.example dbname=heatkeep', postgresql://db.example/heatkeep, or a service name");
  std::string text;
  for (const PQconninfoOption* option = options.get(); option->keyword; ++option) {
    const std::string_view keyword = option->keyword;
    if (!option->val || (keyword == "user" && !person.empty())) continue;
    if (keyword == "password" || keyword == "sslpassword")
      throw std::invalid_argument(
          "the connection string of the book holds a password, which everybody on this machine could read; "
          "expected it in ~/.pgpass (mode 0600), in a service file or in PGPASSWORD");
    text += ConninfoPair(keyword, option->val) + ' ';
  }
  if (!person.empty()) text += ConninfoPair("user", person) + ' ';
  return text;
}

std::vector<std::pair<std::string, std::string>> EnvironmentOf(pg_conn* connection) {
  std::vector<std::pair<std::string, std::string>> variables;
  const std::unique_ptr<PQconninfoOption, decltype(&PQconninfoFree)> options(PQconninfo(connection), &PQconninfoFree);
  for (const PQconninfoOption* option = options.get(); option && option->keyword; ++option) {
    // A service's own words would come before these, and those it holds are here already.
    if (option->val && *option->val && option->envvar && std::string_view(option->keyword) != "service")
      variables.emplace_back(option->envvar, option->val);
  }
  return variables;
}

}  // namespace heatkeep
