// Whether the lots a line names are fit for what the line says: one of the bench log before it is
// logged, and one of a proposal before anything is bought or cut for it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/materials/fitness.h"
#include "core/treatment/step_line.h"

namespace headcap::core {

// What the words of a line say of a use, beside the lot itself.
struct SaidOfUse {
    std::string_view technique; // its key
    GrainAtSpine grain = GrainAtSpine::notSaid;
};

// Of no known lot: nothing.
[[nodiscard]] std::vector<FitnessPoint> fitnessOf(const LineUse& use, const SaidOfUse& said,
                                                  const Shelf& shelf, const JobFile* file, Day on);

struct ProposedFitness {
    std::string name; // of the lot, or of the kind where no lot is named
    FitnessPoint point;
};

// Of the materials a proposal's line names, as words: "kozo tissue 26-014, grain along the spine".
// A kind of sheet that follows the spine is asked for its grain though no lot is named yet.
[[nodiscard]] std::vector<ProposedFitness> fitnessOf(const ProposalLine& line, const Shelf& shelf,
                                                     const JobFile& file, Day on);

} // namespace headcap::core
