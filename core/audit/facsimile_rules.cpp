#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/audit/facts.h"
#include "core/materials/shelf.h"

namespace headcap::core {
namespace {

constexpr std::string_view kDisclose = "ABA Guidelines for members 4; AIC Commentary 23";
constexpr std::string_view kEdition = "Gaskell; fingerprint of the Dutch short-title catalogue";

bool isFacsimile(const Facsimile& leaf) {
    return leaf.kind == SuppliedKind::facsimile;
}

std::string nameOfLeaf(const Facsimile& leaf) {
    const std::string where = leaf.place.empty() ? "a leaf not yet named" : leaf.place;
    return (isFacsimile(leaf) ? "The facsimile of " : "The original leaf supplied at ") + where;
}

template <class Wanting>
void each(const AuditContext& at, const AuditSink& found, std::string_view says, Wanting wanting) {
    for (const Facsimile& leaf : at.file.facsimiles) {
        if (wanting(leaf)) {
            found(leaf, nameOfLeaf(leaf), says);
        }
    }
}

void place(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not say which leaf it supplies.",
         [](const Facsimile& leaf) { return leaf.place.empty(); });
}

void source(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not name the copy it was taken from (keeper and shelfmark).",
         [](const Facsimile& leaf) {
             return isFacsimile(leaf) && (leaf.institution.empty() || leaf.shelfmark.empty());
         });
}

void edition(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not say which edition its source is of, with its date.",
         [](const Facsimile& leaf) {
             return isFacsimile(leaf) && (leaf.edition.empty() || !leaf.sourceDate);
         });
}

void verification(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not say how its source was shown to agree with this copy.",
         [](const Facsimile& leaf) { return leaf.verification.empty(); });
}

void verdict(const AuditContext& at, const AuditSink& found) {
    each(at, found,
         "comes from a copy whose agreement with this one is not established, and the report says "
         "so.",
         [](const Facsimile& leaf) {
             return !leaf.verification.empty() && leaf.verdict == Verdict::notEstablished;
         });
}

void contradicted(const AuditContext& at, const AuditSink& found) {
    each(at, found,
         "comes from a copy that a comparison contradicts: find another source, or "
         "take it out.",
         [](const Facsimile& leaf) { return leaf.verdict == Verdict::contradicted; });
}

void setting(const AuditContext& at, const AuditSink& found) {
    each(at, found,
         "agrees with this copy page for page; that it is of the same edition is not "
         "established, and the report says so.",
         [](const Facsimile& leaf) { return leaf.verdict == Verdict::pagesAgree; });
}

void material(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not say on which lot it is printed.",
         [](const Facsimile& leaf) { return isFacsimile(leaf) && !leaf.printedOn; });
}

void attachment(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not say how and with which lot it is held in the book.",
         [](const Facsimile& leaf) { return leaf.attachment.empty() || !leaf.attachedWith; });
}

void marking(const AuditContext& at, const AuditSink& found) {
    each(at, found, "is not marked as a facsimile.",
         [](const Facsimile& leaf) { return isFacsimile(leaf) && leaf.marking.empty(); });
}

void oldPaper(const AuditContext& at, const AuditSink& found) {
    each(at, found, "is printed on old paper, which hides it: look at its mark once more.",
         [&](const Facsimile& leaf) {
             const Lot* lot = at.file.lot(leaf.printedOn);
             return isFacsimile(leaf) && lot != nullptr && lot->origin == LotOrigin::saved;
         });
}

void removal(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not say how it comes out again.",
         [](const Facsimile& leaf) { return leaf.removal.empty(); });
}

void provenance(const AuditContext& at, const AuditSink& found) {
    each(at, found, "has no provenance: leaves have been stolen to complete copies.",
         [](const Facsimile& leaf) { return !isFacsimile(leaf) && leaf.provenance.empty(); });
}

