// How this book was made, as far as its own marks tell before anything is explained: how many
// leaves a gathering has, which of them are signed. Costs are in nats.
#pragma once

#include <cstddef>
#include <vector>

#include "core/catchwords/bound_leaf.h"

namespace headcap::core {

inline constexpr int kMostLeavesInGathering = 32;

class BookHabits {
public:
    // `printed` names the leaves of the book that bear print, in the order to be explained.
    BookHabits(const BoundBook& book, const std::vector<std::size_t>& printed);

    [[nodiscard]] bool hasMarks() const { return m_hasMarks; }
    // That a gathering has so many leaves.
    [[nodiscard]] double foldCost(int leaves) const;
    // Lengths that are usual, the commonest first.
    [[nodiscard]] const std::vector<int>& usualFolds() const { return m_usual; }
    [[nodiscard]] bool isUsualFold(int leaves) const;
    [[nodiscard]] double unsignedCost(int position) const;
    [[nodiscard]] double signedCost(int position) const;

private:
    void learnFolds(const BoundBook& book, const std::vector<std::size_t>& printed);
    void learnSigning(const BoundBook& book, const std::vector<std::size_t>& printed);

    bool m_hasMarks = false;
    std::vector<double> m_foldCost;
    std::vector<int> m_usual;
    std::vector<double> m_signed; // the share of gatherings signed at each position
};

} // namespace headcap::core
