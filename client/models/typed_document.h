// An inspection document as a person types it from the paper, and as the deeds take it.
#pragma once

#include <QString>
#include <nlohmann/json.hpp>

namespace heatkeep {

// As typed. One heat of one section; a document of more lots comes as a table (`heatkeep certificate add`).
struct TypedDocument {
  QString file;                                  // PDF, PNG, JPEG or TIFF; empty: typed without it
  QString issuer, number, type = "3.1", issued;  // issued: 2026-03-04
  QString heat, section, grade, condition;
  QString analysis, tests;  // "C 0.41 Si 0.26", "Rm 1028 Re 775 A 16" (MPa, MPa, %)
  QString validated_by;     // "A. Lund, head of the laboratory, independent; ..."
};

// As the deeds take it, without the file. Throws BadText that says which part is wrong.
nlohmann::json DocumentBody(const TypedDocument& typed);

}  // namespace heatkeep
