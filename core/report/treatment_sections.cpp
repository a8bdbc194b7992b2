#include <algorithm>

#include <fmt/format.h>

#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/treatment/approval.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/carried_out.h"
#include "core/treatment/departures.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string proposalText(const JobFile& file, const Proposal& proposal) {
    const std::string who = personName(file, proposal.who);
    return joined(
        {fmt::format("Proposal {} of {}{}{}.", proposal.version, dayText(proposal.madeOn),
                     who.empty() ? "" : ", by " + who,
                     proposal.sentOn ? ", sent on " + dayText(*proposal.sentOn) : ", not sent"),
         sentence(proposal.aim), proposal.risks.empty() ? "" : "Risks: " + sentence(proposal.risks),
         proposal.notIncluded.empty() ? "" : "Not included: " + sentence(proposal.notIncluded),
         sentence(proposal.note)},
        " ");
}

std::string optionText(const ProposalOption& option) {
    return joined(
        {sentence(option.name.empty() ? "An option" : option.name), sentence(option.effect),
         option.risk.empty() ? "" : "Risk: " + sentence(option.risk),
         option.irreversible.empty() ? "" : "Can't be undone: " + sentence(option.irreversible)},
        " ");
}

std::string lineText(const JobFile& file, const ProposalLine& line) {
    return told({file.techniques.nameOf(line.technique), line.description});
}

void addOption(Section& section, const JobFile& file, const ProposalOption& option) {
    section.blocks.emplace_back(Paragraph{plain(optionText(option)), refOf(option.id)});
    // No prices: the report stands apart from the invoice.
    Table lines{{{"Work", 5}, {"Place", 3}, {"Materials", 4}, {"Time", 2, true}}, {}};
    for (const ProposalLine& line : file.lines) {
        if (line.option == option.id) {
            lines.rows.push_back(row({lineText(file, line), line.place, line.materials,
                                      line.minutes.count() > 0 ? minutesText(line.minutes) : ""},
                                     refOf(line.id)));
        }
    }
    if (!lines.rows.empty()) {
        section.blocks.emplace_back(std::move(lines));
    }
}

Section proposed(const Context& at) {
    Section section{.key = "treatment_proposed", .title = "Proposed", .level = 2};
    if (at.file.proposals.empty()) {
        section.blocks.emplace_back(Statement{"No treatment was proposed in writing."});
    }
    for (const Proposal& proposal : at.file.proposals) {
        section.blocks.emplace_back(
            Paragraph{plain(proposalText(at.file, proposal)), refOf(proposal.id)});
        for (const ProposalOption& option : at.file.options) {
            if (option.proposal == proposal.id) {
                addOption(section, at.file, option);
            }
        }
    }
    return section;
}

// The limit, and whether it was kept: without the bill, which stands apart from the report.
std::string limitText(const JobFile& file, const Decision& decision) {
    if (!decision.limit) {
        return {};
    }
    const std::string limit = "Not above " + toText(*decision.limit) + " without being asked.";
    const auto done = costAsDone(file, decision.limit->currency);
    if (approval(file) != &decision || !done || done->gross.minor == 0) {
        return limit;
    }
    return limit + (done->gross.minor <= decision.limit->minor
                        ? " The work as it was done stayed within it."
                        : " The work as it was done goes above it.");
}

std::string decisionText(const JobFile& file, const Decision& decision) {
    const auto proposal = std::ranges::find(file.proposals, decision.proposal, &Proposal::id);
    const auto option = std::ranges::find_if(file.options, [&](const ProposalOption& candidate) {
        return decision.option == candidate.id;
    });
    const std::string by =
        decision.byName.empty() ? "by whom is not noted" : "by " + decision.byName;
    return joined(
        {fmt::format("Proposal {}{}: {} on {} {}{}, {}.",
                     proposal == file.proposals.end() ? "?" : std::to_string(proposal->version),
                     option == file.options.end() ? "" : ", option " + option->name,
                     wordsFor(decision.kind), dayText(decision.onDay), by,
                     decision.authority.empty() ? "" : " (" + decision.authority + ")",
                     wordsFor(decision.means)),
         limitText(file, decision),
         decision.limits.empty() ? "" : "Limits: " + sentence(decision.limits),
         sentence(decision.note)},
        " ");
}

