// What rules ask of a technique besides what a workshop alters in it: kept with the techniques in
// resources/techniques.json, so that a further technique is one entry there.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace headcap::core {

struct TechniqueFacts {
    std::string key;
    // What its usual sentence of how it is undone speaks of, where the same work is done with other
    // things too: any one of these. A guard is what guarding puts in; there the material is asked
    // for instead.
    std::vector<std::string> takesForGranted{};
    std::string liquid{};      // it brings to the leaves, where no other is named; empty: none
    bool mendsPaper = false;   // what it puts in is to be lighter than the leaf
    bool followsSpine = false; // what it puts in lies along the spine or folds there
    std::vector<std::string> answers{}; // components of a survey that it makes good
};

// In the order of the vocabulary.
[[nodiscard]] const std::vector<TechniqueFacts>& techniqueFacts();
// A workshop's further technique has none.
[[nodiscard]] const TechniqueFacts& factsOf(std::string_view technique);

} // namespace headcap::core
