// How many of each type a part holds, packed into words so that two parts are added, and compared
// with what is wanted, in a few instructions: a field a type, its top bit a guard that a count
// beyond the most wanted runs into.
#pragma once

#include <bit>
#include <cstdint>
#include <vector>

#include "core/cutting/sheet_task.h"

namespace headcap::core {

class PieceCounts {
public:
    explicit PieceCounts(const std::vector<int>& most) {
        int used = 64;
        for (const int limit : most) {
            const int bits = static_cast<int>(std::bit_width(static_cast<unsigned>(limit))) + 1;
            if (used + bits > 64) {
                m_guard.push_back(0);
                m_bias.push_back(0);
                used = 0;
            }
            m_fields.push_back({m_guard.size() - 1, used, bits});
            const std::uint64_t top = std::uint64_t{1} << (bits - 1);
            m_guard.back() |= top << used;
            m_bias.back() |= (top - 1 - static_cast<std::uint64_t>(limit)) << used;
            used += bits;
        }
    }

    [[nodiscard]] std::size_t words() const { return m_guard.size(); }

    void addOne(std::uint64_t* counts, int type) const {
        const Field& field = m_fields[static_cast<std::size_t>(type)];
        counts[field.word] += std::uint64_t{1} << field.shift;
    }
    [[nodiscard]] int count(const std::uint64_t* counts, int type) const {
        const Field& field = m_fields[static_cast<std::size_t>(type)];
        const std::uint64_t mask = (std::uint64_t{1} << field.bits) - 1;
        return static_cast<int>((counts[field.word] >> field.shift) & mask);
    }
    // Whether both together stay within what is wanted.
    [[nodiscard]] bool isWithin(const std::uint64_t* a, const std::uint64_t* b) const {
        std::uint64_t over = 0;
        for (std::size_t i = 0; i < m_guard.size(); ++i) {
            over |= (a[i] + b[i] + m_bias[i]) & m_guard[i];
        }
        return over == 0;
    }
    void add(const std::uint64_t* a, const std::uint64_t* b, std::uint64_t* sum) const {
        for (std::size_t i = 0; i < m_guard.size(); ++i) {
            sum[i] = a[i] + b[i];
        }
    }

private:
    struct Field {
        std::size_t word;
        int shift;
        int bits;
    };
    std::vector<Field> m_fields;
    std::vector<std::uint64_t> m_guard, m_bias;
};

} // namespace headcap::core
