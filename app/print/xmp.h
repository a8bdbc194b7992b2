// The metadata packet of a PDF/A-1b file (ISO 19005-1, 6.7). It says the same as the document's
// information dictionary, as the standard demands.
#pragma once

#include <string>

#include "app/print/pdf_finish.h"

namespace headcap::app::print {

inline constexpr char kPdfCreator[] = "Headcap";
inline constexpr char kPdfProducer[] = "Qt, libqpdf";

[[nodiscard]] std::string xmpPacket(const PdfFacts& facts);
// "D:20310303T..." as the information dictionary writes it, in UTC.
[[nodiscard]] std::string pdfDate(core::Instant instant);

} // namespace headcap::app::print
