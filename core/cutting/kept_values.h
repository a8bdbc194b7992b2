// The same table of rectangles as RelaxedValues, but each keeps one way of cutting that never takes
// more of a type than is wanted. Not the best there is: a good one, and with other prices another.
#pragma once

#include <cstdint>
#include <vector>

#include "core/cutting/piece_counts.h"
#include "core/cutting/relaxed_values.h"

namespace headcap::core {

class KeptValues {
public:
    KeptValues(const SheetTask& task, const CutGrid& grid);

    // The way kept for the whole sheet, by worth of each type (value less price). False: the budget
    // ran out.
    [[nodiscard]] bool solve(const std::vector<double>& worth, SearchBudget& budget);
    [[nodiscard]] CutTree trace() const;

private:
    enum class From : std::uint8_t { nothing, narrower, lower, piece, sideBySide, above };
    struct Cell {
        double worth = 0;
        std::int32_t detail = 0; // the option, or the point of the cut
        From from = From::nothing;
    };

    [[nodiscard]] const std::uint64_t* countsAt(std::size_t cell) const {
        return &m_counts[cell * m_packing.words()];
    }
    void placePieces(const std::vector<double>& worth);
    void consider(std::size_t cell, std::size_t a, std::size_t b, From from, int detail);
    void inherit(std::size_t cell, std::size_t other, From from);
    int traceFrom(int x, int y, CutTree& tree) const;

    const SheetTask& m_task;
    const CutGrid& m_grid;
    PieceCounts m_packing;
    std::vector<Cell> m_cells;
    std::vector<std::uint64_t> m_counts;
};

} // namespace headcap::core
