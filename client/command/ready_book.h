// A book ready to be worked in, as every command and the desk open it.
#pragma once

#include <iosfwd>

#include "client/book/book_location.h"

namespace heatkeep::command {

// A session; a book of one's own that was never made is made, with the grade list and limits that come with the program in it, and `err`
// hears of it. Throws as OpenOrMakeBook.
Connection OpenReadyBook(const BookLocation& where, std::ostream& err);

}  // namespace heatkeep::command
