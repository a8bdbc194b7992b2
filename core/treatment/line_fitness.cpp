#include "core/treatment/line_fitness.h"

#include <algorithm>
#include <span>

#include "core/values/fold.h"

namespace headcap::core {
namespace {

// Of a use that is meant and has no keys of its own yet.
FitnessPurpose purposeOf(const SaidOfUse& said, const Material& kind, const JobFile* file, Day on) {
    MaterialUse meant{.id = Id<MaterialUse>{kind.id.uuid()},
                      .job = Id<Job>{kind.id.uuid()},
                      .step = Id<Step>{kind.id.uuid()},
                      .grainAtSpine = said.grain};
    fillFrom(meant, kind);
    return purposeOf(meant, said.technique, file, on);
}

// A sheet the words name without a lot, by the whole of its name.
bool isNamed(const Material& kind, const std::string& words) {
    return isSheet(kind.kind) && !kind.name.empty() &&
           words.find(foldForSearch(kind.name)) != std::string::npos;
}

} // namespace

std::vector<FitnessPoint> fitnessOf(const LineUse& use, const SaidOfUse& said, const Shelf& shelf,
                                    const JobFile* file, Day on) {
    const Lot* lot = use.lot ? shelf.lot(*use.lot) : nullptr;
    const Material* kind = lot == nullptr ? nullptr : shelf.material(lot->material);
    return kind == nullptr ? std::vector<FitnessPoint>{}
                           : fitnessOf(*lot, *kind, purposeOf(said, *kind, file, on));
}

std::vector<ProposedFitness> fitnessOf(const ProposalLine& line, const Shelf& shelf,
                                       const JobFile& file, Day on) {
    const std::span<const Technique> techniques = file.techniques.offered();
    const StepLine read = readStepLine(line.materials, {shelf, {}, techniques});
    const SaidOfUse said{line.technique, read.grainAtSpine};
    std::vector<ProposedFitness> points;
    std::vector<Id<Material>> known;
    for (const LineUse& use : read.uses) {
        for (FitnessPoint& point : fitnessOf(use, said, shelf, &file, on)) {
            points.push_back({shelf.lot(*use.lot)->number, std::move(point)});
        }
        if (const Material* kind = use.lot ? shelf.materialOf(*use.lot) : nullptr) {
            known.push_back(kind->id);
        }
    }
    const std::string words = foldForSearch(line.materials);
    for (const Material& kind : shelf.materials) {
        if (!isNamed(kind, words) || std::ranges::find(known, kind.id) != known.end()) {
            continue;
        }
        // No lot is chosen yet: only what is asked of any.
        const Lot any{
            .id = Id<Lot>{kind.id.uuid()}, .material = kind.id, .grain = Grain::alongHeight};
        for (FitnessPoint& point : fitnessOf(any, kind, purposeOf(said, kind, &file, on))) {
            if (point.rule == FitnessRule::grainUnsaid || point.rule == FitnessRule::grainAcross) {
                points.push_back({kind.name, std::move(point)});
            }
        }
    }
    return points;
}

} // namespace headcap::core
