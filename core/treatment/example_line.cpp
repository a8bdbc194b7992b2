#include "core/treatment/example_line.h"

#include <algorithm>

#include "core/treatment/approval.h"
#include "core/treatment/known_places.h"
#include "core/treatment/line_completion.h"
#include "core/treatment/line_words.h"
#include "core/values/spoken_time.h"

namespace headcap::core {
namespace {

constexpr Minutes kSomeTime{20};

bool isSaidIn(const std::string& text, const std::string& words) {
    const auto said = line::wordsOf(words);
    const line::Words all = line::split(text);
    for (std::size_t at = 0; at < all.size(); ++at) {
        if (line::stands(all, at, said)) {
            return true;
        }
    }
    return false;
}

// A little of it, as it is counted; nothing where there is no such little.
std::string littleOf(Unit unit) {
    switch (unit) {
    case Unit::gram:
        return "0.4 g";
    case Unit::sheet:
        return "0.5 sheets";
    case Unit::metre:
        return "1 m";
    case Unit::millilitre:
        return "5 ml";
    default:
        return {};
    }
}

bool hasSome(const Lot& lot, const Shelf& shelf) {
    const auto left = shelf.balanceOf(lot.id);
    return !lot.finished && shelf.material(lot.material) != nullptr && left && left->count > 0;
}

// One that the line's materials name, by its number or by its kind; the newest of them.
const Lot* lotFor(const std::string& materials, const Shelf& shelf) {
    const Lot* found = nullptr;
    bool isNumbered = false;
    for (const Lot& lot : shelf.lots) {
        if (!hasSome(lot, shelf)) {
            continue;
        }
        const bool byNumber = isSaidIn(materials, lot.number);
        const bool byKind = isSaidIn(materials, shelf.material(lot.material)->name);
        const bool isBetter = found == nullptr || byNumber > isNumbered ||
                              (byNumber == isNumbered && lot.number > found->number);
        if ((byNumber || byKind) && isBetter) {
            found = &lot;
            isNumbered = byNumber;
        }
    }
    return found;
}

std::string withLot(const Lot& lot, const Shelf& shelf) {
    const Material& kind = *shelf.material(lot.material);
    const auto names = line::wordsOf(kind.name);
    const std::string little = littleOf(kind.unit);
    return " with " + (names.empty() ? std::string{} : names.back() + " ") + lot.number +
           (little.empty() ? "" : " " + little);
}

} // namespace

std::string exampleLine(const JobFile& file, const Shelf& shelf) {
    auto lines = openLines(file);
    const auto approved = approvedLines(file);
    lines.insert(lines.end(), approved.begin(), approved.end());
    for (const ProposalLine* line : lines) {
        const Technique* technique = file.techniques.named(line->technique);
        if (technique == nullptr) {
            continue;
        }
        std::string materials = line->materials;
        for (const std::string& usual : technique->materials) {
            materials += ", " + usual;
        }
        const auto listed = placesListed(line->place);
        const std::string& place = listed.empty() ? line->place : listed.front();
        const Lot* lot = lotFor(materials, shelf);
        return asOneSays(*technique) + (place.empty() ? "" : " " + place) +
               (lot == nullptr ? "" : withLot(*lot, shelf)) +
               (technique->key == "pressing" ? " took " : " ") +
               toText(line->minutes > Minutes{0} ? line->minutes : kSomeTime);
    }
    return "cleaned upper board " + toText(kSomeTime);
}

} // namespace headcap::core