void permission(const AuditContext& at, const AuditSink& found) {
    each(at, found, "names no permission for the images it was made from.",
         [](const Facsimile& leaf) { return isFacsimile(leaf) && leaf.permission.empty(); });
}

void image(const AuditContext& at, const AuditSink& found) {
    each(at, found, "has no photograph of its own.", [&](const Facsimile& leaf) {
        return std::ranges::none_of(at.file.photographs, [&](const Photograph& photograph) {
            return photograph.facsimile == leaf.id;
        });
    });
}

void followUp(const AuditContext& at, const AuditSink& found) {
    if (!at.file.followUps.empty()) {
        return;
    }
    each(at, found,
         "stands for a leaf that may still turn up: a follow-up would keep watch for it.",
         [](const Facsimile& leaf) { return isFacsimile(leaf); });
}

void inWhichStep(const AuditContext& at, const AuditSink& found) {
    each(at, found, "does not name the step in which it was put in.", [&](const Facsimile& leaf) {
        const Step* step = at.file.step(leaf.step);
        return step == nullptr || step->struckAt.has_value();
    });
}

// What is said to be in the book must have left the shelf for it.
void lotNotTaken(const AuditContext& at, const AuditSink& found) {
    const auto uses = facts::standingUses(at.file);
    for (const Facsimile& leaf : at.file.facsimiles) {
        for (const auto& [id, how] : {std::pair{leaf.printedOn, "is printed on"},
                                      std::pair{leaf.attachedWith, "is held with"}}) {
            const Lot* lot = at.file.lot(id);
            if (lot != nullptr && std::ranges::find(uses, id, &MaterialUse::lot) == uses.end()) {
                found(leaf, fmt::format("{} {} lot {}, and no step of this job takes any of it.",
                                        nameOfLeaf(leaf), how,
                                        lotName(*lot, at.file.material(lot->material))));
            }
        }
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::array kRules{
    AuditRule{"supplied_leaf_place", Page::collation, kMust, kDisclose, place},
    AuditRule{"facsimile_source", Page::collation, kMust, kDisclose, source},
    AuditRule{"facsimile_source_edition", Page::collation, kMust, kEdition, edition},
    AuditRule{"supplied_leaf_verification", Page::collation, kMust, kEdition, verification},
    AuditRule{"supplied_leaf_not_established", Page::collation, kWorth, kEdition, verdict},
    AuditRule{"supplied_leaf_contradicted", Page::collation, kMust, kEdition, contradicted},
    AuditRule{"supplied_leaf_setting_unknown", Page::collation, kWorth, kEdition, setting},
    AuditRule{"facsimile_material", Page::collation, kMust, "AIC Commentary 23, 27", material},
    AuditRule{"supplied_leaf_attachment", Page::collation, kMust, "AIC Commentary 23, 27",
              attachment},
    AuditRule{"supplied_leaf_lot", Page::collation, kWorth, "AIC Commentary 27", lotNotTaken},
    AuditRule{"facsimile_marking", Page::collation, kMust, "ABA Guidelines for members 4", marking},
    AuditRule{"facsimile_on_old_paper", Page::collation, kWorth, "common practice", oldPaper},
    AuditRule{"supplied_leaf_removal", Page::collation, kMust, "E.C.C.O. II Art. 9", removal},
    AuditRule{"original_leaf_provenance", Page::collation, kMust,
              "ILAB Code §3; ABA Guidelines for members 4", provenance},
    AuditRule{"facsimile_permission", Page::collation, kWorth, "common practice", permission},
    AuditRule{"supplied_leaf_image", Page::photographs, kWorth, "AIC Commentary 23", image},
    AuditRule{"supplied_leaf_step", Page::collation, kWorth, "AIC Commentary 27", inWhichStep},
    AuditRule{"facsimile_follow_up", Page::book, kWorth, "common practice", followUp},
};

} // namespace

std::span<const AuditRule> facsimileRules() {
    return kRules;
}

} // namespace headcap::core
