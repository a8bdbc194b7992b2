// A report on paper, by any printer Qt knows.
#pragma once

#include <vector>

#include "app/print/layout/page_setup.h"
#include "app/print/pdf_report.h"
#include "app/print/photo_reader.h"
#include "core/report/document.h"

class QPrinter;

namespace headcap::app::print {

// The sheet nearest to the paper in the printer; what is set on it is scaled to fit the paper.
[[nodiscard]] Sheet sheetFor(const QPrinter& printer);

struct PrintOutcome {
    int pages = 0; // printed
    std::vector<AbsentPhoto> absent{};
    bool isComplete = true; // false: the printer stopped, or was stopped
    bool wasStopped = false;
};

// Honours the printer's page range and order; copies are the printer's own work. Any thread, which
// then has the printer to itself; `progress` as of a PDF.
[[nodiscard]] PrintOutcome printReport(const core::Document& document, const PhotoLookup& photos,
                                       QPrinter& printer, const PdfProgress& progress = {});

} // namespace headcap::app::print
