#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/custody/job_states.h"
#include "core/survey/condition_terms.h"
#include "core/survey/finding_state.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

void noCondition(const AuditContext& at, const AuditSink& found) {
    if (at.file.findings.empty() && facts::isTreated(at.file)) {
        found(at.file.job, "The book was treated, and its condition on arrival is not described.");
    }
}

void notJudged(const AuditContext& at, const AuditSink& found) {
    for (const Finding& finding : at.file.findings) {
        if (!isJudged(finding)) {
            const std::string part = componentName(finding.component);
            const std::string term = termName(finding.component, finding.term);
            found(finding, fmt::format("{}: how severe it is, and whether the book may be handled, "
                                       "is not said.",
                                       capitalised(part.empty() ? term : part + ", " + term)));
        }
    }
}

void examinedHow(const AuditContext& at, const AuditSink& found) {
    if (at.file.examinations.empty() && !at.file.findings.empty()) {
        found(at.file.job, "How the book was examined is not noted.");
    }
    for (const Examination& examination : at.file.examinations) {
        if (examination.method.empty()) {
            found(examination, "The examination does not say under what light and magnification.");
        }
    }
}

void notExamined(const AuditContext& at, const AuditSink& found) {
    for (const Examination& examination : at.file.examinations) {
        if (examination.notExamined.empty()) {
            found(examination, "The examination does not say what was not looked at.");
        }
    }
}

void consent(const AuditContext& at, const AuditSink& found) {
    for (const Test& test : at.file.tests) {
        if (test.sampleTaken && test.consent.empty()) {
            found(test, fmt::format("A sample was taken ({}), and the owner's consent is not "
                                    "noted.",
                                    test.purpose.empty() ? "no purpose given" : test.purpose));
        }
    }
}

void result(const AuditContext& at, const AuditSink& found) {
    for (const Test& test : at.file.tests) {
        if (test.result.empty()) {
            found(test, fmt::format("The test of {} has no result.",
                                    test.purpose.empty() ? "unknown purpose" : test.purpose));
        }
    }
}

void likely(const AuditContext& at, const AuditSink& found) {
    for (const HazardKind* kind : likelyHazards(at.file)) {
        found(at.file.item, fmt::format("{} is likely in such a book ({}): say whether it is "
                                        "tested, suspected, confirmed or cleared.",
                                        kind->name, kind->where));
    }
}

void notTested(const AuditContext& at, const AuditSink& found) {
    for (const Hazard& hazard : at.file.hazards) {
        if (hazard.state == HazardState::notTested || hazard.state == HazardState::suspected) {
            found(hazard, fmt::format("{}: {}; the report will warn of it.",
                                      hazardName(hazard.term), wordsFor(hazard.state)));
        }
    }
}

void clearedHow(const AuditContext& at, const AuditSink& found) {
    for (const Hazard& hazard : at.file.hazards) {
        const bool settled =
            hazard.state == HazardState::cleared || hazard.state == HazardState::confirmed;
        if (settled && (hazard.method.empty() || !hazard.onDay || !hazard.who)) {
            found(hazard, fmt::format("{} is {}: by what method, when and by whom is not all "
                                      "noted.",
                                      hazardName(hazard.term), wordsFor(hazard.state)));
        }
    }
}

void clearedByLook(const AuditContext& at, const AuditSink& found) {
    for (const Hazard& hazard : at.file.hazards) {
        if (isClearedByLookAlone(hazard)) {
            found(hazard, fmt::format("{} is called cleared by a look alone: the report will say "
                                      "\"{}\".",
                                      hazardName(hazard.term), standingOf(hazard)));
        }
    }
}

void hazardNotTold(const AuditContext& at, const AuditSink& found) {
    if (facts::isTold(at.file, NoticeSubject::hazard)) {
        return;
    }
    for (const Hazard& hazard : at.file.hazards) {
        if (hazard.state == HazardState::confirmed || hazard.state == HazardState::suspected) {
            found(hazard, fmt::format("{} is {}, and the owner has not been told.",
                                      hazardName(hazard.term), wordsFor(hazard.state)));
        }
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::array kRules{
    AuditRule{"condition_described", Page::survey, kMust, "AIC Commentary 25", noCondition},
    AuditRule{"finding_judged", Page::survey, kWorth, "AIC Commentary 25", notJudged},
    AuditRule{"examination_method", Page::survey, kWorth, "AIC Commentary 25", examinedHow},
    AuditRule{"not_examined", Page::survey, kWorth, "AIC Commentary 25", notExamined},
    AuditRule{"sample_consent", Page::survey, kMust, "AIC Commentary 16, 17", consent},
    AuditRule{"test_result", Page::survey, kMust, "AIC Commentary 17", result},
    AuditRule{"hazard_likely", Page::survey, kMust, "published hazards of book materials", likely},
    AuditRule{"hazard_not_settled", Page::survey, kWorth, "common practice", notTested},
    AuditRule{"hazard_evidence", Page::survey, kMust, "common practice", clearedHow},
    AuditRule{"hazard_cleared_by_look", Page::survey, kWorth,
              "published hazards of book materials: a negative look is no clearance",
              clearedByLook},
    AuditRule{"hazard_told", Page::survey, kMust, "AIC Commentary 28", hazardNotTold},
};

} // namespace

std::span<const AuditRule> surveyRules() {
    return kRules;
}

} // namespace headcap::core
