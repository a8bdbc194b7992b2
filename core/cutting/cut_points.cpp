#include "core/cutting/cut_points.h"

#include <algorithm>
#include <numeric>

namespace headcap::core {

namespace {

constexpr std::int64_t kMostTicks = 1 << 22;

struct TypeSides {
    std::vector<std::int64_t> sides;
    int most = 0;
};

std::vector<TypeSides> sidesOf(const SheetTask& task, CutPoints::Side side) {
    std::vector<TypeSides> types(task.most.size());
    for (std::size_t i = 0; i < types.size(); ++i) {
        types[i].most = task.most[i];
    }
    for (const SheetOption& option : task.options) {
        std::vector<std::int64_t>& sides = types[static_cast<std::size_t>(option.type)].sides;
        const std::int64_t length = side == CutPoints::Side::width ? option.width : option.height;
        if (std::ranges::find(sides, length) == sides.end()) {
            sides.push_back(length);
        }
    }
    return types;
}

// A set of lengths as bits, for sums in ticks of their common measure.
class LengthBits {
public:
    explicit LengthBits(std::int64_t full)
        : m_words(static_cast<std::size_t>(full / 64 + 1)), m_full(full) {
        m_words[0] = 1;
    }

    // Adds every length so far plus one of the sides; says whether that gave anything new.
    bool addOnce(const std::vector<std::int64_t>& sides) {
        const std::vector<std::uint64_t> before = m_words;
        for (const std::int64_t side : sides) {
            if (side <= m_full) {
                orShifted(before, side);
            }
        }
        return m_words != before;
    }

    [[nodiscard]] std::vector<std::int64_t> lengths() const {
        std::vector<std::int64_t> found;
        for (std::int64_t i = 0; i <= m_full; ++i) {
            if ((m_words[static_cast<std::size_t>(i / 64)] >> (i % 64)) & 1U) {
                found.push_back(i);
            }
        }
        return found;
    }

private:
    void orShifted(const std::vector<std::uint64_t>& from, std::int64_t by) {
        const auto words = static_cast<std::size_t>(by / 64);
        const auto bits = static_cast<unsigned>(by % 64);
        for (std::size_t i = m_words.size(); i-- > words;) {
            std::uint64_t word = from[i - words] << bits;
            if (bits != 0 && i > words) {
                word |= from[i - words - 1] >> (64 - bits);
            }
            m_words[i] |= word;
        }
    }

    std::vector<std::uint64_t> m_words;
    std::int64_t m_full;
};

} // namespace

std::optional<CutPoints> CutPoints::of(const SheetTask& task, Side side, std::size_t atMost) {
    const std::int64_t full = side == Side::width ? task.width : task.height;
    const std::vector<TypeSides> types = sidesOf(task, side);
    std::int64_t measure = 0;
    for (const TypeSides& type : types) {
        for (const std::int64_t length : type.sides) {
            measure = std::gcd(measure, length);
        }
    }
    if (measure == 0 || full / measure > kMostTicks) {
        return std::nullopt;
    }
    LengthBits bits(full / measure);
    for (const TypeSides& type : types) {
        std::vector<std::int64_t> scaled = type.sides;
        for (std::int64_t& length : scaled) {
            length /= measure;
        }
        for (int copy = 0; copy < type.most && bits.addOnce(scaled); ++copy) {
        }
    }
    std::vector<std::int64_t> at = bits.lengths();
    if (at.size() > atMost) {
        return std::nullopt;
    }
    for (std::int64_t& length : at) {
        length *= measure;
    }
    return CutPoints(std::move(at), full);
}

CutPoints::CutPoints(std::vector<std::int64_t> at, std::int64_t full)
    : m_at(std::move(at)), m_rest(m_at.size() * m_at.size()), m_sum(m_at.size() * m_at.size()),
      m_half(m_at.size()), m_full(full) {
    for (int i = 0; i < size(); ++i) {
        int rest = i;
        int sum = i;
        int half = 0;
        for (int j = 0; j < size(); ++j) {
            while (rest >= 0 && j <= i && this->at(rest) > this->at(i) - this->at(j)) {
                --rest;
            }
            m_rest[cell(i, j)] = static_cast<std::int16_t>(std::max(rest, 0));
            while (sum < size() && this->at(sum) < this->at(i) + this->at(j)) {
                ++sum;
            }
            const bool isPoint = sum < size() && this->at(sum) == this->at(i) + this->at(j);
            m_sum[cell(i, j)] = static_cast<std::int16_t>(isPoint ? sum : -1);
            half += j > 0 && 2 * this->at(j) <= this->at(i) ? 1 : 0;
        }
        m_half[static_cast<std::size_t>(i)] = half;
    }
}

int CutPoints::below(std::int64_t length) const {
    return static_cast<int>(std::ranges::upper_bound(m_at, length) - m_at.begin()) - 1;
}

} // namespace headcap::core
