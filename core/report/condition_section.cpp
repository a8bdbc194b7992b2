#include <algorithm>

#include <fmt/format.h>

#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/report/sections.h"
#include "core/report/writing.h"
#include "core/survey/condition_terms.h"
#include "core/survey/finding_state.h"
#include "core/values/decimal.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string areaText(const std::optional<Area>& area) {
    return area ? decimalText(area->count(), 6) + " mm²" : "";
}

void addHazards(Section& section, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        const HazardKind* kind = hazardNamed(hazard.term);
        const bool warns = stillWarns(hazard);
        const std::string tested =
            told({hazard.method,
                  joined({hazard.onDay ? dayText(*hazard.onDay) : "", personName(file, hazard.who)},
                         ", ")});
        section.blocks.emplace_back(
            Caution{fmt::format("{}: {}", hazardName(hazard.term), standingOf(hazard)),
                    joined({capitalised(sentence(hazard.place)), sentence(tested),
                            sentence(hazard.note), warns && kind != nullptr ? kind->caution : ""},
                           " "),
                    refOf(hazard.id)});
    }
}

void addExaminations(Section& section, const JobFile& file) {
    if (file.examinations.empty()) {
        section.blocks.emplace_back(Statement{"How the book was examined is not noted."});
    }
    for (const Examination& examination : file.examinations) {
        const std::string who = personName(file, examination.who);
        const std::string part = placeIn(file, examination.part, "");
        std::string text = fmt::format(
            "Examined on {}{}{}: {} Not examined: {}", dayText(examination.onDay),
            who.empty() ? "" : " by " + who, part.empty() ? "" : " (" + part + ")",
            examination.method.empty() ? "the method is not noted." : sentence(examination.method),
            examination.notExamined.empty() ? "not stated." : sentence(examination.notExamined));
        section.blocks.emplace_back(Paragraph{plain(std::move(text)), refOf(examination.id)});
    }
}

TableRow findingRow(const JobFile& file, const Finding& finding) {
    const std::string term = termName(finding.component, finding.term);
    return row({partAndPlace(file, finding),
                told({finding.earlierRepair ? joined({term, "an earlier repair"}, ", ") : term,
                      finding.observed, finding.extent, areaText(finding.area)}),
                finding.inferred, stateWords(finding)},
               refOf(finding.id));
}

} // namespace

Section conditionSection(const Context& at) {
    const JobFile& file = at.file;
    Section section{.key = "condition", .title = "Condition as received"};
    addHazards(section, file);
    addExaminations(section, file);
    Table findings{{{"Part and place", 3}, {"Observed", 5}, {"Inferred", 3}, {"State", 3}}, {}};
    for (const Finding& finding : file.findings) {
        findings.rows.push_back(findingRow(file, finding));
    }
    addOr(section, std::move(findings), "No finding of its condition is recorded.");
    Table tests{{{"Date", 2}, {"Place", 2}, {"Purpose and method", 4}, {"Result", 4}}, {}};
    for (const Test& test : file.tests) {
        const bool unasked = test.sampleTaken && test.consent.empty();
        const std::string sample =
            joined({test.sampleTaken ? "a sample was taken" : "",
                    unasked ? "the owner's consent is not noted" : "",
                    test.consent.empty() ? "" : "with consent: " + test.consent,
                    test.kept.empty() ? "" : "kept: " + test.kept});
        tests.rows.push_back(row({dayText(test.onDay), placeIn(file, test.part, test.place),
                                  told({test.purpose, test.method}),
                                  told({test.result.empty() ? "not noted" : test.result, sample,
                                        personName(file, test.who)})},
                                 refOf(test.id)));
    }
    section.blocks.emplace_back(Subheading{"Tests and samples"});
    addOr(section, std::move(tests), "No test was made and no sample taken.");
    return section;
}

} // namespace headcap::core::report
