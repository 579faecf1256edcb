// A saw off the network: deeds kept on the saw's own disk, and sent later.
// The file is a client/queue/saw_queue.h. Killed half-way and run again, sending books nothing twice.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

// heatkeep saw block --device D --site S --size N --queue FILE
int RunSawBlock(const BookCall& call, const std::string& device, const std::string& site, int size, const std::string& file);

// Puts a deed into the queue. Drops and pieces of stock get their tags from the block. 0, or 2 with the reason.
int QueueDeed(const BookCall& call, const std::string& file, const std::string& deed, nlohmann::json body, const std::string& login,
              bool json);

// heatkeep saw queue FILE: what waits and what was sent.
int RunSawQueue(const BookCall& call, const std::string& file, bool json);

// heatkeep saw send FILE: 0 all sent; 1 something became a conflict, or waits for another login; 4 the book was lost.
int RunSawSend(const BookCall& call, const std::string& file, bool json);

}  // namespace heatkeep::command
