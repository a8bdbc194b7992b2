#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/audit/same_leaves.h"
#include "core/collation/extent.h"
#include "core/custody/job_states.h"
#include "core/custody/leaf_count.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

bool isGap(const CollationFinding& finding) {
    return finding.kind == CollationKind::lacking || finding.kind == CollationKind::blankLacking ||
           finding.kind == CollationKind::tornWithLoss;
}

std::string nameOf(const CollationFinding& finding) {
    const std::string where = finding.place.empty() ? "A leaf" : finding.place;
    return where +
           (finding.kind == CollationKind::tornWithLoss ? " is torn with loss" : " is lacking");
}

void undecided(const AuditContext& at, const AuditSink& found) {
    for (const CollationFinding& finding : at.file.collationFindings) {
        if (isGap(finding) && finding.decision == CollationDecision::undecided) {
            found(finding, nameOf(finding) + ", and nothing says what is done about it.");
        }
    }
}

void unnamed(const AuditContext& at, const AuditSink& found) {
    for (const CollationFinding& finding : at.file.collationFindings) {
        if (isGap(finding) && finding.place.empty()) {
            found(finding, nameOf(finding) + ": which one is not said.");
        }
    }
}

// Whether a supplied leaf, or a standing step, is at the finding's place.
bool isMadeGood(const JobFile& file, const CollationFinding& finding) {
    const bool leaf = std::ranges::any_of(file.facsimiles, [&](const Facsimile& supplied) {
        return mayShareLeaves(supplied.place, finding.place);
    });
    return leaf || (finding.kind == CollationKind::tornWithLoss &&
                    std::ranges::any_of(facts::standing(file), [&](const Step* step) {
                        return mayShareLeaves(step->place, finding.place);
                    }));
}

void madeGoodByNothing(const AuditContext& at, const AuditSink& found) {
    for (const CollationFinding& finding : at.file.collationFindings) {
        if (isGap(finding) && finding.decision == CollationDecision::madeGood &&
            !isMadeGood(at.file, finding)) {
            found(finding, nameOf(finding) + " and is said to be made good: no leaf supplied and "
                                             "no step says with what.");
        }
    }
}

void promised(const AuditContext& at, const AuditSink& found) {
    for (const CollationFinding& finding : at.file.collationFindings) {
        if (finding.decision == CollationDecision::toBeSupplied &&
            hasReached(at.file.job.state, JobState::passed)) {
            found(finding, nameOf(finding) + " and was to be supplied; the job has passed the "
                                             "bench without it.");
        }
    }
}

void ownerNotTold(const AuditContext& at, const AuditSink& found) {
    if (facts::isTold(at.file, NoticeSubject::collation)) {
        return;
    }
    for (const CollationFinding& finding : at.file.collationFindings) {
        if (finding.onArrival && isGap(finding)) {
            found(finding, nameOf(finding) + ", and the owner has not been told.");
        }
    }
}

void notFinished(const AuditContext& at, const AuditSink& found) {
    for (const Collation& collation : at.file.collations) {
        if (!collation.finishedOn) {
            found(collation, "The collation is begun and not finished.");
        }
    }
    if (at.file.collations.empty() && hasReached(at.file.job.state, JobState::approved)) {
        found(at.file.job, "The book has not been collated.");
    }
}

void tally(const AuditContext& at, const AuditSink& found) {
    const bool explained = std::ranges::any_of(at.file.collationFindings, isGap);
    for (const Collation& collation : at.file.collations) {
        const bool leaves = collation.leavesCalledFor > collation.leavesPresent;
        const bool plates = collation.platesCalledFor > collation.platesPresent;
        if ((leaves || plates) && !explained) {
            found(collation,
                  fmt::format("{} {} are called for and {} are present: no finding names those "
                              "that are lacking.",
                              plates ? collation.platesCalledFor : collation.leavesCalledFor,
                              plates ? "plates" : "leaves",
                              plates ? collation.platesPresent : collation.leavesPresent));
        }
    }
}

