#include "core/catchwords/leaf_links.h"

#include <algorithm>
#include <cmath>

#include "core/catchwords/letters.h"

namespace headcap::core {
namespace {

using Verdict = CatchwordVerdict;

constexpr double kVariantCost = 0.3;
constexpr double kDoubtfulCost = 1.5;
constexpr double kVariantMoreLikely = 1.0;
constexpr double kDoubtfulByChance = 1.0;
constexpr double kReadByCollator = 6.0;

} // namespace

LeafLinks::LeafLinks(const BoundBook& book) : m_book(book) {
    countFirstWords();
    // Within a leaf nothing can be lost: there the printer's own faults are counted.
    int compared = 0;
    int different = 0;
    for (const BoundLeaf& leaf : book.leaves) {
        if (!leaf.recto || !leaf.verso)
            continue;
        if (const auto verdict = compare(*leaf.recto, *leaf.verso)) {
            ++compared;
            different += verdict->verdict == Verdict::different ? 1 : 0;
        }
    }
    const double rate = (different + 1.0) / (compared + 60.0);
    m_differentCost = std::clamp(-std::log(rate), 1.5, 4.5);
}

bool LeafLinks::bears(std::size_t page) const {
    const PageRow& row = m_book.pages[page];
    return !row.firstWords.empty() || !row.catchword.empty() || row.isPrinted;
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
        return TurnReading{*from.runsOn ? Verdict::same : Verdict::different, kReadByCollator};
    if (from.catchword.empty() || to.firstWords.empty())
        return std::nullopt;
    const auto found =
        compareCatchword({from.catchword, to.firstWords, from.wordsBefore, to.runningHead});
    return TurnReading{found.verdict, chanceOf(to.firstWords)};
}

void LeafLinks::countFirstWords() {
    for (const PageRow& page : m_book.pages) {
        if (!page.firstWords.empty())
            ++m_firstWords[readLetters(page.firstWords, 1).plain];
    }
}

// Many pages begin with "Die": that a strange one does is no wonder.
double LeafLinks::chanceOf(std::string_view firstWords) const {
    const auto found = m_firstWords.find(readLetters(firstWords, 1).plain);
    const int others = found == m_firstWords.end() ? 0 : found->second - 1;
    const double rate = (others + 0.3) / (static_cast<double>(m_book.pages.size()) + 20.0);
    return std::clamp(-std::log(rate), 2.5, 6.0);
}

TurnEvidence LeafLinks::between(std::size_t leaf, std::size_t next) const {
    const auto page = lastPage(leaf);
    const auto following = firstPage(next);
    return page && following ? compare(*page, *following) : std::nullopt;
}

double LeafLinks::costIfRunsOn(TurnEvidence evidence) const {
    if (!evidence)
        return 0;
    switch (evidence->verdict) {
    case Verdict::same:
        return 0;
    case Verdict::variant:
        return kVariantCost;
    case Verdict::doubtful:
        return kDoubtfulCost;
    case Verdict::different:
        return m_differentCost;
    }
    return 0;
}

double LeafLinks::costIfBroken(TurnEvidence evidence) const {
    if (!evidence)
        return 0;
    switch (evidence->verdict) {
    case Verdict::same:
        return evidence->byChance;
    case Verdict::variant:
        return evidence->byChance - kVariantMoreLikely;
    case Verdict::doubtful:
        return kDoubtfulByChance;
    case Verdict::different:
        return 0;
    }
    return 0;
}

} // namespace headcap::core
