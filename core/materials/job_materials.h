// What went into the book of one job, lot by lot: where, in which step, for which facsimile, and
// how each lot now stands. Struck steps put nothing in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/materials/shelf_life.h"
#include "core/record/job_file.h"

namespace headcap::core {

struct MaterialInStep {
    const MaterialUse* use;
    const Step* step;
    LotAge ageThen = LotAge::keeps; // of the lot, on the day of the step
    std::string place{};            // of the use, or else of the step
    std::string removal{};          // of the use, or else how the step is undone
};

struct MaterialInFacsimile {
    const Facsimile* leaf;
    bool isPrintedOn = false;
    bool isAttachedWith = false;
};

struct JobMaterial {
    const Lot* lot = nullptr; // none: used without a lot
    const Material* kind = nullptr;
    std::string name{}; // of the lot, or the material in words
    std::vector<MaterialInStep> uses{};
    std::vector<MaterialInFacsimile> facsimiles{};
    std::optional<Amount> used{};    // the sum of its uses; nothing where one is unmeasured
    std::optional<Amount> balance{}; // left on the shelf
    std::optional<Day> goodUntil{};
    LotAge ageNow = LotAge::keeps;
};

// In the order of the lots' numbers; what has no lot comes last.
[[nodiscard]] std::vector<JobMaterial> jobMaterials(const JobFile& file, const Clock& clock);

} // namespace headcap::core
