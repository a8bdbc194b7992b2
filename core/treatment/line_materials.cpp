#include "core/treatment/line_materials.h"

#include <algorithm>

#include "core/materials/conversion.h"

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
    return !word.empty() && word.front() >= '0' && word.front() <= '9';
}

// "0.4 g", "0.4g", "1 1/2 sheets", read from these words on.
std::optional<AmountAt> amountAt(const Words& words, std::size_t at) {
    if (!free(words, at) || !startsNumber(words[at].text)) {
        return std::nullopt;
    }
    std::string text;
    std::optional<AmountAt> found;
    for (std::size_t end = at; end < at + 3 && free(words, end); ++end) {
        text += (text.empty() ? "" : " ") + std::string{words[end].text};
        if (const auto amount = parseAmount(text)) {
            found = AmountAt{*amount, at, end + 1};
        }
    }
    return found;
}

// The amount whose last word stands just before `at`.
std::optional<AmountAt> amountBefore(const Words& words, std::size_t at) {
    std::optional<AmountAt> longest;
    for (std::size_t length = 1; length <= 3 && length <= at; ++length) {
        const auto read = amountAt(words, at - length);
        if (read && read->end == at) {
            longest = read;
        }
    }
    return longest;
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

// A lot's own words around it, and the amount on the one side or the other.
void takeLot(Words& words, std::size_t at, const Lot& lot, const Shelf& shelf,
             std::vector<LineUse>& uses) {
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
    const bool of = begin > 0 && free(words, begin - 1) && words[begin - 1].lower == "of";
    const auto before = amountBefore(words, of ? begin - 1 : begin);
    const auto after = amountAt(words, end);
    const Material* kind = shelf.material(lot.material);
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
    take(words, begin, end, LinePart::material, uses.size());
    takeLeads(words, begin, {"with", "using", "from", "on"});
    uses.push_back(std::move(use));
}

void takeLots(Words& words, const Shelf& shelf, std::vector<LineUse>& uses) {
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::string_view number = numberOnLabel(words[at].text);
        if (words[at].taken || number.empty()) {
            continue;
        }
        if (const Lot* lot = shelf.numbered(number)) {
            takeLot(words, at, *lot, shelf, uses);
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
        const std::size_t end = at + length;
        const bool of = at > 0 && free(words, at - 1) && words[at - 1].lower == "of";
        const auto before = amountBefore(words, of ? at - 1 : at);
        const auto after = before ? std::nullopt : amountAt(words, end);
        const std::size_t begin = before ? before->begin : at;
        const bool with = begin > 0 && free(words, begin - 1) &&
                          (words[begin - 1].lower == "with" || words[begin - 1].lower == "using");
        if (!before && !after && !with) {
            continue;
        }
        LineUse use;
        for (std::size_t i = at; i < end; ++i) {
            use.material += (i == at ? "" : " ") + std::string{words[i].text};
        }
        if (before || after) {
            use.amount = before ? before->amount : after->amount;
        }
        take(words, begin, after ? after->end : end, LinePart::material, uses.size());
        takeLeads(words, begin, {"with", "using"});
        uses.push_back(std::move(use));
        at = end - 1;
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

std::vector<LineUse> takeMaterials(Words& words, const Shelf& shelf) {
    std::vector<LineUse> uses;
    takeLots(words, shelf, uses);
    takeNamed(words, shelf, uses);
    return uses;
}

} // namespace headcap::core::line
