// A deed of the book that is done once, whatever becomes of the network: while its answer is missing it is asked again, as it was, as
// soon as the book is back. `work` must carry its own request numbers, made once (client/gateway/deeds.h).
#pragma once

#include <QObject>
#include <functional>
#include <nlohmann/json.hpp>
#include <optional>

#include "client/models/book_link.h"

namespace heatkeep {

class SureDeed : public QObject {
  Q_OBJECT

 public:
  using Work = std::function<nlohmann::json(Connection&)>;
  using Then = std::function<void(const nlohmann::json& answer)>;
  using Refused = std::function<void(const DbError& error)>;

  explicit SureDeed(BookLink& link, QObject* parent = nullptr);

  // False: one is under way, or the book cannot be reached; nothing was asked.
  bool Do(const Work& work, const Then& then, const Refused& refused);
  bool busy() const { return busy_ || lost_; }
  bool asking() const { return busy_; }  // and its answer is awaited; not: it is to be asked again

 signals:
  void Lost(const QString& words);  // its answer is missing, as it is told

 private:
  struct Asked {
    Work work;
    Then then;
    Refused refused;
  };
  void Ask(const Asked& asked);

  BookLink& link_;
  bool busy_ = false;
  std::optional<Asked> lost_;
};

}  // namespace heatkeep
