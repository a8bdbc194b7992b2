#include "core/materials/trace_json.h"

#include <nlohmann/json.hpp>

#include "core/treatment/bench_log.h"

namespace headcap::core {
namespace {

using nlohmann::json;

json orNull(const std::string& text) {
    return text.empty() ? json(nullptr) : json(text);
}

json numbersOf(const std::vector<const Lot*>& lots) {
    auto numbers = json::array();
    for (const Lot* lot : lots) {
        numbers.push_back(lot->number);
    }
    return numbers;
}

std::string nameOf(const LotTrace& trace, const Step& step) {
    const std::string name = trace.techniques.nameOf(step.technique);
    return name.empty() ? step.description : name;
}

json stepJson(const LotTrace& trace, const TracedUse& one) {
    const std::string& place = one.use->place.empty() ? one.step->place : one.use->place;
    return {{"step", nameOf(trace, *one.step)},
            {"step_id", one.step->id.text()},
            {"when", isoText(one.step->at)},
            {"place", orNull(place)},
            {"amount", one.use->amount ? json(toText(*one.use->amount)) : json(nullptr)},
            {"lot", one.lot->number},
            {"stays", one.use->stays},
            {"through", numbersOf(trace.through(*one.lot))}};
}

json leafJson(const LotTrace& trace, const TracedLeaf& one) {
    return {{"facsimile_id", one.leaf->id.text()},
            {"place", orNull(one.leaf->place)},
            {"as", one.isPrintedOn ? "printed_on" : "attached_with"},
            {"lot", one.lot->number},
            {"through", numbersOf(trace.through(*one.lot))}};
}

double millimetres(const std::optional<Length>& length) {
    return length ? static_cast<double>(length->count()) / 1e6 : 0;
}

json pieceJson(const LotTrace& trace, const TracedPiece& one) {
    return {{"cutting_id", one.cutting->id.text()},
            {"when", isoText(one.cutting->at)},
            {"piece", one.piece->name},
            {"width", millimetres(one.piece->width)},
            {"height", millimetres(one.piece->height)},
            {"lot", one.lot->number},
            {"through", numbersOf(trace.through(*one.lot))}};
}

} // namespace

json traceJson(const LotTrace& trace) {
    auto jobs = json::array();
    for (const TracedJob& one : trace.jobs) {
        auto steps = json::array();
        for (const TracedUse& use : one.uses) {
            steps.push_back(stepJson(trace, use));
        }
        auto leaves = json::array();
        for (const TracedLeaf& leaf : one.leaves) {
            leaves.push_back(leafJson(trace, leaf));
        }
        auto pieces = json::array();
        for (const TracedPiece& piece : one.pieces) {
            pieces.push_back(pieceJson(trace, piece));
        }
        json job{{"job", one.job->number},
                 {"item", one.item == nullptr ? std::string{} : headingOf(*one.item)},
                 {"owner", one.owner == nullptr ? std::string{} : one.owner->name},
                 {"steps", std::move(steps)},
                 {"facsimiles", std::move(leaves)},
                 {"pieces", std::move(pieces)}};
        if (one.ownerNow != nullptr) {
            job["owner_now"] = one.ownerNow->name;
        }
        jobs.push_back(std::move(job));
    }
    return {{"lot", trace.lot->number}, {"lots", numbersOf(trace.lots)}, {"jobs", std::move(jobs)}};
}

} // namespace headcap::core
