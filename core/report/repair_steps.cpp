#include "core/report/repair_steps.h"

#include <algorithm>

namespace headcap::core::report {
namespace {

bool isToldWithItsLeaf(const JobFile& file, const Step& step) {
    return step.technique == "printing_facsimile" &&
           std::ranges::any_of(file.facsimiles, [&](const Facsimile& leaf) {
               return leaf.kind == SuppliedKind::facsimile && !leaf.place.empty() &&
                      step.place.find(leaf.place) != std::string::npos;
           });
}

} // namespace

bool isRepair(const JobFile& file, const Step& step) {
    if (step.struckAt || isToldWithItsLeaf(file, step)) {
        return false;
    }
    const Technique* technique = file.techniques.named(step.technique);
    return (technique != nullptr && technique->adds) ||
           std::ranges::any_of(file.usesOf(step),
                               [](const MaterialUse* use) { return use->stays; });
}

} // namespace headcap::core::report
