#include "core/survey/condition_terms.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/vocabulary/vocabulary_file.h"

namespace headcap::core {
namespace {

ConditionTerm readTerm(const nlohmann::json& entry) {
    using namespace vocabulary;
    ConditionTerm term{.key = text(entry, "key"),
                       .name = text(entry, "name"),
                       .definition = text(entry, "definition"),
                       .aat = textOr(entry, "aat"),
                       .hazards = texts(entry, "hazards")};
    if (const std::string handling = textOr(entry, "handling"); !handling.empty()) {
        term.handling = named<Handling>(EnumNames<Handling>::kNames, handling);
    }
    return term;
}

std::vector<ConditionComponent> readAll() {
    using namespace vocabulary;
    std::vector<ConditionComponent> all;
    const auto json = file("condition_terms.json");
    for (const auto& entry : member(json, "components")) {
        ConditionComponent component{text(entry, "key"), text(entry, "name"), {}};
        for (const auto& term : member(entry, "terms")) {
            component.terms.push_back(readTerm(term));
        }
        all.push_back(std::move(component));
    }
    return all;
}

} // namespace

const std::vector<ConditionComponent>& conditionComponents() {
    static const std::vector<ConditionComponent> kAll = readAll();
    return kAll;
}

const ConditionComponent* conditionComponent(std::string_view key) {
    const auto& all = conditionComponents();
    const auto found = std::ranges::find(all, key, &ConditionComponent::key);
    return found == all.end() ? nullptr : &*found;
}

const ConditionTerm* conditionTerm(std::string_view component, std::string_view term) {
    const ConditionComponent* part = conditionComponent(component);
    if (part == nullptr) {
        return nullptr;
    }
    const auto found = std::ranges::find(part->terms, term, &ConditionTerm::key);
    return found == part->terms.end() ? nullptr : &*found;
}

std::string componentName(std::string_view component) {
    const ConditionComponent* known = conditionComponent(component);
    return known ? known->name : std::string{component};
}

std::string termName(std::string_view component, std::string_view term) {
    const ConditionTerm* known = conditionTerm(component, term);
    return known ? known->name : std::string{term};
}

} // namespace headcap::core
