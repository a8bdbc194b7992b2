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
    BookHabits(const BoundBook& book, const LeafOrder& order);

    [[nodiscard]] bool hasMarks() const { return m_hasMarks; }
    // That a gathering has so many leaves.
    [[nodiscard]] double foldCost(int leaves) const;
    // Lengths that are usual, the commonest first.
    [[nodiscard]] const std::vector<int>& usualFolds() const { return m_usual; }
    [[nodiscard]] bool isUsualFold(int leaves) const;
    [[nodiscard]] double unsignedCost(int position) const;
    [[nodiscard]] double signedCost(int position) const;

    // That so many of the bare leaves in one place belong to gatherings and numbers, the others
    // not: blanks do, plates do not.
    [[nodiscard]] double bareCost(int bare, int counted) const;
    // Elsewhere than in one place the book counts its bare leaves oftener than it passes them over.
    [[nodiscard]] bool countsBareElsewhere() const { return m_countsBareElsewhere; }

private:
    void learnBare(const BoundBook& book, const LeafOrder& order);
    void learnFolds(const BoundBook& book, const std::vector<std::size_t>& printed);
    void learnSigning(const BoundBook& book, const std::vector<std::size_t>& printed);

    bool m_hasMarks = false;
    bool m_countsBareElsewhere = false;
    double m_countedCost = 0;
    double m_platesCost = 0;
    std::vector<double> m_foldCost;
    std::vector<int> m_usual;
    std::vector<double> m_signed; // the share of gatherings signed at each position
};

} // namespace headcap::core
