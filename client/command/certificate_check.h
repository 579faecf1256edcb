// heatkeep certificate show|check|pass: what a filed document says, its values against their grade, and handing it on.
#pragma once

#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

struct CertificateChoice {
  std::string number, issuer;  // issuer empty: whoever issued it; several of that number are refused
  std::string method = "absolute";
  bool json = false;
};

// 0; 1 when there is no such document.
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
