#include "core/treatment/technique_facts.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/vocabulary/vocabulary_file.h"

namespace headcap::core {
namespace {

std::vector<TechniqueFacts> readAll() {
    using namespace vocabulary;
    std::vector<TechniqueFacts> all;
    const auto techniques = file("techniques.json");
    for (const auto& entry : member(techniques, "techniques")) {
        all.push_back({.key = text(entry, "key"),
                       .takesForGranted = texts(entry, "takes_for_granted"),
                       .liquid = textOr(entry, "liquid"),
                       .mendsPaper = flag(entry, "mends_paper"),
                       .followsSpine = flag(entry, "follows_spine"),
                       .answers = texts(entry, "answers")});
    }
    return all;
}

} // namespace

const std::vector<TechniqueFacts>& techniqueFacts() {
    static const std::vector<TechniqueFacts> kAll = readAll();
    return kAll;
}

const TechniqueFacts& factsOf(std::string_view technique) {
    static const TechniqueFacts kNone{};
    const auto found = std::ranges::find(techniqueFacts(), technique, &TechniqueFacts::key);
    return found == techniqueFacts().end() ? kNone : *found;
}

} // namespace headcap::core
