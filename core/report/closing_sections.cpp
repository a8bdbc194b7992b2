#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/report/sections.h"
#include "core/report/worked_on.h"
#include "core/report/writing.h"
#include "core/survey/condition_terms.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

void addHazardAdvice(List& list, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        const HazardKind* kind = hazardNamed(hazard.term);
        if (stillWarns(hazard)) {
            list.items.push_back(
                {plain(fmt::format("{} ({}). {}", hazardName(hazard.term), standingOf(hazard),
                                   kind ? kind->report : "Ask a qualified person before use.")),
                 refOf(hazard.id)});
        }
    }
}

// What was found that still asks for care.
void addHandlingAdvice(List& list, const JobFile& file) {
    for (const Finding& finding : file.findings) {
        if (finding.handling == Handling::yes || isWorkedOn(file, finding)) {
            continue;
        }
        list.items.push_back(
            {plain(fmt::format("{}: {} as it came, and not worked on. {}",
                               capitalised(partAndPlace(file, finding)),
                               lowerFirst(termName(finding.component, finding.term)),
                               finding.handling == Handling::no
                                   ? "Not fit to be handled; ask before use."
                                   : "Handle it with care.")),
             refOf(finding.id)});
    }
}

void addTechniqueAdvice(List& list, const JobFile& file) {
    std::set<std::string> given;
    for (const Step& step : file.steps) {
        const Technique* technique = file.techniques.named(step.technique);
        if (!step.struckAt && technique != nullptr && !technique->advice.empty() &&
            given.insert(technique->advice).second) {
            list.items.push_back({plain(technique->advice), std::nullopt});
        }
    }
}

// Of leaves that are of one kind and come out in one way.
ListItem leafAdvice(const JobFile& file, const std::vector<const Facsimile*>& leaves) {
    const bool isOne = leaves.size() == 1;
    std::vector<std::string> places;
    ListItem item{.source = refOf(leaves.front()->id)};
    for (const Facsimile* leaf : leaves) {
        places.push_back(orUnnamed(placeIn(file, leaf->part, leaf->place)));
        if (leaf != leaves.front()) {
            item.also.push_back(refOf(leaf->id));
        }
    }
    const bool isFacsimile = leaves.front()->kind == SuppliedKind::facsimile;
    const std::string& removal = leaves.front()->removal;
    const std::string leavesText =
        fmt::format("{} at {} {} not of this copy",
                    isOne ? (isFacsimile ? "The facsimile" : "The leaf supplied")
                          : (isFacsimile ? "The facsimiles" : "The leaves supplied"),
                    listed(places), isOne ? "is" : "are");
    const std::string original = isOne ? "the original" : "an original";
    item.runs = plain(
        sentence(removal.empty()
                     ? fmt::format("{}; how {} comes out, should {} turn up, is not recorded",
                                   leavesText, isOne ? "it" : "what stands in its place", original)
                     : fmt::format("{}; should {} turn up, {} comes out so: {}", leavesText,
                                   original, isOne ? "it" : "what stands in its place", removal)));
    return item;
}

void addLeafAdvice(List& list, const JobFile& file) {
    std::vector<std::vector<const Facsimile*>> groups;
    for (const Facsimile& leaf : file.facsimiles) {
        const auto alike = std::ranges::find_if(groups, [&](const auto& group) {
            return group.front()->kind == leaf.kind && group.front()->removal == leaf.removal;
        });
        (alike == groups.end() ? groups.emplace_back() : *alike).push_back(&leaf);
    }
    for (const auto& group : groups) {
        list.items.push_back(leafAdvice(file, group));
    }
}

struct Part {
    std::size_t steps = 0;
    std::size_t struck = 0;
    Minutes minutes{0};
    std::vector<std::string> other;
};

Part partOf(const JobFile& file, const Id<Person>& id) {
    Part part;
    for (const Step& step : file.steps) {
        if (step.who == id && step.struckAt) {
            ++part.struck;
        } else if (step.who == id) {
            ++part.steps;
            part.minutes += step.minutes;
        }
    }
    const auto any = [&](const auto& records) {
        return std::ranges::any_of(records, [&](const auto& record) { return record.who == id; });
    };
    if (any(file.examinations) || any(file.tests)) {
        part.other.emplace_back("examination");
    }
    if (any(file.collations) || any(file.collationFindings) || any(file.walks)) {
        part.other.emplace_back("collation");
    }
    if (any(file.proposals)) {
        part.other.emplace_back("proposal");
    }
    return part;
}

} // namespace

Section adviceSection(const Context& at) {
    Section section{.key = "advice", .title = "Advice for its care"};
    List list;
    addHazardAdvice(list, at.file);
    addHandlingAdvice(list, at.file);
    addTechniqueAdvice(list, at.file);
    addLeafAdvice(list, at.file);
    if (!at.file.job.advice.empty()) {
        list.items.push_back({plain(sentence(at.file.job.advice)), std::nullopt});
    }
    list.items.push_back(
        {plain("Keep the treatment report with the book, or where it will be found with it."),
         std::nullopt});
    section.blocks.emplace_back(std::move(list));
    return section;
}

Section peopleSection(const Context& at) {
    Section section{.key = "people", .title = "Who did the work"};
    Table table{{{"Name", 4}, {"As", 3}, {"Part in the work", 6}}, {}};
    for (const Person& person : at.file.people) {
        const Part part = partOf(at.file, person.id);
        if (part.steps + part.struck == 0 && part.other.empty()) {
            continue;
        }
        table.rows.push_back(row(
            {person.name, person.role,
             joined({listed(part.other),
                     part.steps > 0 ? counted(part.steps, "entry of the log", "entries of the log")
                                    : "",
                     part.minutes.count() > 0 ? minutesText(part.minutes) : "",
                     part.struck > 0
                         ? counted(part.struck, "entry that is struck", "entries that are struck")
                         : ""})},
            refOf(person.id)));
    }
    addOr(section, std::move(table), "Nobody's work is logged.");
    return section;
}

} // namespace headcap::core::report
