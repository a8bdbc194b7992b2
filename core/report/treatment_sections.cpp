#include <algorithm>
#include <iterator>

#include <fmt/format.h>

#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/work_words.h"
#include "core/report/writing.h"
#include "core/treatment/approval.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/carried_out.h"
#include "core/treatment/departures.h"
#include "core/treatment/totals.h"
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

std::string lastingSentence(const JobFile& file, const ProposalOption& option) {
    const std::string lasting = lastingText(file, option);
    if (!lasting.empty()) {
        return "Can't be undone: " + lasting;
    }
    return option.irreversible.empty() || linesOf(file, option.id).empty()
               ? ""
               : "All of it can be undone.";
}

std::string optionText(const JobFile& file, const ProposalOption& option) {
    return joined({sentence(option.name.empty() ? "An option" : option.name),
                   sentence(option.effect),
                   option.risk.empty() ? "" : "Risk: " + sentence(option.risk),
                   lastingSentence(file, option)},
                  " ");
}

std::string lineText(const JobFile& file, const ProposalLine& line) {
    return workWords(file, line.technique, line.description);
}

// No prices: the report stands apart from the invoice. An empty column is left out.
Table linesTable(const JobFile& file, const ProposalOption& option) {
    const auto lines = linesOf(file, option.id);
    const auto any = [&](auto&& isThere) { return std::ranges::any_of(lines, isThere); };
    const bool hasPlace = any([](const auto* line) { return !line->place.empty(); });
    const bool hasMaterials = any([](const auto* line) { return !line->materials.empty(); });
    const bool hasTime = any([](const auto* line) { return line->minutes > Minutes{0}; });
    Table table{{{"Work", 5}}, {}};
    const auto add = [&](bool isThere, TableColumn column) {
        if (isThere) {
            table.columns.push_back(std::move(column));
        }
    };
    add(hasPlace, {"Place", 3});
    add(hasMaterials, {"Materials", 4});
    add(hasTime, {"Time", 2, true});
    for (const ProposalLine* line : lines) {
        TableRow made = row({lineText(file, *line)}, refOf(line->id));
        const auto fill = [&](bool isThere, std::string text) {
            if (isThere) {
                made.cells.push_back(plain(std::move(text)));
            }
        };
        fill(hasPlace, line->place);
        fill(hasMaterials, line->materials);
        fill(hasTime, line->minutes > Minutes{0} ? minutesText(line->minutes) : "");
        table.rows.push_back(std::move(made));
    }
    return table;
}

void addOption(Section& section, const JobFile& file, const ProposalOption& option) {
    section.blocks.emplace_back(Paragraph{plain(optionText(file, option)), refOf(option.id)});
    if (Table lines = linesTable(file, option); !lines.rows.empty()) {
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

// Without what parts its thousands.
std::string unparted(const std::string& text) {
    std::string kept;
    std::ranges::copy_if(text, std::back_inserter(kept),
                         [](char c) { return c != ',' && c != '\'' && c != ' '; });
    return kept;
}

// Whether the words name the sum, however its thousands are parted.
bool namesSum(const std::string& words, const Money& sum) {
    const std::string text = unparted(words);
    const std::string figures = unparted(toText(sum));
    const std::string whole = figures.substr(0, figures.find_first_not_of("0123456789"));
    const auto isDigit = [&](std::size_t at) {
        return at < text.size() && text[at] >= '0' && text[at] <= '9';
    };
    const std::size_t at = text.find(whole);
    return !whole.empty() && at != std::string::npos && (at == 0 || !isDigit(at - 1)) &&
           !isDigit(at + whole.size());
}

// Whether the limit was kept: without the bill, which stands apart from the report.
std::string keptText(const JobFile& file, const Decision& decision, const std::string& sum) {
    const auto done = costAsDone(file, decision.limit->currency);
    if (approval(file) != &decision || !done || done->gross.minor == 0) {
        return {};
    }
    const bool isKept = done->gross.minor <= decision.limit->minor;
    return fmt::format("The work as it was done {} {}.", isKept ? "stayed within" : "goes above",
                       sum);
}

// The limit is said in the owner's words where these name it.
std::string limitText(const JobFile& file, const Decision& decision) {
    const std::string words = decision.limits.empty() ? "" : "Limits: " + sentence(decision.limits);
    if (!decision.limit) {
        return words;
    }
    const std::string limit = toText(*decision.limit);
    return namesSum(decision.limits, *decision.limit)
               ? joined({words, keptText(file, decision, limit)}, " ")
               : joined({"Not above " + limit + " without being asked.",
                         keptText(file, decision, "it"), words},
                        " ");
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
                     option == file.options.end() ? "" : ", “" + option->name + "”",
                     wordsFor(decision.kind), dayText(decision.onDay), by,
                     decision.authority.empty() ? "" : " (" + decision.authority + ")",
                     wordsFor(decision.means)),
         limitText(file, decision), sentence(decision.note)},
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
            row({workWords(at.file, step->technique, step->description),
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
