#include "core/cutting/plan_json.h"

#include <random>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace headcap::core {
namespace {

// A plan file with one value changed, by its pointer.
std::string changed(const char* pointer, const nlohmann::json& value) {
    nlohmann::json plan = nlohmann::json::parse(R"({
        "sheets": [{"id": "A", "width": 700, "height": 500.5, "grain": "height", "count": 2}],
        "pieces": [{"id": "end", "width": 300, "height": 220, "grain": "height", "count": 2}],
        "objective": "all_pieces", "kerf": 0.4, "rotate": true})");
    plan[nlohmann::json::json_pointer(pointer)] = value;
    return plan.dump();
}

TEST(PlanFile, isReadExactly) {
    const auto problem = readCutProblem(changed("/pieces/0/value", 12.5));
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->sheets[0].height, Length::micrometres(500'500));
    EXPECT_EQ(problem->sheets[0].grain, GrainWay::alongHeight);
    EXPECT_EQ(problem->sheets[0].count, 2);
    EXPECT_EQ(problem->rules.kerf, Length::micrometres(400));
    EXPECT_EQ(problem->pieces[0].value, 12'500'000);
    EXPECT_EQ(problem->objective, CutObjective::allPieces);
}

TEST(PlanFile, isAnsweredWithEveryFieldOfTheFormat) {
    const auto answer = answerPlanFile(changed("/pieces/0/count", 2));
    ASSERT_TRUE(answer);
    const auto json = nlohmann::json::parse(cutPlanJson(answer->problem, answer->plan));
    ASSERT_EQ(json["placed"].size(), 2U);
    const auto& placed = json["placed"][0];
    EXPECT_EQ(placed["piece"], "end");
    EXPECT_EQ(placed["sheet"], "A");
    EXPECT_EQ(placed["sheet_no"], 1);
    EXPECT_EQ(placed["width"], 300);
    EXPECT_EQ(placed["turned"], false);
    EXPECT_EQ(json["unplaced"].size(), 0U);
    EXPECT_EQ(json["cuts"][0]["order"], 1);
    EXPECT_TRUE(json["cuts"][0].contains("axis"));
    EXPECT_EQ(json["used_area"], 132'000);
    EXPECT_EQ(json["value"], 132'000);
    EXPECT_EQ(json["proved_best"], true);
    double sum = json["used_area"].get<double>() + json["waste_area"].get<double>();
    for (const auto& offcut : json["offcuts"]) {
        sum += offcut["width"].get<double>() * offcut["height"].get<double>();
    }
    EXPECT_NEAR(sum, 700 * 500.5, 1e-6);
}

struct BadPlan {
    std::string text;
    PlanFileFault fault;
    std::string place;
    std::optional<CutProblemFault> problem = {};
};

class BadPlans : public testing::TestWithParam<BadPlan> {};

TEST_P(BadPlans, areRefusedWithTheirPlace) {
    const BadPlan& bad = GetParam();
    const auto answer = answerPlanFile(bad.text);
    ASSERT_FALSE(answer) << bad.text.substr(0, 300);
    EXPECT_EQ(answer.error().fault, bad.fault);
    EXPECT_EQ(answer.error().place, bad.place);
    EXPECT_EQ(answer.error().problem, bad.problem);
}

using Fault = PlanFileFault;
using Problem = CutProblemFault;
INSTANTIATE_TEST_SUITE_P(
    Kinds, BadPlans,
    testing::Values(
        BadPlan{"", Fault::notJson, ""}, BadPlan{"{\"sheets\":[", Fault::notJson, ""},
        BadPlan{"[]", Fault::wrongType, ""}, BadPlan{"{}", Fault::missing, "/sheets"},
        BadPlan{changed("/sheets", 3), Fault::wrongType, "/sheets"},
        BadPlan{changed("/sheets", nlohmann::json::array()), Fault::problem, "/sheets",
                Problem::noSheets},
        BadPlan{changed("/pieces/0", "x"), Fault::wrongType, "/pieces/0"},
        BadPlan{changed("/pieces/0", nlohmann::json::object()), Fault::missing, "/pieces/0/id"},
        BadPlan{changed("/pieces/0/width", 0), Fault::problem, "/pieces/0/width",
                Problem::notPositive},
        BadPlan{changed("/pieces/0/width", -3), Fault::problem, "/pieces/0/width",
                Problem::notPositive},
        BadPlan{changed("/sheets/0/height", 1e30), Fault::problem, "/sheets/0/height",
                Problem::tooLarge},
        BadPlan{changed("/sheets/0/height", 20'001), Fault::problem, "/sheets/0/height",
                Problem::tooLarge},
        BadPlan{changed("/sheets/0/width", "wide"), Fault::wrongType, "/sheets/0/width"},
        BadPlan{changed("/sheets/0/grain", "long"), Fault::unknownWord, "/sheets/0/grain"},
        BadPlan{changed("/sheets/0/grian", "width"), Fault::unknownField, "/sheets/0/grian"},
        BadPlan{changed("/pieces/0/count", 0), Fault::problem, "/pieces/0/count",
                Problem::notPositive},
        BadPlan{changed("/pieces/0/count", -1), Fault::problem, "/pieces/0/count",
                Problem::notPositive},
        BadPlan{changed("/pieces/0/count", 1.5), Fault::notWhole, "/pieces/0/count"},
        BadPlan{changed("/pieces/0/count", 1'000'000), Fault::problem, "/pieces",
                Problem::tooManyPieces},
        BadPlan{changed("/pieces/0/count", 1e18), Fault::problem, "/pieces/0/count",
                Problem::tooLarge},
        BadPlan{changed("/sheets/0/count", 1'000'000), Fault::problem, "/sheets",
                Problem::tooManySheets},
        BadPlan{changed("/kerf", -0.1), Fault::problem, "/kerf", Problem::negative},
        BadPlan{changed("/pieces/0/value", -1), Fault::problem, "/pieces/0/value",
                Problem::negative},
        BadPlan{changed("/pieces/0/value", 1e12), Fault::problem, "/pieces/0/value",
                Problem::tooLarge},
        BadPlan{changed("/sheets/0/trim", 260), Fault::problem, "/sheets/0/trim",
                Problem::trimmedAway},
        BadPlan{changed("/objective", "best"), Fault::unknownWord, "/objective"},
        BadPlan{changed("/rotate", 1), Fault::wrongType, "/rotate"},
        BadPlan{changed("/pieces/1", {{"id", "end"}, {"width", 1}, {"height", 1}}), Fault::doubleId,
                "/pieces/1/id"}));

TEST(PlanFile, isRefusedAtOnceWithAMillionRows) {
    std::string text = R"({"sheets":[{"id":"A","width":9,"height":9}],"pieces":[)";
    for (int i = 0; i < 1'000'000; ++i) {
        text += R"({"id":")" + std::to_string(i) + R"(","width":1,"height":1},)";
    }
    text.back() = ']';
    text += '}';
    const auto problem = readCutProblem(text);
    ASSERT_FALSE(problem);
    EXPECT_EQ(problem.error().fault, PlanFileFault::tooLong);
}

TEST(PlanFile, saysWhereItStopsBeingJson) {
    const auto problem = readCutProblem("{\"sheets\": [,]}");
    ASSERT_FALSE(problem);
    EXPECT_EQ(problem.error().at, 13U);
}

// Bytes changed, dropped and doubled at random: an answer or a refusal, never anything else.
TEST(PlanFile, survivesBeingSpoilt) {
    std::mt19937 random(7);
    const std::string whole = changed("/sheets/0/trim", {{"left", 3}, {"top", 2}});
    for (int i = 0; i < 3'000; ++i) {
        std::string text = whole;
        for (int change = 0; change < 3; ++change) {
            const std::size_t at = random() % text.size();
            switch (random() % 3) {
            case 0:
                text[at] = static_cast<char>("0123456789-.eE{}[]\",:"[random() % 21]);
                break;
            case 1:
                text.erase(at, 1 + random() % 4);
                break;
            default:
                text.insert(at, text.substr(at, 1 + random() % 6));
                break;
            }
        }
        static_cast<void>(readCutProblem(text));
    }
}

} // namespace
} // namespace headcap::core
