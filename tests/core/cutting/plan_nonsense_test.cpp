// Plans of nonsense: whatever is asked, the answer is a plan that stands its check or a refusal
// that says where, and never a wait without end: ctest ends what takes minutes.
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "core/cutting/plan_check.h"
#include "core/cutting/plan_json.h"

namespace headcap::core {
namespace {

void expectAnswer(const std::string& text) {
    const auto answer = answerPlanFile(text);
    if (answer) {
        EXPECT_TRUE(checkPlan(answer->problem, answer->plan).empty()) << text;
    } else {
        EXPECT_TRUE(answer.error().fault == PlanFileFault::notJson ||
                    answer.error().fault == PlanFileFault::tooLong || !answer.error().place.empty())
            << text.substr(0, 200);
    }
}

std::string plan(const std::string& sheet, const std::string& piece, const std::string& objective) {
    return R"({"sheets":[{"id":"s",)" + sheet + R"(}],"pieces":[{"id":"p",)" + piece +
           R"(}],"objective":")" + objective + R"("})";
}

TEST(PlansOfNonsense, areRefusedWhereTheyAreWrong) {
    const std::string sheet = R"("width":640,"height":900)";
    for (const char* piece :
         {R"("width":0,"height":10)", R"("width":-5,"height":10)", R"("width":10,"height":1e12)",
          R"("width":10,"height":1e300)", R"("width":10,"height":10,"count":0)",
          R"("width":10,"height":10,"count":-3)", R"("width":10,"height":10,"count":1000000)",
          R"("width":10,"height":10,"count":1e18)", R"("width":10,"height":10,"count":2.5)",
          R"("width":"10","height":10)", R"("height":10)", R"("width":10,"height":10,"grain":"up")",
          R"("width":10,"height":10,"overlap":-1)", R"("width":null,"height":10)"}) {
        for (const char* objective : {"all_pieces", "most_value"}) {
            const auto answer = answerPlanFile(plan(sheet, piece, objective));
            ASSERT_FALSE(answer) << piece;
            EXPECT_TRUE(answer.error().place.starts_with("/pieces")) << piece;
        }
    }
}

// A million pieces in a million rows, and a million sheets, are too many, and said so at once.
TEST(PlansOfNonsense, aMillionOfAnythingIsTold) {
    std::string rows;
    for (int i = 0; i < 300'000; ++i) {
        rows +=
            (i == 0 ? R"({"id":)" : R"(,{"id":)") + std::to_string(i) + R"(,"width":9,"height":9})";
    }
    const std::string sheets = R"("sheets":[{"id":"s","width":640,"height":900}])";
    expectAnswer("{" + sheets + R"(,"pieces":[)" + rows + "]}");
    expectAnswer(R"({"sheets":[)" + rows + R"(],"pieces":[{"id":"p","width":5,"height":5}]})");
    expectAnswer(plan(R"("width":640,"height":900,"count":1000000)", R"("width":9,"height":9)",
                      "all_pieces"));
}

// Well-formed plans of any figures, most of them absurd.
TEST(PlansOfNonsense, anyFiguresAreAnswered) {
    std::mt19937 chance{99};
    const auto any = [&](std::initializer_list<const char*> words) {
        return std::string{*(words.begin() + static_cast<std::ptrdiff_t>(chance() % words.size()))};
    };
    for (int i = 0; i < 150; ++i) {
        const auto figure = [&] {
            return any({"0", "-1", "0.000001", "1", "7.5", "33", "100", "299.9", "640", "19999",
                        "1e7", "-1e7", "1e30"});
        };
        const std::string sheet = R"("width":)" + figure() + R"(,"height":)" + figure() +
                                  R"(,"count":)" + any({"0", "1", "3", "1000", "99999999"}) +
                                  R"(,"trim":)" + any({"0", "3", "400", "-2"});
        const std::string piece = R"("width":)" + figure() + R"(,"height":)" + figure() +
                                  R"(,"count":)" + any({"1", "2", "40", "5000", "5001"}) +
                                  R"(,"grain":")" + any({"width", "height", "any"}) + R"(")";
        expectAnswer(plan(sheet, piece, "all_pieces"));
    }
}

} // namespace
} // namespace headcap::core
