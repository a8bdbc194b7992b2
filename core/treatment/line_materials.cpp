#include "core/treatment/line_materials.h"

#include <algorithm>
#include <array>

#include "core/materials/conversion.h"
#include "core/treatment/line_amounts.h"
#include "core/treatment/line_label.h"

namespace headcap::core::line {
namespace {

bool looksLikeLot(std::string_view word) {
    const std::size_t dash = word.find('-');
    const auto digits = [](std::string_view part) {
        return !part.empty() &&
               std::ranges::all_of(part, [](char c) { return c >= '0' && c <= '9'; });
    };
    return dash == 2 && word.size() >= 6 && digits(word.substr(0, dash)) &&
           digits(word.substr(dash + 1));
}

// The words that name a lot's kind or product.
std::vector<std::string> namesOf(const Lot& lot, const Shelf& shelf) {
    const Material* kind = shelf.material(lot.material);
    auto names = wordsOf((kind ? kind->name : std::string{}) + " " + lot.product + " " + lot.maker);
    names.emplace_back("lot");
    names.emplace_back("batch");
    return names;
}

bool isAnyOf(const std::vector<std::string>& names, const Word& word) {
    return !word.lower.empty() && std::ranges::find(names, word.lower) != names.end();
}

// Pieces that were cut for this job left their lot with the cutting: they are named in words, and
// the ledger is not asked again.
void takeCutPieces(LineUse& use, const Lot& lot, const Material* kind, const LineContext& context) {
    const bool isOfPieces = use.amount && use.amount->unit == Unit::piece && kind != nullptr &&
                            kind->unit != Unit::piece;
    const bool isCut =
        std::ranges::find(context.cut, lot.number, &CutForJob::lot) != context.cut.end();
    if (isOfPieces && isCut) {
        use.material = cutPiecesText(*use.amount);
        use.amount.reset();
    }
}

// A lot's own words around it, and the amount on the one side or the other.
void takeLot(Words& words, std::size_t at, const Lot& lot, const LineContext& context,
             std::vector<LineUse>& uses) {
    const Shelf& shelf = context.shelf;
    LineUse use{.lot = lot.id};
    const auto names = namesOf(lot, shelf);
    std::size_t begin = at;
    std::size_t end = at + 1;
    while (begin > 0 && isFree(words, begin - 1) && isAnyOf(names, words[begin - 1])) {
        --begin;
    }
    while (isFree(words, end) && isAnyOf(names, words[end])) {
        ++end;
    }
    const Material* kind = shelf.material(lot.material);
    const bool of = begin > 0 && isFree(words, begin - 1) && words[begin - 1].lower == "of";
    const auto before = amountBefore(words, of ? begin - 1 : begin);
    auto after = amountAt(words, end);
    after = after ? after : areaAt(words, end);
    after = after || before || kind == nullptr ? after : countAt(words, end, kind->unit);
    const auto fits = [&](const auto& amount) {
        return amount && kind != nullptr && asCounted(amount->amount, lot, *kind).has_value();
    };
    const bool afterFits = fits(after);
    const bool beforeFits = fits(before);
    if (before && (beforeFits || !afterFits)) {
        use.amount = before->amount;
        begin = before->begin;
    } else if (after) {
        use.amount = after->amount;
        end = after->end;
    }
    takeCutPieces(use, lot, kind, context);
    take(words, begin, end, LinePart::material, uses.size());
    takeLeads(words, begin, {"with", "w/", "using", "from", "on"});
    uses.push_back(std::move(use));
}

void takeLots(Words& words, const LineContext& context, std::vector<LineUse>& uses) {
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::string_view number = numberOnLabel(words[at].text);
        if (words[at].taken || number.empty()) {
            continue;
        }
        if (const Lot* lot = context.shelf.numbered(number)) {
            takeLot(words, at, *lot, context, uses);
        } else if (looksLikeLot(number)) {
            take(words, at, at + 1, LinePart::unknownLot);
        }
    }
}

// The longest name of a material that stands here: all of it, or from one of its words on
// ("paste" of "wheat starch paste").
std::size_t materialAt(const Words& words, std::size_t at, const Shelf& shelf) {
    std::size_t longest = 0;
    for (const Material& material : shelf.materials) {
        auto said = wordsOf(material.name);
        while (!said.empty()) {
            if (said.size() > longest && stands(words, at, said)) {
                longest = said.size();
            }
            said.erase(said.begin());
        }
    }
    return longest;
}

// A material without a lot: named beside an amount, or after "with".
void takeNamed(Words& words, const Shelf& shelf, std::vector<LineUse>& uses) {
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::size_t length = materialAt(words, at, shelf);
        if (length == 0) {
            continue;
        }
        const AmountBeside beside = amountBeside(words, at, at + length);
        const bool with =
            beside.begin > 0 && isFree(words, beside.begin - 1) &&
            (words[beside.begin - 1].lower == "with" || words[beside.begin - 1].lower == "using");
        if (!beside.amount && !with) {
            continue;
        }
        LineUse use{.amount = beside.amount};
        for (std::size_t i = at; i < at + length; ++i) {
            use.material += (i == at ? "" : " ") + std::string{words[i].text};
        }
        take(words, beside.begin, beside.end, LinePart::material, uses.size());
        takeLeads(words, beside.begin, {"with", "w/", "using"});
        uses.push_back(std::move(use));
        at = beside.end - 1;
    }
}

// Of the lots named: the one of which there can be so much.
std::optional<Id<Lot>> onlyLotCountedIn(const Amount& amount, const Shelf& shelf,
                                        const std::vector<LineUse>& uses) {
    std::optional<Id<Lot>> only;
    for (const LineUse& use : uses) {
        const Lot* lot = use.lot ? shelf.lot(*use.lot) : nullptr;
        const Material* kind = lot == nullptr ? nullptr : shelf.material(lot->material);
        if (kind == nullptr || !asCounted(amount, *lot, *kind)) {
            continue;
        }
        if (only && *only != lot->id) {
            return std::nullopt;
        }
        only = lot->id;
    }
    return only;
}

} // namespace

std::vector<LineUse> takeMaterials(Words& words, const LineContext& context) {
    std::vector<LineUse> uses;
    takeLots(words, context, uses);
    takeNamed(words, context.shelf, uses);
    return uses;
}

void takeWasted(Words& words, StepKind kind, const Shelf& shelf, std::vector<LineUse>& uses) {
    const bool hasTechnique =
        std::ranges::find(words, LinePart::technique, &Word::part) != words.end();
    constexpr auto kWasted = std::to_array<std::string_view>({"wasted", "spilt", "spoilt"});
    for (std::size_t at = 1; at < words.size(); ++at) {
        const bool isWasted = isOneOf(kWasted, words[at].lower) ||
                              (kind != StepKind::removal && stands(words, at, {"thrown", "away"}));
        if (!isWasted || words[at].taken) {
            continue;
        }
        if (words[at - 1].part == LinePart::material) {
            uses[words[at - 1].group].isWasted = true;
        } else if (const auto amount = amountBefore(words, at)) {
            if (const auto lot = onlyLotCountedIn(amount->amount, shelf, uses)) {
                take(words, amount->begin, amount->end, LinePart::material, uses.size());
                uses.push_back({.lot = lot, .amount = amount->amount, .isWasted = true});
            }
        }
        // Where the line says nothing else that was done, the word is what was.
        if (hasTechnique && words[at - 1].part == LinePart::material) {
            const std::size_t length = words[at].lower == "thrown" ? 2 : 1;
            take(words, at, at + length, LinePart::material, words[at - 1].group);
        }
    }
}

} // namespace headcap::core::line
