// A book of one's own, ready to use: what `heatkeep book init` does, and what a program does that finds none.
#pragma once

#include <filesystem>

#include "client/book/book_location.h"
#include "client/book/migrate.h"

namespace heatkeep {

// Makes the cluster, brings the book up to date and enters `location.person` with all five roles; does
// nothing that is done already. Throws BookError(BadInput) when that name cannot be a person's, or the book
// is a server's.
MigrateReport MakeOwnBook(const BookLocation& location);

// Says of a home that everything in it has been made.
void MarkReady(const std::filesystem::path& home);

// As OpenBook, but a book of one's own that was never made is made first.
Connection OpenOrMakeBook(const BookLocation& location);

}  // namespace heatkeep
