// What must have been done before a step: the book collated and its owner told, the inks tested.
#include "core/audit/rules.h"

#include "core/audit/bath_tests.h"
#include "core/audit/facts.h"

namespace headcap::core {
namespace {

bool isTakingDown(const AuditContext& at, const Step& step) {
    const Technique* technique = at.file.techniques.named(step.technique);
    return technique != nullptr && technique->disbinds;
}

void takenDownUncollated(const AuditContext& at, const AuditSink& found) {
    facts::eachStep(at, found,
                    "took the book down before its collation was finished; tell the owner.",
                    [&](const Step& step) {
                        return isTakingDown(at, step) &&
                               !facts::isFinishedBy(at.file, at.clock.dayOf(step.at)) &&
                               !facts::isOwnedUp(at, step);
                    });
}

void takenDownUntold(const AuditContext& at, const AuditSink& found) {
    facts::eachStep(at, found,
                    "took down a book that lacks leaves before the owner was told of it; tell the "
                    "owner.",
                    [&](const Step& step) {
                        return isTakingDown(at, step) && facts::lacksLeaves(at.file) &&
                               !facts::isToldBy(at.file, NoticeSubject::collation,
                                                at.clock.dayOf(step.at)) &&
                               !facts::isOwnedUp(at, step);
                    });
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::array kRules{
    AuditRule{"disbound_collated", Page::bench, kMust, "Cockerell 1901, ch. II",
              takenDownUncollated},
    AuditRule{"disbound_told", Page::bench, kMust, "Cockerell 1901, ch. II", takenDownUntold},
    AuditRule{"media_tested", Page::bench, kMust, "AIC Commentary 16, 17", bathUntested},
    AuditRule{"media_tested_before", Page::bench, kWorth, "AIC Commentary 16, 17", bathTestedAfter},
    AuditRule{"media_tested_liquid", Page::bench, kMust, "AIC Commentary 16, 17",
              bathInOtherLiquid},
    AuditRule{"media_tested_leaves", Page::bench, kWorth, "AIC Commentary 16, 17",
              bathOnOtherLeaves},
};

} // namespace

std::span<const AuditRule> beforehandRules() {
    return kRules;
}

} // namespace headcap::core
