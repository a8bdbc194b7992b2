// Cuts every published instance, proven and only computed apart, then workshop plans drawn at
// random, then hard sheets of known bounds (`--hard`: these alone); tells values, proofs and times.
// Last, plan files that are too long, refused, beside the bare reading of their JSON.

#include <chrono>
#include <random>
#include <string>
#include <tuple>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "core/cutting/plan_check.h"
#include "core/cutting/plan_cuts.h"
#include "core/cutting/plan_json.h"
#include "tests/bench/hard_sheets.h"
#include "tests/core/cutting/instances.h"

namespace headcap::core {
namespace {

struct Timed {
    CutPlan plan;
    double seconds = 0;
    bool isChecked = false;
};

Timed cut(const CutProblem& problem) {
    const auto began = std::chrono::steady_clock::now();
    auto plan = planCuts(problem, usualLimits(problem.objective));
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
    return {*plan, took.count(), checkPlan(problem, *plan).empty()};
}

double inUnits(std::int64_t millionths) {
    return static_cast<double>(millionths) / 1e6;
}

void show(const std::string& name, const Timed& timed, const std::string& known) {
    fmt::print("{:<44} {:>10} known {:>10} {:<8} {:6.3f} s{}\n", name, inUnits(timed.plan.value),
               known, timed.plan.isProvedBest ? "proved" : "", timed.seconds,
               timed.isChecked ? "" : "  FAILS THE CHECK");
}

void showPublished(bool proven) {
    for (const test::PublishedOptimum& row : test::publishedOptima()) {
        const auto problem = row.problem();
        if (row.isProven() == proven && problem) {
            show(fmt::format("{} {} {}", row.instance, row.variant, row.rotation), cut(*problem),
                 std::to_string(row.value));
        }
    }
}

double secondsOf(const auto& work) {
    const auto began = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

void showRefusals() {
    std::string rows;
    for (int i = 0; i < 300'000; ++i) {
        rows += fmt::format(R"({}{{"id":{},"width":9,"height":9}})", i == 0 ? "" : ",", i);
    }
    const std::string one = R"({"id":"s","width":640,"height":900})";
    for (const auto& [name, sheets, pieces] :
         {std::tuple{"300,000 pieces", one, rows}, std::tuple{"300,000 sheets", rows, one}}) {
        const std::string text = fmt::format(R"({{"sheets":[{}],"pieces":[{}]}})", sheets, pieces);
        bool isRefused = false;
        const double ours = secondsOf([&] { isRefused = !answerPlanFile(text).has_value(); });
        const double bare =
            secondsOf([&] { (void)nlohmann::json::parse(text, nullptr, false).size(); });
        fmt::print("{:<44} {} in {:.3f} s, {:.2f} x its JSON alone\n", name,
                   isRefused ? "refused" : "ANSWERED", ours, ours / bare);
    }
}

void showWang() {
    for (const char* file : {"wang1.dat", "wang2.dat", "wang3.dat"}) {
        for (const bool mayTurn : {false, true}) {
            const auto problem = test::readInstance(file, test::InstanceForm::wang, true, mayTurn);
            if (problem) {
                show(fmt::format("{} {}", file, mayTurn ? "90deg" : "fixed"), cut(*problem), "-");
            }
        }
    }
}

// Thirty pieces of book work out of ten sheets and offcuts, in whole millimetres.
CutProblem workshopPlan(unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    CutProblem problem;
    problem.rules.leastOffcut = Length::millimetres(25);
    for (int i = 0; i < 10; ++i) {
        const bool isWhole = i < 4;
        problem.sheets.push_back({std::to_string(i),
                                  Length::millimetres(isWhole ? 1000 : between(150, 500)),
                                  Length::millimetres(isWhole ? 700 : between(200, 600)),
                                  i % 3 == 0 ? GrainWay::alongWidth : GrainWay::alongHeight});
    }
    for (int i = 0; i < 15; ++i) {
        const bool isStrip = i % 2 == 0;
        problem.pieces.push_back(
            {std::to_string(i), Length::millimetres(isStrip ? between(12, 60) : between(120, 320)),
             Length::millimetres(between(150, 320)),
             i % 4 == 0 ? GrainWay::none : GrainWay::alongHeight, 2});
    }
    return problem;
}

void showWorkshop() {
    double slowest = 0, sum = 0;
    int proved = 0, whole = 0;
    constexpr int kPlans = 40;
    for (unsigned seed = 1; seed <= kPlans; ++seed) {
        const Timed timed = cut(workshopPlan(seed));
        slowest = std::max(slowest, timed.seconds);
        sum += timed.seconds;
        proved += timed.plan.isProvedBest ? 1 : 0;
        whole += timed.plan.leftOut.empty() ? 1 : 0;
        if (!timed.isChecked) {
            fmt::print("workshop plan {} fails the check\n", seed);
        }
    }
    fmt::print("workshop plans: {} of {} whole, {} proved, mean {:.3f} s, slowest {:.3f} s\n",
               whole, kPlans, proved, sum / kPlans, slowest);
}

// How far below what can't be passed; those without waste below what is there to be found.
void showHard() {
    double worst = 0, slowest = 0, sum = 0;
    int reached = 0, number = 0, withinOne = 0;
    for (const bench::HardSheet& sheet : bench::hardSheets()) {
        const Timed timed = cut(sheet.problem);
        const double value = inUnits(timed.plan.value);
        const double below = 100 * (1 - value / static_cast<double>(sheet.bound));
        fmt::print("{:<44} {:>10} of {:>9} {:5.2f} % below {} {:<8} {:6.3f} s{}\n", sheet.name,
                   value, sheet.bound, below, sheet.isOptimum ? "the optimum" : "a bound    ",
                   timed.plan.isProvedBest ? "proved" : "", timed.seconds,
                   timed.isChecked ? "" : "  FAILS THE CHECK");
        slowest = std::max(slowest, timed.seconds);
        const double left = timed.plan.isProvedBest ? 0 : below;
        worst = std::max(worst, left);
        sum += left;
        withinOne += left <= 1 ? 1 : 0;
        reached += left <= 0 ? 1 : 0;
        ++number;
    }
    fmt::print("hard sheets: {} of {} at the optimum, {} within 1 %, mean {:.2f} %, worst {:.2f} % "
               "below, slowest {:.1f} s\n",
               reached, number, withinOne, sum / number, worst, slowest);
}

} // namespace
} // namespace headcap::core

int main(int argc, char** argv) {
    if (argc > 1 && std::string(argv[1]) == "--hard") {
        headcap::core::showHard();
        return 0;
    }
    fmt::print("proven in print\n");
    headcap::core::showPublished(true);
    fmt::print("\nonly computed, or with no value known here\n");
    headcap::core::showPublished(false);
    headcap::core::showWang();
    fmt::print("\n");
    headcap::core::showWorkshop();
    fmt::print("\n");
    headcap::core::showHard();
    fmt::print("\n");
    headcap::core::showRefusals();
}
