// The ways to take a leaf's printed numbers under one account of the leaves before it: as they
// should be, misprinted, or as a jump from which they run on; each with its cost.
#pragma once

#include <array>
#include <cstddef>

#include "core/catchwords/story_state.h"

namespace headcap::core {

struct NumberReadings {
    struct Reading {
        StoryNode node;
        double cost = 0;
    };
    std::array<Reading, 4> readings;
    std::size_t count = 0;
};

class NumberReader {
public:
    // `unit`: by how much the numbers rise from leaf to leaf.
    NumberReader(const BoundLeaf& leaf, int bareBefore, int unit, const BookHabits& habits)
        : m_numbers(leaf.numbers), m_bare(bareBefore), m_unit(unit), m_habits(habits) {}

    [[nodiscard]] NumberReadings read(const StoryNode& node) const;

private:
    [[nodiscard]] int side(std::size_t page) const { return m_unit == 2 && page == 1 ? 1 : 0; }
    [[nodiscard]] bool misses(const StoryState& state, std::size_t page) const;
    double misprints(StoryNode& node) const;
    [[nodiscard]] double jumpCost(const StoryNode& node, std::size_t page) const;
    // The number printed on a page is the right one from here on.
    void adopt(NumberReadings& found, StoryNode node, double cost, std::size_t page) const;
    void adoptWithin(NumberReadings& found, StoryNode node) const;

    const std::array<std::optional<NumberOnPage>, 2>& m_numbers;
    int m_bare;
    int m_unit;
    const BookHabits& m_habits;
};

} // namespace headcap::core
