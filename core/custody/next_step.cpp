#include "core/custody/next_step.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/audit.h"
#include "core/custody/follow_ups.h"
#include "core/custody/job_states.h"
#include "core/custody/release_list.h"
#include "core/report/issuing.h"
#include "core/treatment/approval.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/proposal_versions.h"
#include "core/treatment/setting_times.h"
#include "core/treatment/techniques.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

struct Todo {
    WorklistGroup group;
    std::string sentence;
    Page page;
};

Todo needsYou(std::string sentence, Page page) {
    return {WorklistGroup::needsYou, std::move(sentence), page};
}

bool hasPhotograph(const JobFile& file, PhotoRole role) {
    return std::ranges::find(file.photographs, role, &Photograph::role) != file.photographs.end();
}

bool hasNotice(const JobFile& file, NoticeSubject subject) {
    return std::ranges::find(file.notices, subject, &Notice::subject) != file.notices.end();
}

bool lacksLeaves(const JobFile& file) {
    return std::ranges::any_of(file.collationFindings, [](const CollationFinding& finding) {
        return finding.onArrival && finding.kind == CollationKind::lacking;
    });
}

bool collationFinished(const JobFile& file) {
    return !file.collations.empty() && std::ranges::all_of(file.collations, [](const auto& c) {
        return c.finishedOn.has_value();
    });
}

// From receipt to survey: what is noted before anything is proposed.
Todo todoBeforeProposal(const JobFile& file) {
    if (file.item.title.empty()) {
        return needsYou("Say what the book is.", Page::book);
    }
    if (!hasPhotograph(file, PhotoRole::before)) {
        return needsYou("Photograph it as it came.", Page::photographs);
    }
    if (file.collations.empty()) {
        return needsYou("Collate it.", Page::collation);
    }
    if (!collationFinished(file)) {
        return needsYou("Finish the collation.", Page::collation);
    }
    if (lacksLeaves(file) && !hasNotice(file, NoticeSubject::collation)) {
        return needsYou("Tell the owner of the leaves it lacks.", Page::collation);
    }
    if (file.examinations.empty() || file.findings.empty()) {
        return needsYou("Survey its condition.", Page::survey);
    }
    if (file.job.state == JobState::received) {
        return needsYou("Close the survey: collation and findings are there.", Page::survey);
    }
    return needsYou("Write the proposal.", Page::proposal);
}

Todo todoAboutProposal(const JobFile& file) {
    const Proposal* proposal = latestProposal(file);
    if (proposal == nullptr) {
        return needsYou("Write the proposal.", Page::proposal);
    }
    if (!proposal->sentOn) {
        return needsYou(fmt::format("Send proposal {} to the owner.", proposal->version),
                        Page::proposal);
    }
    const Decision* decision = latestDecision(file, proposal->id);
    if (decision == nullptr) {
        return {WorklistGroup::waitingForOwner,
                fmt::format("Proposal {} was sent on {}: no answer yet.", proposal->version,
                            dayText(*proposal->sentOn)),
                Page::proposal};
    }
    switch (decision->kind) {
    case DecisionKind::moreAsked:
        return needsYou("Answer what the owner asked about the proposal.", Page::proposal);
    case DecisionKind::declined:
        return needsYou("The owner declined: close the job or propose anew.", Page::proposal);
    case DecisionKind::approved:
    case DecisionKind::approvedWithLimits:
        break;
    }
    return needsYou("The owner approved: the work can begin.", Page::bench);
}

Todo todoAtTheBench(const JobFile& file) {
    const auto asked = std::ranges::find_if(file.notices, [](const Notice& notice) {
        return notice.subject == NoticeSubject::change && !notice.answeredOn;
    });
    if (asked != file.notices.end()) {
        return {WorklistGroup::waitingForOwner,
                fmt::format("A change was put to the owner on {}: no answer yet.",
                            dayText(asked->onDay)),
                Page::proposal};
    }
    const auto open = openLines(file);
    if (!open.empty()) {
        return {WorklistGroup::atWork,
                fmt::format("Next: {}{}.", lineTitle(*open.front(), file.techniques),
                            open.size() == 1 ? std::string{", the last line"}
                                             : fmt::format(" ({} lines to do)", open.size())),
                Page::bench};
    }
    if (file.steps.empty()) {
        return {WorklistGroup::atWork, "Log the first step.", Page::bench};
    }
    if (!hasPhotograph(file, PhotoRole::after)) {
        return needsYou("Photograph it as it is now.", Page::photographs);
    }
    return needsYou("Check the work and pass it.", Page::bench);
}

