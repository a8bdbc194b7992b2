#include "core/materials/substances.h"

#include <algorithm>
#include <array>

#include "core/materials/material_kinds.h"
#include "core/values/id.h"
#include "core/values/small_letters.h"

namespace headcap::core {
namespace {

// Words in use at the bench, from memory; the kind is one of resources/material_kinds.json, empty
// where that has none.
struct Substance {
    std::string_view said;
    std::string_view kind;
};
constexpr auto kSubstances = std::to_array<Substance>({
    {"acetone", ""},
    {"ammonia", ""},
    {"ammonium citrate", ""},
    {"animal glue", "adhesive_prepared/animal_glue"},
    {"borohydride", ""},
    {"calcium carbonate", ""},
    {"calcium hydroxide", "solvent/calcium_hydroxide"},
    {"calcium phytate", ""},
    {"chloramine", ""},
    {"chloramine t", ""},
    {"edta", ""},
    {"ethanol", "solvent/ethanol"},
    {"ethyl acetate", ""},
    {"eva", "adhesive_prepared/pva"},
    {"funori", "adhesive_prepared/funori"},
    {"gampi", "tissue/kozo"},
    {"gelatin", "adhesive_prepared/gelatine"},
    {"gelatine", "adhesive_prepared/gelatine"},
    {"hydrogen peroxide", ""},
    {"hpc", "consolidant/hpc"},
    {"hydroxypropylcellulose", "consolidant/hpc"},
    {"isinglass", "adhesive_prepared/isinglass"},
    {"isopropanol", "solvent/isopropanol"},
    {"klucel", "consolidant/hpc"},
    {"kozo", "tissue/kozo"},
    {"kozo tissue", "tissue/kozo"},
    {"limewater", "solvent/calcium_hydroxide"},
    {"magnesium bicarbonate", ""},
    {"magnesium oxide", ""},
    {"methyl cellulose", "adhesive_prepared/methylcellulose"},
    {"methylcellulose", "adhesive_prepared/methylcellulose"},
    {"paraloid", ""},
    {"peroxide", ""},
    {"polyvinyl acetate", "adhesive_prepared/pva"},
    {"pva", "adhesive_prepared/pva"},
    {"pvac", "adhesive_prepared/pva"},
    {"potassium permanganate", ""},
    {"sodium borohydride", ""},
    {"sodium hypochlorite", ""},
    {"tengujo", "tissue/tengujo"},
    {"toluene", ""},
    {"wheat paste", "adhesive_prepared/wheat_paste"},
    {"wheat starch paste", "adhesive_prepared/wheat_paste"},
    {"white spirit", ""},
    {"wsp", "adhesive_prepared/wheat_paste"},
});

constexpr auto kElements = std::to_array<std::string_view>(
    {"Al", "Ag", "As", "Ba", "Br", "B", "Ca", "Cl", "Cr", "Cu", "C", "Fe", "F",  "H", "Hg",
     "I",  "K",  "Mg", "Mn", "Na", "N", "O",  "Pb", "P",  "Si", "S", "Sn", "Ti", "Zn"});

std::vector<std::string> wordsIn(std::string_view text) {
    std::vector<std::string> words{{}};
    for (const char c : text) {
        if (c == ' ' || c == ',') {
            words.emplace_back();
        } else {
            words.back() += smallLetter(c);
        }
    }
    std::erase(words, std::string{});
    return words;
}

std::size_t lengthAt(const std::vector<std::string>& lower, std::size_t at,
                     std::string_view phrase) {
    const auto said = wordsIn(phrase);
    const bool fits =
        at + said.size() <= lower.size() &&
        std::equal(said.begin(), said.end(), lower.begin() + static_cast<std::ptrdiff_t>(at));
    return fits ? said.size() : 0;
}

} // namespace

bool isFormula(std::string_view word) {
    std::vector<std::string_view> elements;
    bool hasFigure = false;
    while (!word.empty()) {
        const char c = word.front();
        if (c == '(' || c == ')' || (c >= '0' && c <= '9')) {
            if (elements.empty()) {
                return false;
            }
            hasFigure = hasFigure || (c >= '0' && c <= '9');
            word.remove_prefix(1);
            continue;
        }
        const auto found = std::ranges::max_element(kElements, {}, [&](std::string_view one) {
            return word.starts_with(one) ? one.size() : 0;
        });
        if (!word.starts_with(*found)) {
            return false;
        }
        if (std::ranges::find(elements, *found) == elements.end()) {
            elements.push_back(*found);
        }
        word.remove_prefix(found->size());
    }
    return hasFigure && elements.size() > 1;
}

std::size_t substanceAt(const std::vector<std::string>& lower, std::size_t at,
                        std::string_view asTyped) {
    std::size_t longest = isFormula(asTyped) ? 1 : 0;
    for (const Substance& one : kSubstances) {
        longest = std::max(longest, lengthAt(lower, at, one.said));
    }
    return longest;
}

std::optional<Material> substanceAsMaterial(std::string_view words) {
    const auto lower = wordsIn(words);
    for (std::size_t at = 0; at < lower.size(); ++at) {
        for (const Substance& one : kSubstances) {
            const MaterialKind* kind =
                lengthAt(lower, at, one.said) > 0 ? materialKindNamed(one.kind) : nullptr;
            if (kind != nullptr) {
                // Of no workshop: its key is never kept.
                return materialFrom(
                    *kind, Id<Material>{*Uuid::fromText("00000000-0000-7000-8000-000000000000")});
            }
        }
    }
    return std::nullopt;
}

} // namespace headcap::core
