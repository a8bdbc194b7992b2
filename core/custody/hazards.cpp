#include "core/custody/hazards.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/values/fold.h"
#include "core/vocabulary/vocabulary_file.h"

namespace headcap::core {
namespace {

std::vector<HazardKind> readAll() {
    using namespace vocabulary;
    std::vector<HazardKind> all;
    const auto json = file("hazards.json");
    for (const auto& entry : member(json, "hazards")) {
        all.push_back({.key = text(entry, "key"),
                       .name = text(entry, "name"),
                       .where = text(entry, "where"),
                       .likely = texts(entry, "likely"),
                       .words = texts(entry, "words"),
                       .confirmedBy = text(entry, "confirmed_by"),
                       .caution = text(entry, "caution"),
                       .report = text(entry, "report"),
                       .sources = texts(entry, "sources")});
    }
    return all;
}

bool isSuggested(const HazardKind& kind, const JobFile& file) {
    const bool found = std::ranges::any_of(file.findings, [&](const Finding& finding) {
        return std::ranges::find(kind.likely, finding.component + "/" + finding.term) !=
               kind.likely.end();
    });
    const std::string binding = foldForSearch(file.item.binding);
    return found || std::ranges::any_of(kind.words, [&](const std::string& words) {
               return binding.find(words) != std::string::npos;
           });
}

} // namespace

const std::vector<HazardKind>& hazardKinds() {
    static const std::vector<HazardKind> kAll = readAll();
    return kAll;
}

const HazardKind* hazardNamed(std::string_view key) {
    const auto& all = hazardKinds();
    const auto found = std::ranges::find(all, key, &HazardKind::key);
    return found == all.end() ? nullptr : &*found;
}

std::string hazardName(std::string_view keyOrWord) {
    const HazardKind* known = hazardNamed(keyOrWord);
    return known ? known->name : std::string{keyOrWord};
}

std::string_view wordsFor(HazardState state) {
    switch (state) {
    case HazardState::notTested:
        return "not tested";
    case HazardState::suspected:
        return "suspected";
    case HazardState::confirmed:
        return "confirmed";
    case HazardState::cleared:
        break;
    }
    return "cleared";
}

std::vector<const HazardKind*> likelyHazards(const JobFile& file) {
    std::vector<const HazardKind*> likely;
    for (const HazardKind& kind : hazardKinds()) {
        const bool noted =
            std::ranges::find(file.hazards, kind.key, &Hazard::term) != file.hazards.end();
        if (!noted && isSuggested(kind, file)) {
            likely.push_back(&kind);
        }
    }
    return likely;
}

} // namespace headcap::core