Todo todoAboutReport(const JobFile& file, const Clock& clock) {
    const IssuedReport* issued = latestReport(file);
    const bool isTold = issued != nullptr && stepsSince(file, *issued).empty();
    if (isTold) {
        return needsYou(
            fmt::format("Report {} is issued: mark the job as reported.", issued->version),
            Page::report);
    }
    const auto points = audit(file, clock);
    const std::size_t open = countOf(points, AuditSeverity::mustSettle);
    if (open == 0) {
        return needsYou(issued == nullptr
                            ? "Issue the report: nothing is open."
                            : fmt::format("Issue report {}: there was work after report {}.",
                                          nextReportVersion(file), issued->version),
                        Page::report);
    }
    const auto first = std::ranges::find(points, AuditSeverity::mustSettle, &AuditPoint::severity);
    return needsYou(
        fmt::format("Settle {} before the report is issued.", counted(open, "point", "points")),
        first->page);
}

Todo todoAboutRelease(const JobFile& file, const Clock& clock) {
    const auto rows = releaseList(file, clock);
    if (mayLeave(rows)) {
        return {WorklistGroup::toBeReturned, "Give it back with its report.", Page::report};
    }
    const auto open = static_cast<std::size_t>(
        std::ranges::count_if(rows, [](const ReleaseRow& row) { return !row.isSettled(); }));
    return {WorklistGroup::toBeReturned,
            fmt::format("Settle {} of the release list, then give it back.",
                        counted(open, "point", "points")),
            Page::report};
}

Todo todoAfterReturn(const JobFile& file, const Clock& clock) {
    for (const FollowUp& followUp : file.followUps) {
        if (isDue(followUp, clock.today())) {
            return needsYou("Follow up: " + sentence(followUp.what), Page::book);
        }
    }
    return {WorklistGroup::finished, "Returned.", Page::report};
}

Todo todoWithoutTreatment(const JobFile& file) {
    const bool declined = file.job.state == JobState::declined;
    return {WorklistGroup::toBeReturned,
            declined ? "Give it back untreated: the proposal was declined."
                     : "Give it back: the owner withdrew it.",
            Page::book};
}

std::string whyOf(const JobFile& file, JobState state) {
    std::string why;
    std::optional<Instant> latest;
    for (const StateChange& change : file.stateChanges) {
        if (change.toState == state && (!latest || change.at >= *latest)) {
            latest = change.at;
            why = change.why;
        }
    }
    return why;
}

Todo todoOf(const JobFile& file, const Clock& clock) {
    switch (file.job.state) {
    case JobState::received:
    case JobState::surveyed:
        return file.proposals.empty() ? todoBeforeProposal(file) : todoAboutProposal(file);
    case JobState::proposed:
        return todoAboutProposal(file);
    case JobState::approved:
        return needsYou("Approved: the work can begin.", Page::bench);
    case JobState::atTheBench:
        return todoAtTheBench(file);
    case JobState::passed:
        return todoAboutReport(file, clock);
    case JobState::reported:
        return todoAboutRelease(file, clock);
    case JobState::returned:
        return todoAfterReturn(file, clock);
    case JobState::onHold:
        break;
    case JobState::declined:
    case JobState::withdrawn:
        return todoWithoutTreatment(file);
    }
    const std::string why = whyOf(file, JobState::onHold);
    return {WorklistGroup::waitingForOwner, why.empty() ? "On hold." : "On hold: " + sentence(why),
            Page::book};
}

// While something sets, that is what the job waits for, until the last of it has; then somebody is
// to see to it.
void considerSetting(NextStep& next, const JobFile& file, Instant now) {
    const auto times = settingTimes(file, now);
    const SettingTime* last = nullptr;
    for (const SettingTime& time : times) {
        if (!time.isOver() && (last == nullptr || time.until > last->until)) {
            last = &time;
        }
    }
    const auto over = std::ranges::find_if(
        times, [](const SettingTime& time) { return time.isOver() && time.setting != nullptr; });
    if (over != times.end()) {
        next.group = WorklistGroup::needsYou;
        next.sentence = "It has set: " + over->what + ".";
        next.page = Page::bench;
    } else if (last != nullptr) {
        next.group = WorklistGroup::setting;
        next.sentence = "Setting: " + last->what + ".";
        next.page = Page::bench;
        next.setsUntil = last->until;
        next.settingLeft = last->left;
    }
}

} // namespace

NextStep nextStep(const JobFile& file, const Clock& clock) {
    Todo todo = todoOf(file, clock);
    NextStep next{.group = todo.group, .sentence = std::move(todo.sentence), .page = todo.page};
    next.due = file.job.dueOn;
    next.overdue = isInTheHouse(file.job.state) && next.due && *next.due < clock.today();
    if (isInTheHouse(file.job.state)) {
        considerSetting(next, file, clock.now());
    }
    return next;
}

} // namespace headcap::core
