#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "core/custody/hazards.h"
#include "core/report/sections.h"
#include "core/report/worked_on.h"
#include "core/report/writing.h"
#include "core/survey/condition_terms.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string_view wordsFor(PhotoRole role) {
    switch (role) {
    case PhotoRole::before:
        return "Before treatment";
    case PhotoRole::during:
        return "During treatment";
    case PhotoRole::after:
        return "After treatment";
    case PhotoRole::detail:
        break;
    }
    return "Detail";
}

std::string lowerFirst(std::string_view text) {
    std::string made;
    for (const char c : text) {
        const bool isFirstCapital = made.empty() && c >= 'A' && c <= 'Z';
        made += isFirstCapital ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return made;
}

std::string captionOf(const JobFile& file, const Photograph& photograph) {
    const std::string place = placeIn(file, photograph.part, photograph.place);
    std::string role{wordsFor(photograph.role)};
    if (!place.empty()) {
        role = place + ", " + lowerFirst(role);
    }
    return sentence(told({role, photograph.caption}));
}

void addHazardAdvice(List& list, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        const HazardKind* kind = hazardNamed(hazard.term);
        if (hazard.state != HazardState::cleared) {
            list.items.push_back(
                {plain(fmt::format("{} ({}). {}", hazardName(hazard.term),
                                   core::wordsFor(hazard.state),
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
                               capitalised(joined({componentName(finding.component),
                                                   placeIn(file, finding.part, finding.place)},
                                                  ", ")),
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

void addLeafAdvice(List& list, const JobFile& file) {
    for (const Facsimile& leaf : file.facsimiles) {
        list.items.push_back(
            {plain(sentence(fmt::format(
                 "{} at {} is not of this copy; should the original turn up, it comes out so: {}",
                 leaf.kind == SuppliedKind::facsimile ? "The facsimile" : "The leaf supplied",
                 orUnnamed(placeIn(file, leaf.part, leaf.place)),
                 leaf.removal.empty() ? "not recorded" : leaf.removal))),
             refOf(leaf.id)});
    }
}

bool showsTheSame(const Photograph& before, const Photograph& after) {
    return after.role == PhotoRole::after && after.figureWidth == FigureWidth::column &&
           after.part == before.part && after.place == before.place;
}

// What shows one place before and after stands side by side, and first; the rest as they are.
std::vector<const Photograph*> figuresInOrder(const JobFile& file) {
    std::vector<const Photograph*> rest;
    for (const Photograph& photograph : file.photographs) {
        if (photograph.inReport) {
            rest.push_back(&photograph);
        }
    }
    std::vector<const Photograph*> ordered;
    for (std::size_t i = 0; i < rest.size();) {
        const Photograph& before = *rest[i];
        const bool mayPair = before.role == PhotoRole::before && !before.place.empty() &&
                             before.figureWidth == FigureWidth::column;
        const auto after = std::ranges::find_if(
            rest, [&](const Photograph* one) { return mayPair && showsTheSame(before, *one); });
        if (after == rest.end()) {
            ++i;
            continue;
        }
        ordered.push_back(&before);
        ordered.push_back(*after);
        rest.erase(after);
        std::erase(rest, &before);
        i = 0;
    }
    ordered.insert(ordered.end(), rest.begin(), rest.end());
    return ordered;
}

struct Part {
    std::size_t steps = 0;
    Minutes minutes{0};
    std::vector<std::string> other;
};

Part partOf(const JobFile& file, const Id<Person>& id) {
    Part part;
    for (const Step& step : file.steps) {
        if (step.who == id) {
            ++part.steps;
            part.minutes += step.struckAt ? Minutes{0} : step.minutes;
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

Section figuresSection(const Context& at) {
    Section section{.key = "figures", .title = "Figures"};
    Figures figures;
    for (const Photograph* photograph : figuresInOrder(at.file)) {
        figures.figures.push_back({.number = static_cast<int>(figures.figures.size()) + 1,
                                   .photograph = photograph->digest,
                                   .widthPx = photograph->widthPx,
                                   .heightPx = photograph->heightPx,
                                   .width = photograph->figureWidth,
                                   .caption = captionOf(at.file, *photograph),
                                   .source = refOf(photograph->id)});
    }
    if (figures.figures.empty()) {
        section.blocks.emplace_back(Statement{"No photograph stands in this report."});
    } else {
        section.blocks.emplace_back(std::move(figures));
    }
    return section;
}

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
        {plain("Keep this report with the book, or where it will be found with it."),
         std::nullopt});
    section.blocks.emplace_back(std::move(list));
    return section;
}

Section peopleSection(const Context& at) {
    Section section{.key = "people", .title = "Who did the work"};
    Table table{{{"Name", 4}, {"As", 3}, {"Part in the work", 6}}, {}};
    for (const Person& person : at.file.people) {
        const Part part = partOf(at.file, person.id);
        if (part.steps == 0 && part.other.empty()) {
            continue;
        }
        table.rows.push_back(row(
            {person.name, person.role,
             joined({listed(part.other),
                     part.steps > 0 ? counted(part.steps, "entry of the log", "entries of the log")
                                    : "",
                     part.minutes.count() > 0 ? minutesText(part.minutes) : ""})},
            refOf(person.id)));
    }
    addOr(section, std::move(table), "Nobody's work is logged.");
    return section;
}

} // namespace headcap::core::report
