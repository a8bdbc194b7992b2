#include "app/pages/survey_words.h"

#include <algorithm>
#include <tuple>

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/values/english.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("survey", text);
}

const core::ConditionComponent* componentNamed(const QString& name) {
    for (const auto& one : core::conditionComponents()) {
        if (fromCore(one.name).compare(name.trimmed(), Qt::CaseInsensitive) == 0) {
            return &one;
        }
    }
    return nullptr;
}

std::size_t placeInSurvey(const core::Finding& finding) {
    const auto& all = core::conditionComponents();
    const auto at = std::find_if(all.begin(), all.end(), [&](const auto& component) {
        return component.key == finding.component;
    });
    return static_cast<std::size_t>(at - all.begin());
}

Ink inkOf(const core::Finding& finding) {
    if (finding.handling == core::Handling::no || finding.severity >= 3) {
        return Ink::must;
    }
    const bool isOpen = finding.severity == 2 || finding.activity == core::Activity::active;
    return isOpen ? Ink::open : Ink::quiet;
}

} // namespace

QStringList severityWords() {
    return {tr("0  none"), tr("1  slight"), tr("2  moderate"), tr("3  severe")};
}

std::vector<Choice> componentChoices() {
    std::vector<Choice> choices;
    for (const auto& one : core::conditionComponents()) {
        choices.push_back({one.key, fromCore(one.name)});
    }
    return choices;
}

std::vector<Choice> termChoices(const QString& component) {
    std::vector<Choice> choices;
    if (const auto* found = componentNamed(component)) {
        for (const auto& term : found->terms) {
            choices.push_back({term.key, fromCore(term.name)});
        }
    }
    return choices;
}

const core::ConditionTerm* termNamed(const QString& component, const QString& term) {
    if (const auto* found = componentNamed(component)) {
        for (const auto& one : found->terms) {
            if (fromCore(one.name).compare(term.trimmed(), Qt::CaseInsensitive) == 0) {
                return &one;
            }
        }
    }
    return nullptr;
}

std::vector<core::Finding> inSurveyOrder(std::vector<core::Finding> findings) {
    std::stable_sort(findings.begin(), findings.end(), [](const auto& a, const auto& b) {
        return std::tuple{placeInSurvey(a), a.component, -a.severity} <
               std::tuple{placeInSurvey(b), b.component, -b.severity};
    });
    return findings;
}

RowWords rowOf(const core::Finding& finding, const QString& volume, const QString& photographs) {
    const QString inferred =
        finding.inferred.empty() ? QString{} : tr("inferred: %1").arg(fromCore(finding.inferred));
    return {.mark = fromCore(core::capitalised(core::componentName(finding.component))),
            .title = fromCore(core::capitalised(core::termName(finding.component, finding.term))),
            .detail = dotted(
                {volume, fromCore(finding.place), fromCore(finding.extent),
                 finding.handling == core::Handling::no ? words(finding.handling) : QString{},
                 finding.earlierRepair ? tr("earlier repair") : QString{},
                 fromCore(finding.observed), inferred, photographs}),
            .right = dotted(
                {severityWords().value(static_cast<int>(finding.severity), tr("not judged")),
                 finding.activity == core::Activity::active ? words(finding.activity) : QString{}}),
            .rightInk = inkOf(finding),
            .isGrouped = true};
}

RowWords rowOf(const core::Examination& examination, const core::JobFile& file, core::Day today) {
    const core::Person* who = file.person(examination.who);
    return {.mark = shortDay(examination.onDay, today),
            .title = fromCore(examination.method),
            .detail = examination.notExamined.empty()
                          ? QString{}
                          : tr("not examined: %1").arg(fromCore(examination.notExamined)),
            .right = who != nullptr ? fromCore(who->name) : QString{}};
}

RowWords rowOf(const core::Test& test, core::Day today) {
    const bool lacksConsent = test.sampleTaken && test.consent.empty();
    return {.mark = shortDay(test.onDay, today),
            .title = dotted({fromCore(test.purpose), fromCore(test.place)}),
            .detail = dotted({fromCore(test.method), fromCore(test.result)}),
            .right = lacksConsent          ? tr("sample without consent")
                     : test.sampleTaken    ? tr("sample taken")
                     : test.result.empty() ? tr("no result yet")
                                           : QString{},
            .rightInk = lacksConsent || test.result.empty() ? Ink::open : Ink::quiet};
}

} // namespace headcap::app
