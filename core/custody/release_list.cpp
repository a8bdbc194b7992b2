#include "core/custody/release_list.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/audit.h"
#include "core/audit/same_leaves.h"
#include "core/custody/hazards.h"
#include "core/custody/leaf_count.h"
#include "core/treatment/approval.h"
#include "core/treatment/carried_out.h"
#include "core/treatment/clocks.h"
#include "core/treatment/departures.h"
#include "core/treatment/setting_times.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

const ReleaseCheck* answerOf(const JobFile& file, std::string_view key) {
    const auto found = std::ranges::find(file.releaseChecks, key, &ReleaseCheck::key);
    return found == file.releaseChecks.end() ? nullptr : &*found;
}

struct Lists {
    const JobFile& file;
    std::vector<ReleaseRow> rows{};

    void person(std::string key, std::string asks, std::string finds, Page page) {
        const ReleaseCheck* answer = answerOf(file, key);
        rows.push_back(
            {std::move(key), std::move(asks), std::move(finds), false, false, answer, page});
    }
    // Open where something is named, each on a line of its own.
    void record(std::string key, std::string asks, const std::vector<std::string>& open,
                Page page) {
        const ReleaseCheck* answer = answerOf(file, key);
        rows.push_back({std::move(key), std::move(asks), fmt::to_string(fmt::join(open, "\n")),
                        true, open.empty(), answer, page});
    }
};

std::optional<Instant> lastWork(const JobFile& file) {
    std::optional<Instant> last;
    for (const Step& step : file.steps) {
        if (isWorkOnTheBook(step.kind) && !step.struckAt && (!last || step.at > *last)) {
            last = step.at;
        }
    }
    return last;
}

// Gone through again after the last work on it.
bool isCollatedAgain(const JobFile& file) {
    const auto last = lastWork(file);
    const bool byWalk = std::ranges::any_of(file.walks, [&](const Walk& walk) {
        return walk.finishedAt && (!last || *walk.finishedAt > *last);
    });
    return byWalk || std::ranges::any_of(file.steps, [&](const Step& step) {
               return !step.struckAt && step.technique == "collating" && last && step.at > *last;
           });
}

std::vector<std::string> doneNotApproved(const JobFile& file, const Clock& clock) {
    std::vector<std::string> open;
    for (const Departure& one : departures(file, clock)) {
        if (one.isOpen() && one.kind != DepartureKind::approvedNotDone) {
            open.push_back(one.sentence);
        }
    }
    return open;
}

// Whatever state the job is in: a list made before it is passed looks at the log all the same.
std::vector<std::string> approvedNotDone(const JobFile& file) {
    std::vector<std::string> open;
    const auto isExplained = [&](const ProposalLine& line) {
        return explanationOf(file, refOf(line.id), ruleOf(DepartureKind::approvedNotDone)) !=
               nullptr;
    };
    const auto notBegun = openLines(file);
    for (const ProposalLine* line : approvedLines(file)) {
        if (isExplained(*line)) {
            continue;
        }
        const std::string name = capitalised(lineTitle(*line, file.techniques));
        if (std::ranges::find(notBegun, line) != notBegun.end()) {
            open.push_back(fmt::format("{}: no step carries it out.", name));
        } else if (const auto places = placesNotDone(file, *line); !places.empty()) {
            open.push_back(fmt::format("{}: nothing is logged of {}.", name, listed(places)));
        }
    }
    return open;
}

// Where the original is lacking there is nothing to photograph before.
bool isOfSupplied(const JobFile& file, const Photograph& photograph) {
    return photograph.facsimile || std::ranges::any_of(file.facsimiles, [&](const auto& leaf) {
               return leaf.part == photograph.part && !leaf.place.empty() &&
                      leaf.place == photograph.place;
           });
}

std::vector<std::string> withoutBefore(const JobFile& file) {
    std::vector<std::string> open;
    for (const Photograph& after : file.photographs) {
        if (after.role != PhotoRole::after || isOfSupplied(file, after)) {
            continue;
        }
        const bool has = std::ranges::any_of(file.photographs, [&](const Photograph& before) {
            return before.role == PhotoRole::before &&
                   (before.place == after.place || before.place.empty() || after.place.empty() ||
                    mayShareLeaves(before.place, after.place));
        });
        if (!has) {
            open.push_back(after.caption.empty() ? after.place : after.caption);
        }
    }
    return open;
}

