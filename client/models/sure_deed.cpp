#include "client/models/sure_deed.h"

namespace heatkeep {

SureDeed::SureDeed(BookLink& link, QObject* parent) : QObject(parent), link_(link) {
  connect(&link, &BookLink::Ready, this, [this] {
    if (!lost_) return;
    const Asked again = *lost_;
    lost_.reset();
    Ask(again);
  });
}

bool SureDeed::Do(const Work& work, const Then& then, const Refused& refused) {
  if (busy() || !link_.ready()) return false;
  Ask({work, then, refused});
  return true;
}

void SureDeed::Ask(const Asked& asked) {
  busy_ = true;
  link_.Ask(
      this, asked.work,
      [this, then = asked.then](const nlohmann::json& answer) {
        busy_ = false;
        then(answer);
      },
      [this, asked](const DbError& error) {
        busy_ = false;
        if (error.kind == DbError::Kind::Unreachable) {
          lost_ = asked;
          emit Lost(tr("the answer got lost: it is asked again when the book is back, and is done once"));
        } else {
          asked.refused(error);
        }
      });
}

}  // namespace heatkeep
