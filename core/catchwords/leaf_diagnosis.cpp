#include "core/catchwords/leaf_diagnosis.h"

#include <algorithm>

#include "core/catchwords/book_habits.h"
#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/inferred_make_up.h"
#include "core/catchwords/leaf_links.h"
#include "core/catchwords/leaf_story.h"
#include "core/catchwords/rebinding.h"
#include "core/catchwords/story_evidence.h"
#include "core/catchwords/story_findings.h"

namespace headcap::core {
namespace {

bool agrees(const TurnEvidence& turn) {
    return turn && turn->verdict <= CatchwordVerdict::variant;
}

// A plate with words on it: no number, mark or catchword, and the text passes over it.
bool isPlate(const BoundBook& book, const LeafLinks& links, std::size_t leaf) {
    const BoundLeaf& bound = book.leaves[leaf];
    if (bound.mark || bound.printsNumber() || leaf == 0)
        return false;
    for (const auto& row : {bound.recto, bound.verso}) {
        if (row && !book.pages[*row].catchword.empty())
            return false;
    }
    return leaf + 1 < book.leaves.size() && !agrees(links.between(leaf - 1, leaf)) &&
           agrees(links.between(leaf - 1, leaf + 1));
}

// The leaves that bear print of the text, and how many others stand before each.
LeafOrder orderOf(const BoundBook& book, const LeafLinks& links) {
    LeafOrder order;
    int bare = 0;
    for (std::size_t leaf = 0; leaf < book.leaves.size(); ++leaf) {
        if (book.leaves[leaf].unprinted || isPlate(book, links, leaf)) {
            ++bare;
            continue;
        }
        order.printed.push_back(leaf);
        order.unprintedBefore.push_back(bare);
        bare = 0;
    }
    return order;
}

} // namespace

LeafDiagnosis diagnoseLeaves(std::span<const PageRow> pages) {
    LeafDiagnosis diagnosis;
    const BoundBook book = bindLeaves(pages);
    const LeafLinks links(book);
    const Rebinding rebound = putInOrder(book, links, orderOf(book, links));
    const LeafOrder& order = rebound.order;
    const BookHabits habits(book, order);
    const auto story =
        withoutUnprovenLosses(book, order, habits, tellStory(book, order, links, habits));
    diagnosis.gatherings = gatheringsOf(book, habits, story);
    diagnosis.formula = formulaOf(diagnosis.gatherings);
    diagnosis.extent = extentOf(book, story);
    diagnosis.findings = findingsOf(book, order, habits, story);
    diagnosis.findings.insert(diagnosis.findings.end(), rebound.findings.begin(),
                              rebound.findings.end());
    std::ranges::stable_sort(diagnosis.findings, {}, &LeafFinding::afterRow);
    return diagnosis;
}

std::string_view wordOf(LeafFindingKind kind) {
    switch (kind) {
    case LeafFindingKind::leafLacking:
        return "leaf_lacking";
    case LeafFindingKind::misnumbered:
        return "misnumbered";
    case LeafFindingKind::misbound:
        return "misbound";
    case LeafFindingKind::duplicate:
        return "duplicate";
    case LeafFindingKind::missigned:
        return "missigned";
    case LeafFindingKind::unexplained:
        return "unexplained";
    }
    return {};
}

} // namespace headcap::core
