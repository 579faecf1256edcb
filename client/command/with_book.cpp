#include "client/command/with_book.h"

#include <ostream>
#include <stdexcept>

#include "client/command/book_command.h"
#include "client/command/ready_book.h"
#include "client/command/work_watch.h"
#include "client/gateway/readings.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::command {

int WithBook(const BookCall& call, const std::function<int(Connection&)>& work) {
  try {
    Connection connection = OpenReadyBook(FindBook(call.where), call.err);
    try {
      return work(connection);
    } catch (const DbError& error) {
      if (error.kind != DbError::Kind::Forbidden) throw;
      return ExplainForbidden(error, RolesThatMay(connection, DoorOf(error)), call.err);
    }
  } catch (const Stopped& stopped) {
    call.err << "heatkeep: " << stopped.what() << '\n';
    return 130;
  } catch (const BadText& error) {
    call.err << "heatkeep: " << error.what() << '\n';
    return 2;
  } catch (const std::invalid_argument& error) {
    call.err << "heatkeep: " << error.what() << '\n';
    return 2;
  } catch (const std::exception& error) { return ExplainBookFailure(error, call.err); }
}

int RefuseFile(std::ostream& err, const std::vector<intake::FileProblem>& problems) {
  err << intake::ProblemsText(problems);
  err << "nothing was changed\n";
  return 2;
}

}  // namespace heatkeep::command
