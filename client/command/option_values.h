// What an option takes, said once: its help, its man page, the completion of the shells and its check all read it.
#pragma once

#include <CLI/CLI.hpp>
#include <string>
#include <vector>

namespace heatkeep::command {

// For CLI::Option::type_name: a file of these endings, a file of any, a folder.
inline constexpr const char* kTableFile = "FILE(csv|xlsx|ods)";
inline constexpr const char* kJsonFile = "FILE(json)";
inline constexpr const char* kPdfFile = "FILE(pdf)";
inline constexpr const char* kScanFile = "FILE(pdf|png|jpg|jpeg|tif|tiff)";
inline constexpr const char* kAnyFile = "FILE";
inline constexpr const char* kFolder = "FOLDER";

// "drop, scrap or none".
std::string OneOfWords(const std::vector<std::string>& words);

// What among `known` was perhaps meant by `typed`: few letters apart, nearest first; none where nothing is near.
std::vector<std::string> Near(const std::string& typed, const std::vector<std::string>& known);

// The check of an option with a fixed set of words: says which there are, and which was perhaps meant.
CLI::Validator OneOf(std::vector<std::string> words);

// The check of a number: says between which it must be.
CLI::Validator Between(double least, double most);

}  // namespace heatkeep::command
