// The places along one side of a sheet where a cut can be worth making: every sum of sides of
// pieces, within what is wanted of each (Christofides & Whitlock 1977; Herz 1972).
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/cutting/sheet_task.h"

namespace headcap::core {

class CutPoints {
public:
    enum class Side { width, height };

    // Nothing where there are more than `atMost`: then the sheet must be measured more coarsely.
    [[nodiscard]] static std::optional<CutPoints> of(const SheetTask& task, Side side,
                                                     std::size_t atMost);

    [[nodiscard]] int size() const { return static_cast<int>(m_at.size()); }
    [[nodiscard]] std::int64_t at(int i) const { return m_at[static_cast<std::size_t>(i)]; }
    [[nodiscard]] std::int64_t full() const { return m_full; }
    // The last point not beyond a length ≥ 0.
    [[nodiscard]] int below(std::int64_t length) const;
    // The last point not beyond at(i) − at(j), for j ≤ i.
    [[nodiscard]] int rest(int i, int j) const { return m_rest[cell(i, j)]; }
    // The point at(i) + at(j), or −1 where that is none.
    [[nodiscard]] int sum(int i, int j) const { return m_sum[cell(i, j)]; }
    // How many points i ≥ 1 have 2·at(i) ≤ at(j): cuts beyond the middle only mirror others.
    [[nodiscard]] int half(int j) const { return m_half[static_cast<std::size_t>(j)]; }

private:
    explicit CutPoints(std::vector<std::int64_t> at, std::int64_t full);
    [[nodiscard]] std::size_t cell(int i, int j) const {
        return static_cast<std::size_t>(i) * m_at.size() + static_cast<std::size_t>(j);
    }

    std::vector<std::int64_t> m_at;
    std::vector<std::int16_t> m_rest, m_sum;
    std::vector<int> m_half;
    std::int64_t m_full;
};

} // namespace headcap::core
