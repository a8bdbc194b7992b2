// The treatment report of a job, composed from its file: every section in its place, one with
// nothing to say saying so in a line. Prices stay out: a report is issued apart from the invoice.
// Nothing is added to a book that its record does not disclose: see disclosure_check.h.
#pragma once

#include <optional>
#include <string>

#include "core/record/job_file.h"
#include "core/report/document.h"
#include "core/values/time.h"

namespace headcap::core {

struct ReportRequest {
    bool isDraft = true;
    int version = 0; // of an issued report, from 1
    Day date;
    std::string journalHead{}; // 64 digits; empty where there is none to print
    std::string changes{};     // since the version before
    std::optional<Id<Person>> author{};
};

// The clock says on which day of the workshop a step fell.
[[nodiscard]] Document composeReport(const JobFile& file, const ReportRequest& request,
                                     const Clock& clock);

} // namespace headcap::core
