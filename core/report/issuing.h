// The rules of issuing a report: what stands in its way, which number it bears, and what is kept
// when it is issued. A report that is issued lets its job be reported in the same entry.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/audit/audit_point.h"
#include "core/record/change.h"
#include "core/record/job_file.h"
#include "core/report/compose_report.h"
#include "core/values/time.h"

namespace headcap::core {

// The report that stands: the one issued last; nothing where none was.
[[nodiscard]] const IssuedReport* latestReport(const JobFile& file);
// The steps that stand and were done after this report, which does not tell of them.
[[nodiscard]] std::vector<const Step*> stepsSince(const JobFile& file, const IssuedReport& report);

// 1 where none was issued; a number is never given twice.
[[nodiscard]] int nextReportVersion(const JobFile& file);

enum class IssueProblem {
    pointsOpen,    // of those that must be settled
    changesMissing // a later report says what has changed since the one before
};

struct IssueObstacle {
    IssueProblem problem;
    std::vector<AuditPoint> open{}; // the points that must be settled first
};

[[nodiscard]] std::optional<IssueObstacle>
whatKeepsFromIssuing(const JobFile& file, const Clock& clock, std::string_view changes);

// Whether the report that was drawn by this request is the one that the record gives now, and may
// be issued: what others changed meanwhile in other jobs is nothing to it.
[[nodiscard]] bool isStillSo(const JobFile& now, const Document& drawn,
                             const ReportRequest& request, const Clock& clock);

// The report entered, and a passed job reported; any other state stays, for a book that leaves
// untreated has its report too.
[[nodiscard]] Change issueChange(const JobFile& file, const IssuedReport& report, IdSource& ids);

} // namespace headcap::core
