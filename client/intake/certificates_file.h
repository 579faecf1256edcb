// Certificates typed from paper: one row a document and heat and section, and one more where an analysis of the product is given
// beside that of the heat.
// There may be a column for any chemical element by its symbol (C, Si, Mn ...). An empty cell is not reported, never zero.
// A column may be called by its field of EN 10168:2004 instead: A01 issuer, A02 type, A03 number, B02 grade, B04 condition, B07
// heat, B09 section, C11 Re, C12 Rm, C13 A, Z02 issued, and C71 to C92 with the element behind it: "C71 C", "C72 Si". The fields
// do not say whose analysis it is: the column analysis does, under that name.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "client/intake/checked_rows.h"
#include "schema/terms/element.h"
#include "schema/terms/papers.h"
#include "schema/terms/section.h"

namespace heatkeep::intake {

struct CertificatesFileRow {
  int line_in_file = 0;
  std::string number;
  Papers type = Papers::P31;  // never None
  std::string issuer, issued, heat;
  Section section;
  std::string condition, grade;                // condition in its normal form
  bool product = false;                        // the chemistry is of the product, not of the heat
  std::vector<ElementContent> chemistry;       // in the file's order of columns of the list of elements
  std::optional<std::int64_t> rm_kpa, re_kpa;  // tensile and yield strength, whole kPa: 1 MPa is 1000
  std::optional<std::int64_t> a_millipercent;  // elongation: 12.5 % is 12 500
  std::vector<Validator> validated_by;
};

// What its header may be, and what each column says.
const std::vector<Column>& CertificatesColumns();

// A document, heat, section and kind of analysis stand once; the two rows of one lot agree in grade and condition, and one of them
// has the tests. A row of the product has an analysis. Elements that add up to more than 101 % are refused.
FileRows<CertificatesFileRow> ReadCertificatesFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

}  // namespace heatkeep::intake
