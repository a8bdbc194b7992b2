// What opens and closes a report: letterhead, title and the line of its particulars on the first
// page, and the journal's hash at the end.
#pragma once

#include <QString>

#include "app/print/layout/paginate.h"
#include "core/report/document.h"

namespace headcap::app::print {

void addFront(Flow& flow, const core::Document& document);
void addClose(Flow& flow, const core::Document& document);

// In the report's own language: a report is not translated with the windows.
[[nodiscard]] QString dateText(const core::Document& document);     // "3 March 2031"
[[nodiscard]] QString standingText(const core::Document& document); // "Issued, version 2"

} // namespace headcap::app::print
