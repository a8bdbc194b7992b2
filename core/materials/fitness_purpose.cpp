// What a lot is to be used for, from the step it is used in, its technique and the book.
#include "core/materials/fitness.h"

#include <algorithm>
#include <array>

#include "core/values/fold.h"

namespace headcap::core {
namespace {

constexpr std::array<std::string_view, 6> kRepairsOfPaper{
    "tear_mending", "infilling", "lining_leaves", "guarding", "hinging", "hinge_repair"};

// What these put in lies along the spine or folds there: its grain runs with it.
constexpr std::array<std::string_view, 12> kAlongSpine{
    "endpapers", "pasting_down",  "spine_lining",      "guarding",
    "hinging",   "hinge_repair",  "joint_repair",      "covering",
    "casing_in", "lining_leaves", "board_reattaching", "wrapper"};

template <std::size_t N>
bool isOneOf(const std::array<std::string_view, N>& keys, std::string_view key) {
    return std::ranges::find(keys, key) != keys.end();
}

} // namespace

FitnessPurpose purposeOf(const MaterialUse& use, std::string_view technique, const JobFile* file,
                         Day on) {
    const Technique* known =
        (file == nullptr ? TechniquesInForce{} : file->techniques).named(technique);
    return {.on = on,
            .stays = use.stays,
            .isPromisedReversible = known != nullptr && known->reversibility == Reversibility::yes,
            .isRepairOfPaper = isOneOf(kRepairsOfPaper, technique),
            .mendedMgM2 = file == nullptr ? std::nullopt : file->item.leafMgM2,
            .touchesCyanotype = file != nullptr && speaksOfCyanotypes(*file),
            .isForFacsimile = technique == "printing_facsimile",
            .followsSpine = isOneOf(kAlongSpine, technique) ||
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
