#include "core/treatment/line_substances.h"

#include <algorithm>
#include <array>

#include "core/materials/substances.h"
#include "core/treatment/line_amounts.h"

namespace headcap::core::line {
namespace {

// "old EVA", "residues of EVA", "EVA came off": what was there before.
constexpr auto kOldBefore = std::to_array<std::string_view>(
    {"old", "of", "off", "from", "removed", "lifted", "residues", "residue", "no", "without"});
constexpr auto kOldAfter = std::to_array<std::string_view>(
    {"residue", "residues", "remains", "stain", "stains", "removed", "off", "came", "comes"});

bool isNumber(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789.,-–") == std::string_view::npos;
}

// "1%", "5gsm": a number with its sign or its weight in one word.
bool isStrengthOrWeight(std::string_view lower) {
    for (const std::string_view unit : {"%", "gsm", "g/m2", "g/m²"}) {
        if (lower.ends_with(unit)) {
            const std::string_view number = lower.substr(0, lower.size() - unit.size());
            return number.empty() || isNumber(number);
        }
    }
    return false;
}

// How many words before `at`, or from `at` on, say how strong or how heavy it is.
std::size_t strengthBefore(const Words& words, std::size_t at) {
    if (at == 0 || words[at - 1].taken || !isStrengthOrWeight(words[at - 1].lower)) {
        return 0;
    }
    if (isNumber(words[at - 1].lower.substr(0, 1))) {
        return 1;
    }
    const bool isNumberApart = at > 1 && !words[at - 2].taken && isNumber(words[at - 2].lower);
    return isNumberApart ? 2 : 0;
}

std::size_t strengthFrom(const Words& words, std::size_t at) {
    if (isFree(words, at) && isStrengthOrWeight(words[at].lower) &&
        isNumber(words[at].lower.substr(0, 1))) {
        return 1;
    }
    return isFree(words, at) && isFree(words, at + 1) && isNumber(words[at].lower) &&
                   isStrengthOrWeight(words[at + 1].lower) &&
                   !isNumber(words[at + 1].lower.substr(0, 1))
               ? 2
               : 0;
}

bool isOld(const Words& words, std::size_t from, std::size_t to) {
    const bool before =
        from > 0 && !words[from - 1].taken && isOneOf(kOldBefore, words[from - 1].lower);
    const bool after = to < words.size() && !words[to].taken && isOneOf(kOldAfter, words[to].lower);
    return before || after;
}

// Of the vocabulary, by its name where the workshop did not take it from there.
std::string keyOf(const Material& kind) {
    const auto named = kind.kindKey.empty() ? substanceAsMaterial(kind.name) : std::nullopt;
    return named ? named->kindKey : kind.kindKey;
}

// Whether the words at `at` name a lot that the substance is another name of: "Klucel" of one of
// hydroxypropylcellulose.
bool isNameOfLotAt(const Words& words, std::size_t at, std::string_view said, const Shelf& shelf,
                   const std::vector<LineUse>& uses) {
    if (at >= words.size() || words[at].part != LinePart::material) {
        return false;
    }
    const LineUse& use = uses[words[at].group];
    const Material* kind = use.lot ? shelf.materialOf(*use.lot) : nullptr;
    const auto named = substanceAsMaterial(said);
    return kind != nullptr && named &&
           (keyOf(*kind) == named->kindKey ||
            (kind->kind == named->kind && kind->kind != MaterialClass::adhesivePrepared));
}

// What is taken off, looked at or spilt is named too; there it must be said to be used.
bool isSaidToBeUsed(const Words& words, std::size_t from) {
    constexpr auto kUsing = std::to_array<std::string_view>({"with", "w/", "using", "in"});
    return from > 0 && !words[from - 1].taken && isOneOf(kUsing, words[from - 1].lower);
}

} // namespace

void takeSubstances(Words& words, StepKind kind, const Shelf& shelf, std::vector<LineUse>& uses) {
    std::vector<std::string> lower;
    for (const Word& word : words) {
        lower.push_back(word.taken ? std::string{} : word.lower);
    }
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::size_t length = words[at].taken ? 0 : substanceAt(lower, at, words[at].text);
        if (length == 0) {
            continue;
        }
        const std::size_t from = at - strengthBefore(words, at);
        const std::size_t end =
            at + length + (from == at ? strengthFrom(words, at + length) : std::size_t{0});
        at = end - 1;
        std::string said;
        for (std::size_t i = from; i < end; ++i) {
            said += (i == from ? "" : " ") + std::string{words[i].text};
        }
        const std::size_t before = from > 0 ? from - 1 : words.size();
        for (const std::size_t beside : {end, before}) {
            if (!words[from].taken && isNameOfLotAt(words, beside, said, shelf, uses)) {
                take(words, from, end, LinePart::material, words[beside].group);
            }
        }
        if (words[from].taken || isOld(words, from, end) ||
            (kind != StepKind::treatment && !isSaidToBeUsed(words, from))) {
            continue;
        }
        const AmountBeside beside = amountBeside(words, from, end);
        take(words, beside.begin, beside.end, LinePart::material, uses.size());
        takeLeads(words, beside.begin, {"with", "w/", "using", "in"});
        at = beside.end - 1;
        uses.push_back({.material = std::move(said), .amount = beside.amount});
    }
}

} // namespace headcap::core::line
