#include "core/audit/bath_tests.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/audit/test_liquids.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

bool needsTest(const AuditContext& at, const Step& step) {
    const Technique* technique = at.file.techniques.named(step.technique);
    return technique != nullptr && technique->testsMedia;
}

// Of the steps that bring liquid to the leaves, those wanting.
template <class Wanting>
void eachBath(const AuditContext& at, const AuditSink& found, std::string_view says,
              Wanting wanting) {
    facts::eachStep(at, found, says,
                    [&](const Step& step) { return needsTest(at, step) && wanting(step); });
}

// The liquids of a step that no test on or before its day was made with; and of those, the ones
// tested in afterwards.
struct UntestedLiquids {
    std::vector<std::string> never{};
    std::vector<std::string> after{};
};

UntestedLiquids untestedLiquidsOf(const AuditContext& at, const Step& step) {
    const Day day = at.clock.dayOf(step.at);
    UntestedLiquids untested;
    for (std::string& liquid : liquidsOf(at.file, step)) {
        const auto isIn = [&](const Test& test) { return isTestedWith(test, liquid); };
        const auto isInByThen = [&](const Test& test) { return isIn(test) && test.onDay <= day; };
        if (std::ranges::any_of(at.file.tests, isInByThen)) {
            continue;
        }
        const bool isAfter = std::ranges::any_of(at.file.tests, isIn);
        (isAfter ? untested.after : untested.never).push_back(std::move(liquid));
    }
    return untested;
}

} // namespace

void bathUntested(const AuditContext& at, const AuditSink& found) {
    eachBath(at, found, "brings liquid to the leaves, and no test of the inks is noted.",
             [&](const Step&) { return at.file.tests.empty(); });
}

void bathTestedAfter(const AuditContext& at, const AuditSink& found) {
    eachBath(at, found, "brought liquid to the leaves before any test of the inks.",
             [&](const Step& step) {
                 const Day day = at.clock.dayOf(step.at);
                 return !at.file.tests.empty() &&
                        std::ranges::none_of(at.file.tests,
                                             [&](const Test& test) { return test.onDay <= day; });
             });
}

// Tested by then, in this liquid: else the liquids that were not. A test that comes after the bath
// mends nothing: it is settled by telling the owner.
void bathInOtherLiquid(const AuditContext& at, const AuditSink& found) {
    for (const Step* step : facts::standing(at.file)) {
        if (at.file.tests.empty() || !needsTest(at, *step)) {
            continue;
        }
        const UntestedLiquids untested = untestedLiquidsOf(at, *step);
        if (!untested.never.empty()) {
            found(*step, fmt::format("{} brings {} to the leaves, and no test of the inks in it is "
                                     "noted.",
                                     facts::nameOf(*step, at), listed(untested.never)));
        }
        if (!untested.after.empty() && !facts::isOwnedUp(at, *step)) {
            found(*step, fmt::format("{} brought {} to the leaves, and the inks were tested in it "
                                     "only after; tell the owner.",
                                     facts::nameOf(*step, at), listed(untested.after)));
        }
    }
}

void bathOnOtherLeaves(const AuditContext& at, const AuditSink& found) {
    eachBath(at, found, "brings liquid to leaves of which none was tested.", [&](const Step& step) {
        return !at.file.tests.empty() && std::ranges::none_of(at.file.tests, [&](const Test& test) {
            return isTestedThere(test, step);
        });
    });
}

} // namespace headcap::core
