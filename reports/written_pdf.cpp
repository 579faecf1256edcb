#include "reports/written_pdf.h"

#include <memory>
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

namespace heatkeep {

std::string WrittenPdf(QPDF& pdf) {
  QPDFWriter writer(pdf);
  writer.setOutputMemory();
  writer.setDeterministicID(true);
  writer.setStreamDataMode(qpdf_s_preserve);
  writer.setDecodeLevel(qpdf_dl_none);
  writer.setCompressStreams(false);
  writer.setObjectStreamMode(qpdf_o_disable);
  writer.setMinimumPDFVersion("1.7");
  writer.write();
  const std::shared_ptr<Buffer> buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

}  // namespace heatkeep
