// Builds of a search by the pieces they hold. Inside of the search.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace headcap::core {

// Builds by what they hold, to find one of the same pieces that is no larger.
class BuildsByCounts {
public:
    explicit BuildsByCounts(std::size_t words) : m_words(words), m_heads(1 << 12, -1) {}

    // Where the chain of these counts begins; −1 where there is none.
    int& head(const std::uint64_t* counts, const std::vector<std::uint64_t>& all) {
        if (m_used * 2 > m_heads.size()) {
            grow(all);
        }
        int& found = m_heads[slot(counts, all)];
        m_used += found < 0 ? 1 : 0;
        return found;
    }

private:
    [[nodiscard]] std::size_t slot(const std::uint64_t* counts,
                                   const std::vector<std::uint64_t>& all) const {
        std::uint64_t hash = 0x9E3779B97F4A7C15ULL;
        for (std::size_t i = 0; i < m_words; ++i) {
            hash = (hash ^ counts[i]) * 0xBF58476D1CE4E5B9ULL;
            hash ^= hash >> 29;
        }
        const std::size_t mask = m_heads.size() - 1;
        std::size_t at = hash & mask;
        while (m_heads[at] >= 0 &&
               !std::equal(counts, counts + m_words,
                           &all[static_cast<std::size_t>(m_heads[at]) * m_words])) {
            at = (at + 1) & mask;
        }
        return at;
    }
    void grow(const std::vector<std::uint64_t>& all) {
        std::vector<int> old(m_heads.size() * 4, -1);
        old.swap(m_heads);
        for (const int head : old) {
            if (head >= 0) {
                m_heads[slot(&all[static_cast<std::size_t>(head) * m_words], all)] = head;
            }
        }
    }

    std::size_t m_words;
    std::size_t m_used = 0;
    std::vector<int> m_heads;
};

} // namespace headcap::core
