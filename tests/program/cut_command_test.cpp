// headcap cut from the shell: the shape of its answer, its exit status, and a refusal in time of
// whatever can't be cut.
#include <chrono>
#include <fstream>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/program/program_run.h"

namespace headcap::core {
namespace {

using nlohmann::json;

class CutCommandTest : public test::ProgramTest {
protected:
    test::Said cut(const json& plan) {
        const auto path = temp.path() / "plan.json";
        std::ofstream(path) << plan.dump();
        return test::runProgram(temp.path(), {"cut", path.string(), "--json"});
    }
    static json plan(const json& width, const json& count, const char* objective) {
        return {
            {"sheets",
             {{{"id", "s"}, {"width", 1000}, {"height", 700}, {"grain", "none"}, {"count", 1}}}},
            {"pieces",
             {{{"id", "p"},
               {"width", width},
               {"height", 300},
               {"grain", "any"},
               {"count", count}}}},
            {"objective", objective}};
    }
    static std::set<std::string> keysOf(const json& object) {
        std::set<std::string> keys;
        for (const auto& [key, value] : object.items()) {
            keys.insert(key);
        }
        return keys;
    }
};

TEST_F(CutCommandTest, answersWithTheKeysOfItsContract) {
    const auto said = cut(plan(400, 9, "most_value"));
    const json answer = json::parse(said.out, nullptr, false);
    ASSERT_TRUE(answer.is_object()) << said.err;
    for (const char* key : {"placed", "unplaced", "cuts", "offcuts", "used_area", "waste_area",
                            "value", "proved_best"}) {
        EXPECT_TRUE(answer.contains(key)) << key;
    }
    EXPECT_EQ(keysOf(answer["placed"][0]),
              (std::set<std::string>{"piece", "sheet", "sheet_no", "x", "y", "width", "height",
                                     "turned"}));
    EXPECT_EQ(keysOf(answer["cuts"][0]),
              (std::set<std::string>{"sheet", "sheet_no", "order", "axis", "at", "from", "to"}));
    // By hand: 1000 × 700 mm holds five of 400 × 300, two upright beside three lying or the like.
    EXPECT_EQ(answer["placed"].size(), 5U);
    EXPECT_EQ(answer["value"], 5 * 400 * 300); // by default the area
    EXPECT_EQ(answer["used_area"], 5 * 400 * 300);
    EXPECT_EQ(answer["proved_best"], true);
}

// Of the most value, counts are the most that is wanted; of all pieces, one left out is a no.
TEST_F(CutCommandTest, theExitStatusIsTheAnswer) {
    EXPECT_EQ(cut(plan(400, 2, "all_pieces")).status, 0);
    EXPECT_EQ(cut(plan(400, 9, "all_pieces")).status, 1);
    EXPECT_EQ(cut(plan(400, 9, "most_value")).status, 0);
}

TEST_F(CutCommandTest, turnsOnlyWhereItMayAndLosesTheKerf) {
    json upright = plan(900, 1, "most_value");
    upright["pieces"][0]["height"] = 710;
    EXPECT_EQ(json::parse(cut(upright).out)["placed"].size(), 0U); // fits neither way
    upright["pieces"][0]["width"] = 690;
    EXPECT_EQ(json::parse(cut(upright).out)["placed"][0]["turned"], true);
    upright["rotate"] = false;
    EXPECT_EQ(json::parse(cut(upright).out)["placed"].size(), 0U);

    json strips = plan(250, 4, "most_value");
    strips["pieces"][0]["height"] = 700;
    EXPECT_EQ(json::parse(cut(strips).out)["placed"].size(), 4U);
    strips["kerf"] = 2;
    EXPECT_EQ(json::parse(cut(strips).out)["placed"].size(), 3U);
}

TEST_F(CutCommandTest, aValueIsTheAskersOwn) {
    json valued = plan(400, 1, "most_value");
    valued["pieces"].push_back({{"id", "q"}, {"width", 999}, {"height", 699}, {"count", 1}});
    valued["pieces"][0]["value"] = 5;
    valued["pieces"][1]["value"] = 4;
    const json answer = json::parse(cut(valued).out);
    EXPECT_EQ(answer["value"], 5);
    EXPECT_EQ(answer["placed"][0]["piece"], "p");
}

TEST_F(CutCommandTest, refusesNonsenseInOneSentenceAndInTime) {
    const std::vector<std::pair<json, const char*>> all{
        {plan(0, 1, "all_pieces"), "/pieces/0/width must be above nothing"},
        {plan(-5, 1, "all_pieces"), "/pieces/0/width must be above nothing"},
        {plan(1e300, 1, "all_pieces"), "/pieces/0/width is larger"},
        {plan(10, 0, "all_pieces"), "/pieces/0/count must be above nothing"},
        {plan(10, -1, "most_value"), "/pieces/0/count must be above nothing"},
        {plan(10, 1'000'000, "all_pieces"), "more pieces than are planned at once"},
        {plan(10, 1'000'000, "most_value"), "more pieces than are planned at once"},
        {plan(10, 1.5, "all_pieces"), "/pieces/0/count must be a whole number"},
        {plan("ten", 1, "all_pieces"), "/pieces/0/width is of the wrong kind"},
        {plan(10, 1, "best"), "/objective has a word"},
        {json::array(), ""}};
    for (const auto& [asked, why] : all) {
        const auto began = std::chrono::steady_clock::now();
        const auto said = cut(asked);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
        EXPECT_EQ(said.status, 2) << asked.dump() << said.out;
        EXPECT_TRUE(said.out.empty());
        EXPECT_NE(said.err.find(why), std::string::npos) << said.err;
        EXPECT_EQ(std::count(said.err.begin(), said.err.end(), '\n'), 1) << said.err;
        EXPECT_LT(took.count(), 10.0);
    }
}

} // namespace
} // namespace headcap::core
