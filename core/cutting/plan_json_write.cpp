#include "core/cutting/plan_json.h"

#include <nlohmann/json.hpp>

namespace headcap::core {

namespace {

using Json = nlohmann::ordered_json;

// Millionths as a number: whole where it is whole.
Json millionths(std::int64_t count) {
    constexpr std::int64_t kMillion = 1'000'000;
    return count % kMillion == 0 ? Json(count / kMillion) : Json(static_cast<double>(count) / 1e6);
}

Json millimetres(Length length) {
    return millionths(length.count());
}

const char* wordOf(GrainWay grain) {
    switch (grain) {
    case GrainWay::alongWidth:
        return "width";
    case GrainWay::alongHeight:
        return "height";
    case GrainWay::none:
        break;
    }
    return "none";
}

Json onSheet(const CutProblem& problem, const SheetPlace& on) {
    return {{"sheet", problem.sheets[on.sheet].id}, {"sheet_no", on.number}};
}

void addRect(Json& object, const CutRect& rect) {
    object["x"] = millimetres(rect.x);
    object["y"] = millimetres(rect.y);
    object["width"] = millimetres(rect.width);
    object["height"] = millimetres(rect.height);
}

Json placedJson(const CutProblem& problem, const CutPlan& plan) {
    Json list = Json::array();
    for (const PlacedPiece& placed : plan.placed) {
        Json object{{"piece", problem.pieces[placed.piece].id}};
        object.update(onSheet(problem, placed.on));
        addRect(object, placed.at);
        object["turned"] = placed.isTurned;
        list.push_back(std::move(object));
    }
    return list;
}

Json unplacedJson(const CutProblem& problem, const CutPlan& plan) {
    Json list = Json::array();
    for (const LeftOutPiece& left : plan.leftOut) {
        list.push_back(
            {{"piece", problem.pieces[left.piece].id},
             {"count", left.count},
             {"reason", left.reason == LeftOutReason::noRoom ? "no_room" : "fits_no_sheet"}});
    }
    return list;
}

Json cutsJson(const CutProblem& problem, const CutPlan& plan) {
    Json list = Json::array();
    for (const SheetCut& cut : plan.cuts) {
        Json object = onSheet(problem, cut.on);
        object["order"] = cut.order;
        object["axis"] = cut.axis == CutAxis::x ? "x" : "y";
        object["at"] = millimetres(cut.at);
        object["from"] = millimetres(cut.from);
        object["to"] = millimetres(cut.to);
        list.push_back(std::move(object));
    }
    return list;
}

Json offcutsJson(const CutProblem& problem, const CutPlan& plan) {
    Json list = Json::array();
    for (const PlannedOffcut& offcut : plan.offcuts) {
        Json object = onSheet(problem, offcut.on);
        addRect(object, offcut.at);
        object["grain"] = wordOf(offcut.grain);
        list.push_back(std::move(object));
    }
    return list;
}

} // namespace

std::string cutPlanJson(const CutProblem& problem, const CutPlan& plan) {
    Json answer;
    answer["placed"] = placedJson(problem, plan);
    answer["unplaced"] = unplacedJson(problem, plan);
    answer["cuts"] = cutsJson(problem, plan);
    answer["offcuts"] = offcutsJson(problem, plan);
    answer["used_area"] = millionths(plan.usedArea.count());
    answer["waste_area"] = millionths(plan.waste.count());
    answer["value"] = millionths(plan.value);
    answer["cost"] = millionths(plan.cost);
    answer["proved_best"] = plan.isProvedBest;
    return answer.dump(-1, ' ', false, Json::error_handler_t::replace);
}

tl::expected<CutAnswer, PlanFileError> answerPlanFile(std::string_view json) {
    tl::expected<CutProblem, PlanFileError> problem = readCutProblem(json);
    if (!problem) {
        return tl::unexpected(problem.error());
    }
    tl::expected<CutPlan, CutProblemError> plan =
        planCuts(*problem, usualLimits(problem->objective));
    if (!plan) {
        return tl::unexpected(placeInFile(plan.error()));
    }
    return CutAnswer{std::move(*problem), std::move(*plan)};
}

} // namespace headcap::core
