// The demo: the invented shop Ostrel Shaftworks (seed/scenario) in a private book of its own, brought in by what the commands do: people,
// shop, opening balance, deliveries, certificates, cut lists. Made again it adds nothing, so a making that was cut short goes on where it
// was.
#pragma once

#include <filesystem>
#include <functional>
#include <string>

namespace heatkeep::command {

// Beside a private book: its folder's name with "-demo" behind it.
std::filesystem::path DemoHome(std::filesystem::path home);

// `tell` hears of each step before it is done. Throws std::runtime_error with what a step said.
void MakeDemo(const std::filesystem::path& home, const std::function<void(int done, int all, const std::string& words)>& tell);

}  // namespace heatkeep::command