Section approved(const Context& at) {
    Section section{.key = "treatment_approved", .title = "Approved", .level = 2};
    List decisions;
    for (const Decision& decision : at.file.decisions) {
        decisions.items.push_back({plain(decisionText(at.file, decision)), refOf(decision.id)});
    }
    addOr(section, std::move(decisions), "No decision of the owner is recorded.");
    Table notices{{{"Date", 2}, {"Subject", 2}, {"What the owner was told", 5}, {"Answer", 4}}, {}};
    for (const Notice& notice : at.file.notices) {
        notices.rows.push_back(row(
            {dayText(notice.onDay), std::string{wordsFor(notice.subject)},
             told({notice.text,
                   joined({notice.toldTo.empty() ? "" : "to " + notice.toldTo,
                           std::string{wordsFor(notice.means)}, personName(at.file, notice.who)},
                          ", ")}),
             told({notice.answer, notice.answeredOn ? dayText(*notice.answeredOn) : ""})},
            refOf(notice.id)));
    }
    section.blocks.emplace_back(Subheading{"What the owner was told"});
    addOr(section, std::move(notices), "No notice to the owner is recorded.");
    return section;
}

std::string doneText(const Context& at, const ProposalLine& line) {
    std::vector<std::string> days;
    Minutes minutes{0};
    const auto lines = approvedLines(at.file);
    for (const Step& step : at.file.steps) {
        const ProposalLine* carried = carriedOut(at.file, step, lines);
        if (carried != nullptr && carried->id == line.id) {
            const std::string day = dayText(at.clock.dayOf(step.at));
            if (std::ranges::find(days, day) == days.end()) {
                days.push_back(day);
            }
            minutes += step.minutes;
        }
    }
    if (days.empty()) {
        return "not done";
    }
    return "done on " + listed(days) + (minutes.count() > 0 ? ", " + minutesText(minutes) : "");
}

// Where nothing was approved line by line, all the work stands as done beyond approval.
std::vector<const Step*> stepsOutsideLines(const JobFile& file) {
    if (!approvedLines(file).empty()) {
        return unapprovedSteps(file);
    }
    std::vector<const Step*> steps;
    for (const Step& step : file.steps) {
        if (isWorkOnTheBook(step.kind) && !step.struckAt) {
            steps.push_back(&step);
        }
    }
    return steps;
}

// Why work was done that no approved line covers, where the record says it.
std::string whyUnapproved(const Context& at, const Step& step) {
    for (const Departure& departure : departures(at.file, at.clock)) {
        if (departure.subject != refOf(step.id)) {
            continue;
        }
        return told({"in no approved line",
                     departure.explanation != nullptr ? departure.explanation->text : "",
                     departure.notice != nullptr
                         ? "the owner was told of a change on " + dayText(departure.notice->onDay)
                         : "",
                     departure.isOpen() ? "why is NOT RECORDED" : ""});
    }
    return "in no approved line";
}

Section done(const Context& at) {
    Section section{.key = "treatment_done", .title = "Done", .level = 2};
    Table table{{{"Work", 5}, {"Place", 3}, {"Approved", 4}, {"Done", 4}}, {}};
    for (const ProposalLine* line : approvedLines(at.file)) {
        table.rows.push_back(
            row({lineText(at.file, *line), line->place, "approved", doneText(at, *line)},
                refOf(line->id)));
    }
    for (const Step* step : stepsOutsideLines(at.file)) {
        table.rows.push_back(
            row({told({at.file.techniques.nameOf(step->technique), step->description}),
                 placeIn(at.file, step->part, step->place), whyUnapproved(at, *step),
                 "done on " + dayText(at.clock.dayOf(step->at)) +
                     (step->minutes.count() > 0 ? ", " + minutesText(step->minutes) : "")},
                refOf(step->id)));
    }
    addOr(section, std::move(table), "No treatment was carried out.");
    for (const Step& step : at.file.steps) {
        if (step.kind == StepKind::incident && !step.struckAt) {
            section.blocks.emplace_back(
                Caution{"Incident on " + dayText(at.clock.dayOf(step.at)),
                        joined({sentence(placeIn(at.file, step.part, step.place)),
                                sentence(step.description), sentence(step.undoing)},
                               " "),
                        refOf(step.id)});
        }
    }
    return section;
}

} // namespace

std::vector<Section> treatmentSections(const Context& at) {
    Section head{.key = "treatment", .title = "Treatment"};
    return {std::move(head), proposed(at), approved(at), done(at)};
}

} // namespace headcap::core::report
