#include "core/audit/test_liquids.h"

#include <algorithm>
#include <array>

#include "core/audit/same_leaves.h"
#include "core/collation/leaf_ref.h"
#include "core/treatment/technique_facts.h"
#include "core/values/fold.h"

namespace headcap::core {
namespace {

constexpr std::string_view kWater = "water";
constexpr std::string_view kAlkaline = "alkaline solution";
constexpr std::string_view kBleach = "bleach";

struct LiquidWord {
    std::string_view word; // folded
    std::string_view liquid;
};
constexpr auto kWords = std::to_array<LiquidWord>({{"water", kWater},
                                                   {"moist", kWater},
                                                   {"damp", kWater},
                                                   {"wet ", kWater},
                                                   {"paste", kWater},
                                                   {"methylcellulose", kWater},
                                                   {"gelatine", kWater},
                                                   {"isinglass", kWater},
                                                   {"funori", kWater},
                                                   {"calcium hydroxide", kAlkaline},
                                                   {"ca(oh)2", kAlkaline},
                                                   {"limewater", kAlkaline},
                                                   {"bicarbonate", kAlkaline},
                                                   {"alkali", kAlkaline},
                                                   {"deacidif", kAlkaline},
                                                   {"ammonia", kAlkaline},
                                                   {"ethanol", "alcohol"},
                                                   {"alcohol", "alcohol"},
                                                   {"isopropanol", "alcohol"},
                                                   {"acetone", "acetone"},
                                                   {"ethyl acetate", "ethyl acetate"},
                                                   {"toluene", "toluene"},
                                                   {"white spirit", "white spirit"},
                                                   {"peroxide", "peroxide"},
                                                   {"h2o2", "peroxide"},
                                                   {"borohydride", "borohydride"},
                                                   {"hypochlorite", "hypochlorite"},
                                                   {"chloramine", "chloramine"},
                                                   {"permanganate", "permanganate"},
                                                   {"bleach", kBleach}});

// Any of them is a bleach; "bleach" by itself does not say which.
constexpr auto kBleaches = std::to_array<std::string_view>(
    {"peroxide", "borohydride", "hypochlorite", "chloramine", "permanganate"});

bool isBleach(std::string_view liquid) {
    return std::ranges::find(kBleaches, liquid) != kBleaches.end();
}

void add(std::vector<std::string>& liquids, std::string_view liquid) {
    if (std::ranges::find(liquids, liquid) == liquids.end()) {
        liquids.emplace_back(liquid);
    }
}

// "no water": said not to be there.
bool isDenied(std::string_view text, std::size_t at) {
    for (const std::string_view no : {"no ", "without "}) {
        if (at >= no.size() && text.substr(at - no.size(), no.size()) == no) {
            return true;
        }
    }
    return false;
}

} // namespace

std::vector<std::string> liquidsIn(std::string_view words) {
    const std::string folded = foldForSearch(words);
    std::vector<std::string> liquids;
    for (const LiquidWord& one : kWords) {
        const std::size_t at = folded.find(one.word);
        if (at != std::string::npos && !isDenied(folded, at)) {
            add(liquids, one.liquid);
        }
    }
    // An alkaline solution is water too, and what is tested for it is the solution.
    if (std::ranges::find(liquids, kAlkaline) != liquids.end()) {
        std::erase(liquids, std::string{kWater});
    }
    if (std::ranges::any_of(liquids, isBleach)) {
        std::erase(liquids, std::string{kBleach});
    }
    return liquids;
}

std::vector<std::string> liquidsOf(const JobFile& file, const Step& step) {
    std::string words = step.description;
    for (const MaterialUse* use : file.usesOf(step)) {
        const Lot* lot = file.lot(use->lot);
        const Material* kind = lot == nullptr ? nullptr : file.material(lot->material);
        const bool isLiquid = kind == nullptr || kind->kind == MaterialClass::solvent;
        words += isLiquid ? ' ' + use->material + ' ' + (kind == nullptr ? "" : kind->name) : "";
    }
    auto liquids = liquidsIn(words);
    // What is made alkaline is brought into the solution, whatever water is spoken of beside it.
    const std::string& usual = factsOf(step.technique).liquid;
    if (!usual.empty() && usual != kWater) {
        std::erase(liquids, std::string{kWater});
    }
    if (!usual.empty() && liquids.empty()) {
        add(liquids, usual);
    }
    return liquids;
}

bool isTestedWith(const Test& test, const std::string& liquid) {
    const auto liquids = liquidsIn(test.purpose + ". " + test.method + ". " + test.result);
    return liquids.empty() || std::ranges::find(liquids, liquid) != liquids.end() ||
           (liquid == kWater && std::ranges::find(liquids, kAlkaline) != liquids.end()) ||
           (liquid == kBleach && std::ranges::any_of(liquids, isBleach));
}

bool isTestedThere(const Test& test, const Step& step) {
    if (!parseLeafSet(step.place) && step.place.find(',') == std::string::npos) {
        return true;
    }
    bool namesLeaves = false;
    for (std::size_t from = 0; from <= test.place.size();) {
        const std::size_t to = std::min(test.place.find(',', from), test.place.size());
        const std::string piece = test.place.substr(from, to - from);
        if (parseLeafSet(piece)) {
            namesLeaves = true;
            if (mayShareLeaves(piece, step.place)) {
                return true;
            }
        }
        from = to + 1;
    }
    return !namesLeaves;
}

} // namespace headcap::core