std::vector<std::string> removedUnaccounted(const JobFile& file) {
    std::vector<std::string> open;
    for (const Step& step : file.steps) {
        if (!step.struckAt && !step.removed.empty() && step.removedFate.empty()) {
            open.push_back(step.removed);
        }
    }
    return open;
}

std::vector<std::string> pointsOf(const JobFile& file, const Clock& clock, Page page) {
    std::vector<std::string> open;
    for (const AuditPoint& point : audit(file, clock)) {
        if (point.page == page && point.severity == AuditSeverity::mustSettle) {
            open.push_back(point.sentence);
        }
    }
    return open;
}

std::vector<std::string> unfinished(const JobFile& file, const Clock& clock) {
    std::vector<std::string> open;
    for (const SettingTime& time : settingTimes(file, clock.now())) {
        open.push_back(time.what);
    }
    for (const BenchClock* running : runningClocks(file)) {
        open.push_back("the clock of " + clockTitle(*running, file.techniques));
    }
    for (const BenchClock* measured : clocksToLog(file)) {
        open.push_back("the minutes of " + clockTitle(*measured, file.techniques));
    }
    return open;
}

void addHazards(Lists& lists) {
    std::vector<std::string> named;
    for (const Hazard& hazard : lists.file.hazards) {
        if (hazard.state == HazardState::suspected || hazard.state == HazardState::confirmed) {
            named.push_back(hazardName(hazard.term));
        }
    }
    if (!named.empty()) {
        lists.person("hazard_label", "The wrapper carries its hazard label", listed(named),
                     Page::book);
    }
}

// One by one: two boards may go home and the string that tied them not. A list that was answered
// for all of them together stays so.
void addPieces(Lists& lists) {
    const ReleaseCheck* together = answerOf(lists.file, "pieces");
    const bool isAnswered = together != nullptr && together->answer != ReleaseAnswer::open;
    std::vector<std::string> all;
    for (const Piece& piece : lists.file.pieces) {
        all.push_back(nameOf(piece));
        if (!isAnswered) {
            lists.rows.push_back({.key = "piece " + piece.id.text(),
                                  .asks = "Came with it: " + all.back(),
                                  .finds = piece.returned,
                                  .isMet = !piece.returned.empty(),
                                  .page = Page::book,
                                  .piece = piece.id});
        }
    }
    if (isAnswered && !all.empty()) {
        lists.person("pieces", "What came with it goes with it",
                     fmt::to_string(fmt::join(all, "\n")), Page::book);
    }
}

} // namespace

std::string nameOf(const Piece& piece) {
    return piece.count == 1 ? piece.what : fmt::format("{} × {}", piece.count, piece.what);
}

std::vector<ReleaseRow> releaseList(const JobFile& file, const Clock& clock) {
    Lists lists{file};
    lists.person("leaf_tally", "The leaves are counted", leafCountText(file), Page::collation);
    if (isCollatedAgain(file)) {
        lists.record("collated_again", "It was collated again after the work", {}, Page::collation);
    } else {
        lists.person("collated_again", "It was collated again after the work", "", Page::collation);
    }
    lists.record("approved_done", "Every approved line is done, or explained",
                 approvedNotDone(file), Page::proposal);
    lists.record("done_approved", "What was done is approved, or explained",
                 doneNotApproved(file, clock), Page::proposal);
    lists.record("after_has_before", "Each photograph after has its before", withoutBefore(file),
                 Page::photographs);
    lists.person("marks_present", "Marks and bookplates are there, and photographed",
                 file.item.marks, Page::photographs);
    lists.record("removed_accounted", "What was taken out is accounted for",
                 removedUnaccounted(file), Page::bench);
    addPieces(lists);
    lists.record("lots_settled", "The lots are settled", pointsOf(file, clock, Page::materials),
                 Page::materials);
    lists.record("nothing_running", "Nothing sets any more, and no clock runs",
                 unfinished(file, clock), Page::bench);
    addHazards(lists);
    lists.record("report_issued", "Its report is issued",
                 file.reports.empty() ? std::vector<std::string>{"not issued yet"}
                                      : std::vector<std::string>{},
                 Page::report);
    lists.person(std::string{kSignOff}, "It may leave: signed off by name", "", Page::report);
    return std::move(lists.rows);
}

bool isListClosed(const JobFile& file) {
    return file.job.state == JobState::returned;
}

bool mayLeave(const std::vector<ReleaseRow>& rows) {
    return std::ranges::all_of(rows, &ReleaseRow::isSettled);
}

} // namespace headcap::core
