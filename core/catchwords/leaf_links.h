// What the text says about two leaves that may follow one another: does the catchword of the one
// meet the first words of the other? Costs are in nats: the less likely, the dearer.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/comparison.h"

namespace headcap::core {

struct TurnReading {
    CatchwordVerdict verdict = CatchwordVerdict::doubtful;
    double byChance = 0; // what it costs that a strange page of this book begins so
};
// Nothing where there is no catchword or no text to meet it.
using TurnEvidence = std::optional<TurnReading>;

class LeafLinks {
public:
    explicit LeafLinks(const BoundBook& book);

    // From the last page of one leaf to the first of the other; leaves of book.leaves.
    [[nodiscard]] TurnEvidence between(std::size_t leaf, std::size_t next) const;
    // If the two follow one another in the text, and if they do not.
    [[nodiscard]] double costIfRunsOn(TurnEvidence evidence) const;
    [[nodiscard]] double costIfBroken(TurnEvidence evidence) const;

    [[nodiscard]] std::optional<std::size_t> lastPage(std::size_t leaf) const;
    [[nodiscard]] std::optional<std::size_t> firstPage(std::size_t leaf) const;

private:
    void countFirstWords();
    [[nodiscard]] TurnEvidence compare(std::size_t page, std::size_t next) const;
    [[nodiscard]] double chanceOf(std::string_view firstWords) const;
    [[nodiscard]] bool bears(std::size_t page) const;

    const BoundBook& m_book;
    std::unordered_map<std::u32string, int> m_firstWords;
    double m_differentCost = 4.0; // how rarely this book's catchwords fail within a leaf
};

} // namespace headcap::core
