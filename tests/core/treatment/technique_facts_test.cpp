#include "core/treatment/technique_facts.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/audit/test_liquids.h"
#include "core/survey/condition_terms.h"
#include "core/treatment/techniques.h"

namespace headcap::core {
namespace {

TEST(TechniqueFacts, areOfEachTechniqueAndOfNoOther) {
    ASSERT_EQ(techniqueFacts().size(), techniques().size());
    for (const Technique& technique : techniques()) {
        EXPECT_EQ(factsOf(technique.key).key, technique.key);
    }
    EXPECT_TRUE(factsOf("our_own_tipping").answers.empty());
    EXPECT_TRUE(factsOf("our_own_tipping").liquid.empty());
}

// What is taken for granted is what the sentence says: else no use could make it true.
TEST(TechniqueFacts, takeForGrantedWhatTheUsualSentenceSpeaksOf) {
    for (const Technique& technique : techniques()) {
        std::string undoing = technique.undoing;
        std::ranges::transform(undoing, undoing.begin(), [](char c) {
            return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        });
        for (const std::string& thing : factsOf(technique.key).takesForGranted) {
            EXPECT_NE(undoing.find(thing), std::string::npos) << technique.key << ": " << thing;
        }
    }
}

// A liquid is one that the words of a test can name; and what brings one is tested for first.
TEST(TechniqueFacts, liquidsAreThoseOfTests) {
    for (const Technique& technique : techniques()) {
        const std::string& liquid = factsOf(technique.key).liquid;
        if (!liquid.empty()) {
            EXPECT_EQ(liquidsIn(liquid), std::vector<std::string>{liquid}) << technique.key;
            EXPECT_TRUE(technique.testsMedia) << technique.key;
        }
        if (technique.testsMedia && technique.wets) {
            EXPECT_FALSE(liquid.empty()) << technique.key;
        }
    }
}

TEST(TechniqueFacts, answerComponentsOfASurvey) {
    for (const TechniqueFacts& facts : techniqueFacts()) {
        for (const std::string& component : facts.answers) {
            EXPECT_NE(conditionComponent(component), nullptr) << facts.key << ": " << component;
        }
        if (facts.mendsPaper) {
            EXPECT_FALSE(facts.answers.empty()) << facts.key;
        }
    }
}

} // namespace
} // namespace headcap::core
