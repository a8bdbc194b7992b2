#include "core/report/issuing.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/audit.h"
#include "core/custody/job_states.h"

namespace headcap::core {

const IssuedReport* latestReport(const JobFile& file) {
    const auto latest = std::ranges::max_element(file.reports, {}, &IssuedReport::version);
    return latest == file.reports.end() ? nullptr : &*latest;
}

std::vector<const Step*> stepsSince(const JobFile& file, const IssuedReport& report) {
    std::vector<const Step*> since;
    for (const Step& step : file.steps) {
        if (!step.struckAt && step.at > report.issuedAt) {
            since.push_back(&step);
        }
    }
    return since;
}

int nextReportVersion(const JobFile& file) {
    const IssuedReport* latest = latestReport(file);
    return latest == nullptr ? 1 : static_cast<int>(latest->version) + 1;
}

std::optional<IssueObstacle> whatKeepsFromIssuing(const JobFile& file, const Clock& clock,
                                                  std::string_view changes) {
    auto points = audit(file, clock);
    std::erase_if(points, [](const AuditPoint& point) {
        return point.severity != AuditSeverity::mustSettle;
    });
    if (!points.empty()) {
        return IssueObstacle{IssueProblem::pointsOpen, std::move(points)};
    }
    if (!file.reports.empty() && changes.empty()) {
        return IssueObstacle{IssueProblem::changesMissing};
    }
    return std::nullopt;
}

bool isStillSo(const JobFile& now, const Document& drawn, const ReportRequest& request,
               const Clock& clock) {
    return !whatKeepsFromIssuing(now, clock, request.changes) &&
           nextReportVersion(now) == request.version && composeReport(now, request, clock) == drawn;
}

Change issueChange(const JobFile& file, const IssuedReport& report, IdSource& ids) {
    Change change{.sentence =
                      fmt::format("Report {} of {} issued", report.version, file.job.number),
                  .who = report.who};
    change.add(report);
    if (wayBetween(file.job.state, JobState::reported) != StateWay::forward) {
        return change;
    }
    const auto moved = changeState(
        file.job, file.revisionOf(refOf(file.job.id)),
        {.to = JobState::reported, .who = report.who, .at = report.issuedAt, .why = {}}, ids);
    if (moved) {
        change.sentence += "; " + moved->sentence;
        change.writes.insert(change.writes.end(), moved->writes.begin(), moved->writes.end());
    }
    return change;
}

} // namespace headcap::core
