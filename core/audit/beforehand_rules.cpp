// What must have been done before a step: the book collated and its owner told, the inks tested.
#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/audit/test_liquids.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

template <class Wanting>
void each(const AuditContext& at, const AuditSink& found, std::string_view says, Wanting wanting) {
    for (const Step* step : facts::standing(at.file)) {
        if (wanting(*step)) {
            found(*step, fmt::format("{} {}", facts::nameOf(*step, at), says));
        }
    }
}

bool isTakingDown(const AuditContext& at, const Step& step) {
    const Technique* technique = at.file.techniques.named(step.technique);
    return technique != nullptr && technique->disbinds;
}

// The fault is past mending: it is settled by telling the owner.
bool isOwnedUp(const AuditContext& at, const Step& step) {
    const Day day = at.clock.dayOf(step.at);
    return facts::isToldFrom(at.file, NoticeSubject::incident, day) ||
           facts::isToldFrom(at.file, NoticeSubject::change, day);
}

void takenDownUncollated(const AuditContext& at, const AuditSink& found) {
    each(at, found, "took the book down before its collation was finished; tell the owner.",
         [&](const Step& step) {
             return isTakingDown(at, step) &&
                    !facts::isFinishedBy(at.file, at.clock.dayOf(step.at)) && !isOwnedUp(at, step);
         });
}

void takenDownUntold(const AuditContext& at, const AuditSink& found) {
    each(at, found,
         "took down a book that lacks leaves before the owner was told of it; tell the "
         "owner.",
         [&](const Step& step) {
             return isTakingDown(at, step) && facts::lacksLeaves(at.file) &&
                    !facts::isToldBy(at.file, NoticeSubject::collation, at.clock.dayOf(step.at)) &&
                    !isOwnedUp(at, step);
         });
}

bool needsTest(const AuditContext& at, const Step& step) {
    const Technique* technique = at.file.techniques.named(step.technique);
    return technique != nullptr && technique->testsMedia;
}

void untested(const AuditContext& at, const AuditSink& found) {
    each(at, found, "brings liquid to the leaves, and no test of the inks is noted.",
         [&](const Step& step) { return needsTest(at, step) && at.file.tests.empty(); });
}

void testedAfter(const AuditContext& at, const AuditSink& found) {
    each(at, found, "brought liquid to the leaves before any test of the inks.",
         [&](const Step& step) {
             const Day day = at.clock.dayOf(step.at);
             return needsTest(at, step) && !at.file.tests.empty() &&
                    std::ranges::none_of(at.file.tests,
                                         [&](const Test& test) { return test.onDay <= day; });
         });
}

// Tested by then, in this liquid: else the liquids that were not.
void otherLiquid(const AuditContext& at, const AuditSink& found) {
    for (const Step* step : facts::standing(at.file)) {
        if (at.file.tests.empty() || !needsTest(at, *step)) {
            continue;
        }
        std::vector<std::string> untestedLiquids = liquidsOf(at.file, *step);
        std::erase_if(untestedLiquids, [&](const std::string& liquid) {
            return std::ranges::any_of(
                at.file.tests, [&](const Test& test) { return isTestedWith(test, liquid); });
        });
        if (!untestedLiquids.empty()) {
            found(*step, fmt::format("{} brings {} to the leaves, and no test of the inks in it is "
                                     "noted.",
                                     facts::nameOf(*step, at), listed(untestedLiquids)));
        }
    }
}

void otherLeaves(const AuditContext& at, const AuditSink& found) {
    each(at, found, "brings liquid to leaves of which none was tested.", [&](const Step& step) {
        return needsTest(at, step) && !at.file.tests.empty() &&
               std::ranges::none_of(at.file.tests,
                                    [&](const Test& test) { return isTestedThere(test, step); });
    });
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::array kRules{
    AuditRule{"disbound_collated", Page::bench, kMust, "Cockerell 1901, ch. II",
              takenDownUncollated},
    AuditRule{"disbound_told", Page::bench, kMust, "Cockerell 1901, ch. II", takenDownUntold},
    AuditRule{"media_tested", Page::bench, kMust, "AIC Commentary 16, 17", untested},
    AuditRule{"media_tested_before", Page::bench, kWorth, "AIC Commentary 16, 17", testedAfter},
    AuditRule{"media_tested_liquid", Page::bench, kMust, "AIC Commentary 16, 17", otherLiquid},
    AuditRule{"media_tested_leaves", Page::bench, kWorth, "AIC Commentary 16, 17", otherLeaves},
};

} // namespace

std::span<const AuditRule> beforehandRules() {
    return kRules;
}

} // namespace headcap::core
