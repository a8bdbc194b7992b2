#include "core/treatment/line_materials.h"

#include <algorithm>
#include <array>

#include "core/materials/conversion.h"
#include "core/values/amount_nearly.h"
#include "core/values/measure_text.h"

namespace headcap::core::line {
namespace {

struct AmountAt {
    Amount amount;
    std::size_t begin = 0;
    std::size_t end = 0;
};

bool free(const Words& words, std::size_t at) {
    return at < words.size() && !words[at].taken;
}

bool looksLikeLot(std::string_view word) {
    const std::size_t dash = word.find('-');
    const auto digits = [](std::string_view part) {
        return !part.empty() &&
               std::ranges::all_of(part, [](char c) { return c >= '0' && c <= '9'; });
    };
    return dash == 2 && word.size() >= 6 && digits(word.substr(0, dash)) &&
           digits(word.substr(dash + 1));
}

bool startsNumber(std::string_view word) {
    return !word.empty() &&
           ((word.front() >= '0' && word.front() <= '9') || word.starts_with("½") ||
            word.starts_with("¼") || word.starts_with("¾"));
}

bool isTimes(const Words& words, std::size_t at) {
    return at < words.size() && (words[at].lower == "x" || words[at].lower == "×");
}

// "0.4 g", "0.4g", "1 1/2 sheets", read from these words on; no side of "30 mm x 240 mm".
std::optional<AmountAt> amountAt(const Words& words, std::size_t at) {
    if (!free(words, at) || !startsNumber(words[at].text) || (at > 0 && isTimes(words, at - 1))) {
        return std::nullopt;
    }
    std::string text;
    std::optional<AmountAt> found;
    for (std::size_t end = at; end < at + 3 && free(words, end); ++end) {
        text += (text.empty() ? "" : " ") + std::string{words[end].text};
        if (const auto amount = parseAmountNearly(text)) {
            found = AmountAt{*amount, at, end + 1};
        }
        if (words[end].hasComma) {
            break;
        }
    }
    return found && isTimes(words, found->end) ? std::nullopt : found;
}

// The amount whose last word stands just before `at`, and no comma between.
std::optional<AmountAt> amountBefore(const Words& words, std::size_t at) {
    std::optional<AmountAt> longest;
    if (at > 0 && words[at - 1].hasComma) {
        return longest;
    }
    for (std::size_t length = 1; length <= 3 && length <= at; ++length) {
        const auto read = amountAt(words, at - length);
        if (read && read->end == at) {
            longest = read;
        }
    }
    return longest;
}

// "30 mm x 240 mm", "30 x 240 mm", with "strip" or "piece" before it: the area of what was cut off.
std::optional<AmountAt> areaAt(const Words& words, std::size_t at) {
    constexpr auto kCut = std::to_array<std::string_view>({"strip", "piece", "patch", "of"});
    const std::size_t begin = at;
    while (free(words, at) && isOneOf(kCut, words[at].lower)) {
        ++at;
    }
    std::vector<std::string> sides;
    std::string unit;
    for (int side = 0; side < 2; ++side) {
        if (!free(words, at) || !startsNumber(words[at].text)) {
            return std::nullopt;
        }
        sides.emplace_back(words[at].text);
        const std::size_t letters = sides.back().find_first_not_of("0123456789.,");
        if (letters != std::string::npos) {
            unit = sides.back().substr(letters);
            sides.back().resize(letters);
        } else if (free(words, at + 1) && !isTimes(words, at + 1)) {
            unit = words[++at].lower;
        }
        ++at;
        if (side == 0 && (!free(words, at) || !isTimes(words, at++))) {
            return std::nullopt;
        }
    }
    const auto width = parseLength(sides[0] + ' ' + unit);
    const auto height = parseLength(sides[1] + ' ' + unit);
    if (!width || !height || width->count() <= 0 || height->count() <= 0) {
        return std::nullopt;
    }
    return AmountAt{Amount::of(areaOf(*width, *height)), begin, at};
}

// A bare number beside a lot counted by the sheet or the piece: "25-008 1", "26-015 3/4".
std::optional<AmountAt> countAt(const Words& words, std::size_t at, Unit unit) {
    if ((unit != Unit::sheet && unit != Unit::piece) || !free(words, at)) {
        return std::nullopt;
    }
    const auto amount = parseAmountNearly(std::string{words[at].text} +
                                          (unit == Unit::sheet ? " sheet" : " piece"));
    const char next =
        free(words, at + 1) && !words[at + 1].text.empty() ? words[at + 1].lower.front() : ' ';
    const bool isOfWhatFollows =
        !words[at].hasComma &&
        ((next >= 'a' && next <= 'z') || next == '%' || next == '\'' || isTimes(words, at + 1));
    return amount && !isOfWhatFollows ? std::optional{AmountAt{*amount, at, at + 1}} : std::nullopt;
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
    while (begin > 0 && free(words, begin - 1) && isAnyOf(names, words[begin - 1])) {
        --begin;
    }
    while (free(words, end) && isAnyOf(names, words[end])) {
        ++end;
    }
    const Material* kind = shelf.material(lot.material);
    const bool of = begin > 0 && free(words, begin - 1) && words[begin - 1].lower == "of";
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
    takeLeads(words, begin, {"with", "using", "from", "on"});
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
            beside.begin > 0 && free(words, beside.begin - 1) &&
            (words[beside.begin - 1].lower == "with" || words[beside.begin - 1].lower == "using");
        if (!beside.amount && !with) {
            continue;
        }
        LineUse use{.amount = beside.amount};
        for (std::size_t i = at; i < at + length; ++i) {
            use.material += (i == at ? "" : " ") + std::string{words[i].text};
        }
        take(words, beside.begin, beside.end, LinePart::material, uses.size());
        takeLeads(words, beside.begin, {"with", "using"});
        uses.push_back(std::move(use));
        at = beside.end - 1;
    }
}

} // namespace

std::string_view numberOnLabel(std::string_view word) {
    for (const std::string_view lead : {"#", "lot:", "LOT:", "Lot:"}) {
        if (word.starts_with(lead)) {
            word.remove_prefix(lead.size());
        }
    }
    return word;
}

AmountBeside amountBeside(const Words& words, std::size_t from, std::size_t end) {
    const bool of = from > 0 && free(words, from - 1) && words[from - 1].lower == "of";
    if (const auto before = amountBefore(words, of ? from - 1 : from)) {
        return {before->amount, before->begin, end};
    }
    const bool isParted = end > from && words[end - 1].hasComma;
    const auto after = isParted ? std::nullopt : amountAt(words, end);
    return after ? AmountBeside{after->amount, from, after->end} : AmountBeside{{}, from, end};
}

std::vector<LineUse> takeMaterials(Words& words, const LineContext& context) {
    std::vector<LineUse> uses;
    takeLots(words, context, uses);
    takeNamed(words, context.shelf, uses);
    return uses;
}

} // namespace headcap::core::line
