#include "core/report/log_sheet.h"

#include "core/report/letterhead.h"
#include "core/report/sections.h"
#include "core/report/writing.h"

namespace headcap::core {

Document logSheet(const JobFile& file, const Clock& clock) {
    const ReportRequest request{.date = clock.today()};
    const report::Context at{file, request, clock};
    Document document{.title = "Bench log",
                      .subtitle = report::itemTitle(file.item),
                      .jobNumber = file.job.number,
                      .date = clock.today(),
                      .isDraft = false,
                      .letterhead = report::letterheadOf(file)};
    document.runningTitle = headingOf(file.item);
    document.sections = {report::logSection(at), report::peopleSection(at)};
    return document;
}

} // namespace headcap::core
