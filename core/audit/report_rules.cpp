#include "core/audit/rules.h"

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/custody/follow_ups.h"
#include "core/custody/job_states.h"
#include "core/report/issuing.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

void followUpOverdue(const AuditContext& at, const AuditSink& found) {
    for (const FollowUp& followUp : at.file.followUps) {
        if (isOverdue(followUp, at.clock.today())) {
            found(followUp, fmt::format("{} Due since {}.", sentence(followUp.what),
                                        dayText(*followUp.dueOn)));
        }
    }
}

void workAfterReport(const AuditContext& at, const AuditSink& found) {
    const IssuedReport* latest = latestReport(at.file);
    if (latest == nullptr) {
        return;
    }
    for (const Step* step : stepsSince(at.file, *latest)) {
        found(*step, fmt::format("{} came after report {}: a new version would tell of it.",
                                 facts::nameOf(*step, at), latest->version));
    }
}

// A book that leaves untreated may have a report of its examination alone.
void nothingDone(const AuditContext& at, const AuditSink& found) {
    const JobState state = at.file.job.state;
    const bool leavesUntreated = state == JobState::declined || state == JobState::withdrawn;
    const bool isSurveyed = !at.file.examinations.empty() || !at.file.findings.empty();
    if (!facts::standing(at.file).empty() || (leavesUntreated && isSurveyed)) {
        return;
    }
    found(at.file.job, leavesUntreated ? "Neither a step nor its condition is recorded: there is "
                                         "nothing to report."
                                       : "No step of work is logged: there is nothing to report.");
}

void returnedUnreported(const AuditContext& at, const AuditSink& found) {
    if (hasReached(at.file.job.state, JobState::reported) && at.file.reports.empty()) {
        found(at.file.job, "The job is past its report, and none has been issued.");
    }
}

void unanswered(const AuditContext& at, const AuditSink& found) {
    for (const Notice& notice : at.file.notices) {
        const bool asks =
            notice.subject == NoticeSubject::change || notice.subject == NoticeSubject::incident;
        if (asks && !notice.answeredOn && notice.answer.empty()) {
            found(notice, fmt::format("The owner was told on {}, and no answer is noted.",
                                      dayText(notice.onDay)));
        }
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::array kRules{
    AuditRule{"follow_up_overdue", Page::book, kWorth, "common practice", followUpOverdue},
    AuditRule{"work_after_report", Page::report, kWorth, "common practice", workAfterReport},
    AuditRule{"report_issued", Page::report, kWorth, "E.C.C.O. II Art. 10; AIC Commentary 28",
              returnedUnreported},
    AuditRule{"report_of_nothing", Page::report, kMust, "AIC Commentary 28", nothingDone},
    AuditRule{"notice_answered", Page::book, kWorth, "AIC Commentary 26", unanswered},
};

} // namespace

std::span<const AuditRule> reportRules() {
    return kRules;
}

} // namespace headcap::core
