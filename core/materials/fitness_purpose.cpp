// What a lot is to be used for, from the step it is used in, its technique and the book.
#include "core/materials/fitness.h"

#include <algorithm>

#include "core/treatment/technique_facts.h"
#include "core/values/fold.h"

namespace headcap::core {

FitnessPurpose purposeOf(const MaterialUse& use, std::string_view technique, const JobFile* file,
                         Day on) {
    const Technique* known =
        (file == nullptr ? TechniquesInForce{} : file->techniques).named(technique);
    const TechniqueFacts& facts = factsOf(technique);
    return {.on = on,
            .stays = use.stays,
            .isPromisedReversible = known != nullptr && known->reversibility == Reversibility::yes,
            .isRepairOfPaper = facts.mendsPaper,
            .mendedMgM2 = file == nullptr ? std::nullopt : file->item.leafMgM2,
            .touchesCyanotype = file != nullptr && speaksOfCyanotypes(*file),
            .isForFacsimile = technique == "printing_facsimile",
            .followsSpine = facts.followsSpine ||
                            (known != nullptr && known->doneTo.find("spine") != std::string::npos),
            .grainAtSpine = use.grainAtSpine};
}

FitnessPurpose purposeOf(const MaterialUse& use, const Step& step, const JobFile& file, Day on) {
    FitnessPurpose purpose = purposeOf(use, step.technique, &file, on);
    purpose.isPromisedReversible = step.reversibility == Reversibility::yes;
    if (const Item* part = file.part(step.part); part != nullptr && part->leafMgM2) {
        purpose.mendedMgM2 = part->leafMgM2;
    }
    return purpose;
}

bool speaksOfCyanotypes(const JobFile& file) {
    const auto speaks = [](const std::string& text) {
        const std::string folded = foldForSearch(text);
        return folded.find("cyanotype") != std::string::npos ||
               folded.find("blueprint") != std::string::npos;
    };
    const auto ofItem = [&](const Item& item) {
        return speaks(item.title) || speaks(item.binding) || speaks(item.marks) ||
               speaks(item.note);
    };
    return ofItem(file.item) || std::ranges::any_of(file.parts, ofItem) ||
           std::ranges::any_of(
               file.works,
               [&](const Work& work) { return speaks(work.title) || speaks(work.note); }) ||
           std::ranges::any_of(file.findings, [&](const Finding& finding) {
               return speaks(finding.observed) || speaks(finding.inferred);
           });
}

} // namespace headcap::core