// ILAB Code §3: what should be present, and what is.
void platesNotCounted(const AuditContext& at, const AuditSink& found) {
    for (const Collation& collation : at.file.collations) {
        const bool isCounted = collation.platesCalledFor > 0 || collation.platesPresent > 0 ||
                               std::ranges::any_of(at.file.plates, [&](const CalledPlate& plate) {
                                   return plate.part == collation.part;
                               });
        const int plates = collation.finishedOn ? readExtent(collation.extent).plates : 0;
        if (plates > 0 && !isCounted) {
            found(collation,
                  fmt::format("The extent names {}, and how many this copy has is not said.",
                              counted(static_cast<std::size_t>(plates), "plate", "plates")));
        }
    }
}

void moreThanCalledFor(const AuditContext& at, const AuditSink& found) {
    const bool explained =
        std::ranges::any_of(at.file.collationFindings, [](const CollationFinding& finding) {
            return finding.kind == CollationKind::inserted ||
                   finding.kind == CollationKind::duplicated ||
                   finding.kind == CollationKind::supplied ||
                   finding.kind == CollationKind::facsimile;
        });
    for (const Collation& collation : at.file.collations) {
        const bool leaves =
            collation.leavesCalledFor > 0 && collation.leavesPresent > collation.leavesCalledFor;
        if (leaves && !explained) {
            found(collation, fmt::format("{} leaves are called for and {} are present: nothing "
                                         "says where the others come from.",
                                         collation.leavesCalledFor, collation.leavesPresent));
        }
    }
}

void method(const AuditContext& at, const AuditSink& found) {
    for (const Collation& collation : at.file.collations) {
        if (collation.finishedOn && collation.method.empty()) {
            found(collation, "The collation does not say how it was established.");
        }
    }
}

void tallyOut(const AuditContext& at, const AuditSink& found) {
    const LeafCount count = leafCountOf(at.file);
    const auto hold = [&](const Tally& tally, const char* one, const char* many) {
        if (tally.isApart()) {
            found(at.file.job,
                  fmt::format("{} counted before it leaves; {} came in, {} put in and {} taken "
                              "out: that makes {}.",
                              counted(static_cast<std::size_t>(*tally.out), one, many), *tally.in,
                              tally.added, tally.removed, *tally.due()));
        }
    };
    hold(count.leaves, "leaf was", "leaves were");
    hold(count.plates, "plate was", "plates were");
}

void tallyOutUnsaid(const AuditContext& at, const AuditSink& found) {
    const LeafCount count = leafCountOf(at.file);
    if (!count.isCountedOut) {
        return;
    }
    if (!count.leaves.out) {
        found(at.file.job, "The leaves were counted before it leaves, and how many there were is "
                           "not noted.");
    } else if (count.plates.due() && !count.plates.out) {
        found(at.file.job, "The leaves were counted before it leaves; how many plates there were "
                           "is not noted.");
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::string_view kTell = "Cockerell 1901, ch. II";
constexpr std::array kRules{
    AuditRule{"lacking_leaf_named", Page::collation, kMust, "ILAB Code §3", unnamed},
    AuditRule{"lacking_leaf_decided", Page::collation, kMust, "ILAB Code §3", undecided},
    AuditRule{"lacking_leaf_made_good", Page::collation, kMust, "AIC Commentary 23",
              madeGoodByNothing},
    AuditRule{"lacking_leaf_promised", Page::collation, kMust, "Icon Standards 2.1–2.3", promised},
    AuditRule{"lacking_leaf_told", Page::collation, kMust, kTell, ownerNotTold},
    AuditRule{"leaf_tally_short", Page::collation, kMust, "ILAB Code §3", tally},
    AuditRule{"plates_counted", Page::collation, kMust, "ILAB Code §3", platesNotCounted},
    AuditRule{"leaf_tally_over", Page::collation, kWorth, "ILAB Code §3", moreThanCalledFor},
    AuditRule{"leaf_tally_out", Page::report, kMust, "ILAB Code §3", tallyOut},
    AuditRule{"leaf_tally_out_said", Page::report, kWorth, "common practice", tallyOutUnsaid},
    AuditRule{"collation_finished", Page::collation, kWorth, kTell, notFinished},
    AuditRule{"collation_method", Page::collation, kWorth, "AIC Commentary 25", method},
};

} // namespace

std::span<const AuditRule> collationRules() {
    return kRules;
}

} // namespace headcap::core
