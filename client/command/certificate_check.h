// heatkeep certificate show|check|pass: what a filed document says, its values against their grade, and handing it on.
#pragma once

#include <string>

#include "client/command/with_book.h"
#include "client/gateway/read_document.h"

namespace heatkeep::command {

struct CertificateChoice {
  std::string number, issuer;  // issuer empty: whoever issued it; several of that number are refused
  std::string method = "absolute";
  std::int64_t version = 0;  // 0: the newest
  bool json = false;
};

// The one document that is meant. Throws BadText when it is not one.
DocumentRecord MeantDocument(Connection& connection, const CertificateChoice& choice);

// What it says, and its other versions. 0.
int RunCertificateShow(const BookCall& call, const CertificateChoice& choice);

// Every lot of the document against the limits its grade has in the book. 0 all conform, 1 one violates or is incomplete.
int RunCertificateCheck(const BookCall& call, const CertificateChoice& choice);

struct CertificatePass {
  std::string number, issuer, note, rule = "EN 10204", additional;
  bool original = false;
};

// Passed on with a shipment, unaltered; prints the words that go with it.
int RunCertificatePass(const BookCall& call, const CertificatePass& pass);

}  // namespace heatkeep::command
