#include "core/treatment/techniques.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/vocabulary/vocabulary_file.h"

namespace headcap::core {
namespace {

Technique read(const nlohmann::json& entry) {
    using namespace vocabulary;
    Technique t;
    t.key = text(entry, "key");
    t.name = text(entry, "name");
    t.kind = named<StepKind>(EnumNames<StepKind>::kNames, text(entry, "kind"));
    t.said = texts(entry, "said");
    t.named = texts(entry, "named");
    t.doneTo = text(entry, "done_to");
    t.materials = texts(entry, "materials");
    t.minutes = Minutes{numberOr(entry, "minutes")};
    t.minutesBasis = textOr(entry, "minutes_basis");
    t.sets = Minutes{numberOr(entry, "sets_minutes")};
    t.reversibility =
        named<Reversibility>(EnumNames<Reversibility>::kNames, text(entry, "reversibility"));
    t.undoing = text(entry, "undoing");
    t.adds = flag(entry, "adds");
    t.wets = flag(entry, "wets");
    t.testsMedia = flag(entry, "tests_media");
    t.disbinds = flag(entry, "disbinds");
    t.checks = texts(entry, "checks");
    t.cautions = texts(entry, "cautions");
    t.before = texts(entry, "before");
    t.advice = textOr(entry, "advice");
    t.aat = textOr(entry, "aat");
    t.sources = texts(entry, "sources");
    std::ranges::stable_sort(t.said, std::ranges::greater{}, &std::string::size);
    std::ranges::stable_sort(t.named, std::ranges::greater{}, &std::string::size);
    return t;
}

std::vector<Technique> readAll() {
    std::vector<Technique> all;
    const auto file = vocabulary::file("techniques.json");
    for (const auto& entry : vocabulary::member(file, "techniques")) {
        all.push_back(read(entry));
    }
    return all;
}

} // namespace

const std::vector<Technique>& techniques() {
    static const std::vector<Technique> kAll = readAll();
    return kAll;
}

} // namespace headcap::core
