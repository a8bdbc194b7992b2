#include "app/form/field_binding.h"

#include <gtest/gtest.h>

namespace headcap::app {
namespace {

enum class Sort { sewn, glued, stapled };

struct Thing;

core::Id<Thing> idEnding(char digit) {
    return core::Id<Thing>{
        *core::Uuid::fromText(std::string{"01890a5d-ac96-774b-bcce-b302099a805"} + digit)};
}

struct Thing {
    std::string words{};
    Sort sort = Sort::sewn;
    std::int64_t severity = 0;
    bool isKept = false;
    core::Length height{};
    std::optional<core::Length> width{};
    std::optional<core::Strength> strength{};
    std::optional<core::Minutes> minutes{};
    std::optional<core::Day> day{};
    std::optional<core::Id<Thing>> mayName{};
    core::Id<Thing> mustName = idEnding('0');

    bool operator==(const Thing&) const = default;
};

std::vector<Choice> choices() {
    return {{idEnding('1').text(), QStringLiteral("Wheat starch")},
            {idEnding('2').text(), QStringLiteral("Wheat starch, precooked")},
            {idEnding('3').text(), QStringLiteral("Gelatine")}};
}

ReadingContext context() {
    return {.today = core::Day{std::chrono::year{2031} / 3 / 6}};
}

Thing full() {
    return {.words = "a loose plate",
            .sort = Sort::stapled,
            .severity = 3,
            .isKept = true,
            .height = core::Length::millimetres(212),
            .width = core::Length::millimetres(137),
            .minutes = core::Minutes{95},
            .day = core::Day{std::chrono::year{2031} / 2 / 28},
            .mayName = idEnding('3'),
            .mustName = idEnding('2')};
}

std::vector<FieldBinding<Thing>> all() {
    return {textBinding(&Thing::words),
            indexBinding(&Thing::sort),
            indexBinding(&Thing::severity),
            indexBinding(&Thing::isKept),
            valueBinding(&Thing::height, context),
            valueBinding(&Thing::width, context),
            valueBinding(&Thing::strength, context),
            valueBinding(&Thing::minutes, context),
            valueBinding(&Thing::day, context),
            pickBinding(&Thing::mayName, choices),
            pickBinding(&Thing::mustName, choices, [] { return false; })};
}

TEST(FieldBindingTest, WhatIsShownIsTakenBackAsItWas) {
    const Thing thing = full();
    Thing made;
    for (const auto& binding : all()) {
        EXPECT_EQ(binding.take(made, binding.print(thing)), QString{});
    }
    EXPECT_EQ(made, thing);
}

TEST(FieldBindingTest, WhatCantBeReadLeavesTheRecordAsItWas) {
    const Thing thing = full();
    int refused = 0;
    for (const auto& binding : all()) {
        Thing changed = thing;
        if (!binding.take(changed, QStringLiteral("nothing of the kind")).isEmpty()) {
            EXPECT_EQ(changed, thing);
            ++refused;
        }
    }
    EXPECT_EQ(refused, 7); // every value and every name; words and indexes take anything
}

TEST(FieldBindingTest, OnlyWhatMayBeLackingCanBeEmptied) {
    Thing thing = full();
    EXPECT_FALSE(valueBinding(&Thing::height, context).take(thing, QStringLiteral(" ")).isEmpty());
    EXPECT_EQ(thing, full());
    EXPECT_EQ(valueBinding(&Thing::width, context).take(thing, QStringLiteral(" ")), QString{});
    EXPECT_EQ(thing.width, std::nullopt);
    EXPECT_EQ(pickBinding(&Thing::mayName, choices).take(thing, QString{}), QString{});
    EXPECT_EQ(thing.mayName, std::nullopt);
    const auto must = pickBinding(&Thing::mustName, choices, [] { return false; });
    EXPECT_EQ(must.take(thing, QString{}), notAmongThem());
    EXPECT_EQ(thing.mustName, full().mustName);
}

TEST(FieldBindingTest, ANameIsTakenByItsWordsOrAPartThatFitsOnlyOne) {
    Thing thing;
    const auto pick = pickBinding(&Thing::mayName, choices);
    EXPECT_EQ(pick.take(thing, QStringLiteral("wheat STARCH")), QString{});
    EXPECT_EQ(thing.mayName, idEnding('1')); // the whole words win over a part of others
    EXPECT_EQ(pick.take(thing, QStringLiteral("precooked")), QString{});
    EXPECT_EQ(thing.mayName, idEnding('2'));
    EXPECT_EQ(pick.take(thing, QStringLiteral("starch")), notAmongThem());
    EXPECT_EQ(thing.mayName, idEnding('2'));
}

TEST(FieldBindingTest, ADraftThatNamesNoneOfThemSaysNothingYet) {
    bool isDraft = true;
    const auto pick = pickBinding(&Thing::mustName, choices, [&isDraft] { return isDraft; });
    const Thing unsaid;
    EXPECT_EQ(pick.print(unsaid), QString{});
    isDraft = false;
    EXPECT_EQ(pick.print(unsaid), fromCore(unsaid.mustName.text()));
}

TEST(FieldBindingTest, AWordOfTheVocabularyIsKeptByItsKeyAndAnyOtherAsItStands) {
    const auto term = termBinding(&Thing::words, [] {
        return std::vector<Choice>{{"half_leather", QStringLiteral("Half leather")}};
    });
    Thing thing;
    EXPECT_EQ(term.take(thing, QStringLiteral(" half LEATHER ")), QString{});
    EXPECT_EQ(thing.words, "half_leather");
    EXPECT_EQ(term.print(thing), QStringLiteral("Half leather"));
    EXPECT_EQ(term.take(thing, QStringLiteral("Fish skin")), QString{});
    EXPECT_EQ(thing.words, "Fish skin");
    EXPECT_EQ(term.print(thing), QStringLiteral("Fish skin"));
}

} // namespace
} // namespace headcap::app
