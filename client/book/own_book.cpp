#include "client/book/own_book.h"

#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>

#include "client/book/book_error.h"
#include "client/book/cluster_files.h"
#include "client/book/persons.h"

namespace heatkeep {
namespace {

// Stands in the home once everything has been done: a making that was cut short is taken up again.
constexpr const char* kReady = "ready";

}  // namespace

MigrateReport MakeOwnBook(const BookLocation& location) {
  if (!location.own) throw BookError(BookError::Kind::BadInput, "the book of a server is made by its keeper; expected a book of one's own");
  if (const std::string wrong = WrongWithName(location.person); !wrong.empty())
    throw BookError(BookError::Kind::BadInput, wrong + "; --person gives the name you want in the book");
  const SchemaFiles files = ReadSchemaFiles(SchemaFolder());
  PrivateCluster cluster = OwnCluster(location);
  cluster.Init();
  Connection admin = cluster.Admin();
  MigrateReport report = Migrate(admin, files);
  AddPerson(admin, location.person, RoleNames());
  cluster.Admit({location.person});
  MarkReady(location.home);
  return report;
}

void MarkReady(const std::filesystem::path& home) { ReplaceFile(home / kReady, "this book has been made\n", 0644, OwnAccount()); }

Connection OpenOrMakeBook(const BookLocation& location) {
  if (location.own && !std::filesystem::exists(location.home / kReady)) {
    struct stat info {};
    const bool there = stat(location.home.c_str(), &info) == 0;
    if (!there || info.st_uid == geteuid()) MakeOwnBook(location);
  }
  return OpenBook(location);
}

}  // namespace heatkeep
