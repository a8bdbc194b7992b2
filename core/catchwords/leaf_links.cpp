#include "core/catchwords/leaf_links.h"

#include <algorithm>
#include <cmath>

namespace headcap::core {
namespace {

using Verdict = CatchwordVerdict;

constexpr double kVariantCost = 0.3;
constexpr double kDoubtfulCost = 1.5;
constexpr double kSameByChance = 5.0; // a catchword meets a strange page in under one of a hundred
constexpr double kVariantByChance = 4.0;
constexpr double kDoubtfulByChance = 1.0;

} // namespace

LeafLinks::LeafLinks(const BoundBook& book) : m_book(book) {
    // Within a leaf nothing can be lost: there the printer's own faults are counted.
    int compared = 0;
    int different = 0;
    for (const BoundLeaf& leaf : book.leaves) {
        if (!leaf.recto || !leaf.verso)
            continue;
        if (const auto verdict = compare(*leaf.recto, *leaf.verso)) {
            ++compared;
            different += *verdict == Verdict::different ? 1 : 0;
        }
    }
    const double rate = (different + 1.0) / (compared + 60.0);
    m_differentCost = std::clamp(-std::log(rate), 1.5, 4.5);
}

bool LeafLinks::bears(std::size_t page) const {
    const PageRow& row = m_book.pages[page];
    return !row.firstWords.empty() || !row.catchword.empty();
}

std::optional<std::size_t> LeafLinks::lastPage(std::size_t leaf) const {
    const BoundLeaf& bound = m_book.leaves[leaf];
    if (bound.verso && (bears(*bound.verso) || !bound.recto))
        return bound.verso;
    return bound.recto;
}

std::optional<std::size_t> LeafLinks::firstPage(std::size_t leaf) const {
    const BoundLeaf& bound = m_book.leaves[leaf];
    if (bound.recto && (bears(*bound.recto) || !bound.verso))
        return bound.recto;
    return bound.verso;
}

TurnEvidence LeafLinks::compare(std::size_t page, std::size_t next) const {
    const PageRow& from = m_book.pages[page];
    const PageRow& to = m_book.pages[next];
    if (from.runsOn && next == page + 1)
        return *from.runsOn ? Verdict::same : Verdict::different;
    if (from.catchword.empty() || to.firstWords.empty())
        return std::nullopt;
    return compareCatchword({from.catchword, to.firstWords, from.wordsBefore, to.runningHead})
        .verdict;
}

TurnEvidence LeafLinks::between(std::size_t leaf, std::size_t next) const {
    const auto page = lastPage(leaf);
    const auto following = firstPage(next);
    return page && following ? compare(*page, *following) : std::nullopt;
}

double LeafLinks::costIfRunsOn(TurnEvidence evidence) const {
    if (!evidence)
        return 0;
    switch (*evidence) {
    case Verdict::same: return 0;
    case Verdict::variant: return kVariantCost;
    case Verdict::doubtful: return kDoubtfulCost;
    case Verdict::different: return m_differentCost;
    }
    return 0;
}

double LeafLinks::costIfBroken(TurnEvidence evidence) const {
    if (!evidence)
        return 0;
    switch (*evidence) {
    case Verdict::same: return kSameByChance;
    case Verdict::variant: return kVariantByChance;
    case Verdict::doubtful: return kDoubtfulByChance;
    case Verdict::different: return 0;
    }
    return 0;
}

} // namespace headcap::core
