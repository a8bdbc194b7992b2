#include <algorithm>
#include <cctype>
#include <map>

#include "core/report/sections.h"
#include "core/report/writing.h"
#include "core/values/english.h"
#include "core/values/fold.h"

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

std::string placeOf(const JobFile& file, const Photograph& photograph) {
    const auto leaf = std::ranges::find_if(
        file.facsimiles, [&](const Facsimile& one) { return photograph.facsimile == one.id; });
    const bool isLeafs = photograph.place.empty() && leaf != file.facsimiles.end();
    return placeIn(file, photograph.part, isLeafs ? leaf->place : photograph.place);
}

// As it is written, or as it begins a sentence; "K55" does not begin with "K5".
bool beginsWith(const std::string& caption, const std::string& place) {
    const std::string raised = capitalised(caption);
    return raised.starts_with(capitalised(place)) &&
           (raised.size() == place.size() ||
            std::isalnum(static_cast<unsigned char>(raised[place.size()])) == 0);
}

std::string captionOf(const JobFile& file, const Photograph& photograph) {
    const std::string place = placeIn(file, photograph.part, photograph.place);
    std::string role{wordsFor(photograph.role)};
    // "Upper board as received" says the place itself.
    if (!place.empty() && !beginsWith(photograph.caption, place)) {
        role = place + ", " + lowerFirst(role);
    }
    return sentence(told({role, photograph.caption}));
}

// What shows one place, in the order of the first photograph of each; what names no place stands
// alone.
using Shown = std::vector<const Photograph*>;
std::vector<Shown> byPlace(const JobFile& file) {
    std::vector<Shown> groups;
    std::map<std::string, std::size_t> known;
    for (const Photograph& photograph : file.photographs) {
        if (!photograph.inReport) {
            continue;
        }
        const std::string place = foldForSearch(placeOf(file, photograph));
        if (const auto at = known.find(place); !place.empty() && at != known.end()) {
            groups[at->second].push_back(&photograph);
            continue;
        }
        known[place] = groups.size();
        groups.push_back({&photograph});
    }
    return groups;
}

// The first before and the first after come first, to stand side by side.
bool putPairFirst(Shown& group) {
    const auto before = std::ranges::find(group, PhotoRole::before, &Photograph::role);
    if (before == group.end()) {
        return false;
    }
    std::rotate(group.begin(), before, before + 1);
    const auto after = std::find_if(group.begin() + 1, group.end(), [](const Photograph* one) {
        return one->role == PhotoRole::after;
    });
    if (after == group.end()) {
        return false;
    }
    std::rotate(group.begin() + 1, after, after + 1);
    return true;
}

class FigureBlocks {
public:
    FigureBlocks(const JobFile& file, Section& section) : m_file(file), m_section(section) {}

    void add(const Shown& group, bool isPaired) {
        Figures figures;
        for (const Photograph* one : group) {
            const bool isOfPair = isPaired && figures.figures.size() < 2;
            figures.figures.push_back({.number = ++m_number,
                                       .photograph = one->digest,
                                       .widthPx = one->widthPx,
                                       .heightPx = one->heightPx,
                                       .width = isOfPair ? FigureWidth::column : one->figureWidth,
                                       .caption = captionOf(m_file, *one),
                                       .source = refOf(one->id)});
        }
        if (!figures.figures.empty()) {
            m_section.blocks.emplace_back(std::move(figures));
        }
    }

private:
    const JobFile& m_file;
    Section& m_section;
    int m_number = 0;
};

} // namespace

// A block of figures is what belongs together: before and after of one view side by side, a
// facsimile with the detail of its statement. What stands alone comes last, two in a row.
Section figuresSection(const Context& at) {
    Section section{.key = "figures", .title = "Figures"};
    FigureBlocks blocks{at.file, section};
    Shown single;
    for (Shown& group : byPlace(at.file)) {
        const bool isPaired = putPairFirst(group);
        if (group.size() == 1 && group.front()->figureWidth == FigureWidth::column) {
            single.push_back(group.front());
        } else {
            blocks.add(group, isPaired);
        }
    }
    blocks.add(single, false);
    if (section.blocks.empty()) {
        section.blocks.emplace_back(Statement{"No photograph stands in this report."});
    }
    return section;
}

} // namespace headcap::core::report
