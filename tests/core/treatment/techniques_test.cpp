#include "core/treatment/techniques.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

bool isWork(const Technique& technique) {
    return technique.kind == StepKind::treatment || technique.kind == StepKind::removal;
}

TEST(Techniques, eachSaysWhatABenchMustKnowOfIt) {
    ASSERT_GE(techniques().size(), 50U);
    std::set<std::string> keys;
    for (const Technique& technique : techniques()) {
        SCOPED_TRACE(technique.key);
        EXPECT_TRUE(keys.insert(technique.key).second);
        EXPECT_FALSE(technique.name.empty());
        EXPECT_FALSE(technique.doneTo.empty());
        EXPECT_FALSE(technique.said.empty());
        EXPECT_FALSE(technique.undoing.empty());
        EXPECT_FALSE(technique.checks.empty());
        EXPECT_FALSE(technique.sources.empty());
        if (technique.kind != StepKind::incident) {
            EXPECT_GT(technique.minutes, Minutes{0});
            EXPECT_FALSE(technique.minutesBasis.empty());
        }
        if (isWork(technique)) {
            EXPECT_FALSE(technique.before.empty());
            EXPECT_NE(technique.reversibility, Reversibility::unknown);
        }
        if (technique.adds) {
            EXPECT_FALSE(technique.materials.empty());
        }
    }
}

// AIC Commentary 16: inks and colours are tested before anything wets them.
TEST(Techniques, whatWetsALeafIsTestedForFirst) {
    for (const Technique& technique : techniques()) {
        const bool isTested = std::ranges::any_of(technique.before, [](const std::string& before) {
            return before.find("ested") != std::string::npos;
        });
        // The spine is made moist, not the leaves' media.
        if (technique.wets && technique.key != "adhesive_removing") {
            EXPECT_TRUE(isTested) << technique.key;
        }
    }
}

// Cockerell 1901, ch. II: collated, and the owner told, before a book is pulled.
TEST(Techniques, whatTakesABookDownComesAfterItsCollation) {
    std::size_t count = 0;
    for (const Technique& technique : techniques()) {
        if (technique.disbinds) {
            ++count;
            EXPECT_TRUE(std::ranges::any_of(technique.before, [](const std::string& before) {
                return before.find("Collation finished") != std::string::npos;
            })) << technique.key;
        }
    }
    EXPECT_GE(count, 1U);
}

// AIC Commentary 26: what can't be undone is agreed first.
TEST(Techniques, bleachingWarnsAndCannotBeUndone) {
    const auto bleaching = std::ranges::find(techniques(), "bleaching", &Technique::key);
    ASSERT_NE(bleaching, techniques().end());
    EXPECT_EQ(bleaching->reversibility, Reversibility::no);
    EXPECT_NE(bleaching->undoing.find("cannot be undone"), std::string::npos);
    EXPECT_GE(bleaching->cautions.size(), 2U);
    EXPECT_TRUE(std::ranges::any_of(bleaching->before, [](const std::string& before) {
        return before.find("approval in writing") != std::string::npos;
    }));
}

// A caution about what can hurt people never stands alone as the last word.
TEST(Techniques, cautionsAboutPeopleDeferToTheWorkshopsRules) {
    for (const Technique& technique : techniques()) {
        for (const std::string& caution : technique.cautions) {
            const bool isOfPeople = std::ranges::any_of(
                std::initializer_list<const char*>{"glove", "mask", "flame", "hand", "hot", "Hot",
                                                   "burn", "guard", "fingers"},
                [&](const char* word) { return caution.find(word) != std::string::npos; });
            if (isOfPeople) {
                EXPECT_NE(caution.find("safety rules"), std::string::npos)
                    << technique.key << ": " << caution;
            }
        }
    }
}

} // namespace
} // namespace headcap::core
