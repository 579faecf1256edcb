// heatkeep certificate attach|export: the file of a document, into the book and out of it byte for byte.
#pragma once

#include <string>

#include "client/command/certificate_check.h"

namespace heatkeep::command {

// The file in base64, as a deed's body takes it. Throws std::runtime_error: not there, or larger than the setting document_mb
// lets the book take (said before it is read).
std::string DocumentFileBase64(Connection& connection, const std::string& path);

// The file joins a document that was typed without it.
int RunCertificateAttach(const BookCall& call, const CertificateChoice& choice, const std::string& scan);

// The file of a version, as it was filed; its SHA-256 is reckoned anew and must be the book's.
int RunCertificateExport(const BookCall& call, const CertificateChoice& choice, const std::string& to);

}  // namespace heatkeep::command
