#include "core/report/wanted.h"

#include "core/report/labels.h"

namespace headcap::core::report {
namespace {

void wantLeaf(Wanted& wanted, const JobFile& file, const Facsimile& leaf) {
    constexpr std::string_view kSection = "disclosures_a";
    const bool printed = leaf.kind == SuppliedKind::facsimile;
    for (const auto& label :
         {labels::kLeaf, labels::kAgreement, labels::kHeldBy, labels::kComesOut}) {
        wanted.always(kSection, leaf, label);
    }
    for (const auto& label :
         {labels::kTakenFrom, labels::kEdition, labels::kPrinted, labels::kMarked}) {
        if (printed) {
            wanted.always(kSection, leaf, label);
        }
    }
    if (!printed) {
        wanted.always(kSection, leaf, labels::kProvenance);
    }
    wanted.fact(kSection, leaf, labels::kLeaf, leaf.place);
    wanted.fact(kSection, leaf, labels::kTakenFrom, leaf.institution);
    wanted.fact(kSection, leaf, labels::kTakenFrom, leaf.shelfmark);
    wanted.fact(kSection, leaf, labels::kEdition, leaf.edition);
    wanted.fact(kSection, leaf, labels::kEdition, leaf.sourceDate ? toText(*leaf.sourceDate) : "");
    wanted.fact(kSection, leaf, labels::kImages, leaf.address);
    wanted.fact(kSection, leaf, labels::kImages, leaf.consultedOn ? "consulted on" : "");
    wanted.fact(kSection, leaf, labels::kPermission, leaf.permission);
    wanted.fact(kSection, leaf, labels::kProvenance, leaf.provenance);
    wanted.fact(kSection, leaf, labels::kAgreement, leaf.verification);
    wanted.fact(kSection, leaf, labels::kPrinted, leaf.printing);
    wanted.fact(kSection, leaf, labels::kPrinted, lotNumber(file, leaf.printedOn));
    wanted.fact(kSection, leaf, labels::kHeldBy, leaf.attachment);
    wanted.fact(kSection, leaf, labels::kHeldBy, lotNumber(file, leaf.attachedWith));
    wanted.fact(kSection, leaf, labels::kMarked, leaf.marking);
    wanted.fact(kSection, leaf, labels::kComesOut, leaf.removal);
    if (file.step(leaf.step) != nullptr) {
        wanted.always(kSection, leaf, labels::kPutIn);
    }
    if (leaf.verdict != Verdict::sameSetting) {
        wanted.say("disclosures_f", leaf, {leaf.place});
    }
    wanted.say("advice", leaf, {leaf.place, leaf.removal});
}

} // namespace

void wantLeaves(Wanted& wanted, const JobFile& file) {
    for (const Facsimile& leaf : file.facsimiles) {
        wantLeaf(wanted, file, leaf);
    }
}

} // namespace headcap::core::report
