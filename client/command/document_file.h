// heatkeep certificate attach|export: the file of a document, into the book and out of it byte for byte.
#pragma once

#include <string>

#include "client/command/certificate_check.h"

namespace heatkeep::command {

// The file joins a document that was typed without it.
int RunCertificateAttach(const BookCall& call, const CertificateChoice& choice, const std::string& scan);

// The file of a version, as it was filed; its SHA-256 is reckoned anew and must be the book's.
int RunCertificateExport(const BookCall& call, const CertificateChoice& choice, const std::string& to);

}  // namespace heatkeep::command
