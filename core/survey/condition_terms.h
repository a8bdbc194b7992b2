// The words for the condition of a book, by component, each with a definition of the house. Data
// in resources/condition_terms.json.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/survey/finding.h"

namespace headcap::core {

struct ConditionTerm {
    std::string key; // "detached"
    std::string name;
    std::string definition;
    std::string aat;                   // Getty AAT identifier, where there is one
    std::vector<std::string> hazards;  // that it suggests, by key
    Handling handling = Handling::yes; // what it usually allows
};

struct ConditionComponent {
    std::string key; // "boards"
    std::string name;
    std::vector<ConditionTerm> terms;
};

// In the order of a survey.
[[nodiscard]] const std::vector<ConditionComponent>& conditionComponents();
[[nodiscard]] const ConditionComponent* conditionComponent(std::string_view key);
[[nodiscard]] const ConditionTerm* conditionTerm(std::string_view component, std::string_view term);

// Names as people read them, or the workshop's own words as they stand.
[[nodiscard]] std::string componentName(std::string_view component);
[[nodiscard]] std::string termName(std::string_view component, std::string_view term);

} // namespace headcap::core
