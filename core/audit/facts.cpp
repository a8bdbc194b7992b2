#include "core/audit/facts.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/materials/shelf.h"
#include "core/treatment/approval.h"
#include "core/treatment/bench_log.h"
#include "core/values/english.h"

namespace headcap::core::facts {

std::vector<const Step*> standing(const JobFile& file) {
    std::vector<const Step*> steps;
    for (const Step& step : file.steps) {
        if (!step.struckAt) {
            steps.push_back(&step);
        }
    }
    return steps;
}

std::vector<const MaterialUse*> standingUses(const JobFile& file) {
    std::vector<const MaterialUse*> uses;
    for (const Step* step : standing(file)) {
        const auto ofStep = file.usesOf(*step);
        uses.insert(uses.end(), ofStep.begin(), ofStep.end());
    }
    return uses;
}

bool isTreated(const JobFile& file) {
    return std::ranges::any_of(standing(file),
                               [](const Step* step) { return isWorkOnTheBook(step->kind); });
}

bool isTold(const JobFile& file, NoticeSubject subject) {
    return std::ranges::find(file.notices, subject, &Notice::subject) != file.notices.end();
}

bool isToldBy(const JobFile& file, NoticeSubject subject, Day day) {
    return std::ranges::any_of(file.notices, [&](const Notice& notice) {
        return notice.subject == subject && notice.onDay <= day;
    });
}

bool isToldFrom(const JobFile& file, NoticeSubject subject, Day day) {
    return std::ranges::any_of(file.notices, [&](const Notice& notice) {
        return notice.subject == subject && notice.onDay >= day;
    });
}

bool isOwnedUp(const AuditContext& at, const Step& step) {
    const Day day = at.clock.dayOf(step.at);
    return isToldFrom(at.file, NoticeSubject::incident, day) ||
           isToldFrom(at.file, NoticeSubject::change, day);
}

bool lacksLeaves(const JobFile& file) {
    return std::ranges::any_of(file.collationFindings, [](const CollationFinding& finding) {
        return finding.onArrival && (finding.kind == CollationKind::lacking ||
                                     finding.kind == CollationKind::tornWithLoss);
    });
}

bool isFinishedBy(const JobFile& file, Day day) {
    return !file.collations.empty() &&
           std::ranges::all_of(file.collations, [&](const Collation& collation) {
               return collation.finishedOn && *collation.finishedOn <= day;
           });
}

std::string nameOf(const Step& step, const AuditContext& at) {
    const std::string title = stepTitle(step, at.file.techniques);
    return fmt::format("{} ({})", title.empty() ? "A step" : capitalised(title),
                       dayText(at.clock.dayOf(step.at)));
}

std::string nameOf(const MaterialUse& use, const AuditContext& at) {
    const Lot* lot = at.file.lot(use.lot);
    std::string what = use.material.empty() ? "a material" : use.material;
    if (lot != nullptr) {
        what = "lot " + lotName(*lot, at.file.material(lot->material));
    }
    const Step* step = at.file.step(use.step);
    return capitalised(what) + (step ? ", used in " + nameOf(*step, at) + "," : "");
}

} // namespace headcap::core::facts
