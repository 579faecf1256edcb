#include "client/command/ready_book.h"

#include <ostream>

#include "client/book/own_book.h"
#include "client/command/grade_list.h"

namespace heatkeep::command {

Connection OpenReadyBook(const BookLocation& where, std::ostream& err) {
  const bool fresh = where.own && !OwnCluster(where).Exists();
  Connection connection = OpenOrMakeBook(where);
  if (fresh) {
    err << "a new book was made in " << where.home.string() << '\n';
    AddGrades(connection, {GradeListFile(), {}});
    AddLimits(connection);
  }
  return connection;
}

}  // namespace heatkeep::command
