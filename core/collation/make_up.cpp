#include "core/collation/make_up.h"

#include <algorithm>

namespace headcap::core {
namespace {

bool holds(const std::vector<int>& positions, int position) {
    return std::find(positions.begin(), positions.end(), position) != positions.end();
}

// Lays the leaves of one gathering, and of those inserted in it, behind each other.
class LeafLayer {
public:
    explicit LeafLayer(const MakeUp& makeUp)
        : m_makeUp(makeUp), m_guests(makeUp.gatherings.size()) {
        for (std::size_t i = 0; i < makeUp.gatherings.size(); ++i) {
            if (const auto& inside = makeUp.gatherings[i].inside) {
                m_guests[inside->host].push_back(i);
            }
        }
    }

    std::vector<Leaf> lay() {
        m_leaves.reserve(static_cast<std::size_t>(tally(m_makeUp).known));
        for (std::size_t i = 0; i < m_makeUp.gatherings.size(); ++i) {
            if (!m_makeUp.gatherings[i].inside) {
                gathering(i);
            }
        }
        return std::move(m_leaves);
    }

private:
    void gathering(std::size_t index) {
        const Gathering& one = m_makeUp.gatherings[index];
        std::vector<std::size_t> at(static_cast<std::size_t>(one.called) + 1, kNone);
        for (int position = 1; position <= one.called; ++position) {
            const bool described = one.only.empty() || holds(one.only, position);
            if (described && !holds(one.cancelled, position)) {
                at[static_cast<std::size_t>(position)] = m_leaves.size();
                m_leaves.push_back({index, position, 0, std::nullopt, holds(one.lacking, position),
                                    holds(one.replaced, position), holds(one.blank, position)});
            }
            insertions(index, position, position == one.called);
        }
        if (one.called == 0) {
            insertions(index, 0, false);
        }
        join(one, at);
    }

    void insertions(std::size_t index, int position, bool last) {
        const Gathering& one = m_makeUp.gatherings[index];
        const auto here = [&](int after) {
            return after == position || (last && (after == 0 || after > position));
        };
        int number = 0;
        for (const AddedLeaves& added : one.added) {
            if (!here(added.after)) {
                continue;
            }
            const std::size_t from = m_leaves.size();
            for (int i = 0; i < added.count; ++i) {
                m_leaves.push_back({index, position, ++number});
            }
            for (std::size_t i = from; added.conjugate && i < m_leaves.size(); ++i) {
                const std::size_t other = from + m_leaves.size() - 1 - i;
                m_leaves[i].conjugate = other == i ? std::nullopt : std::optional(other);
            }
        }
        for (const std::size_t guest : m_guests[index]) {
            if (here(m_makeUp.gatherings[guest].inside->after)) {
                gathering(guest);
            }
        }
    }

    // Leaf i of n is one piece of paper with leaf n + 1 - i. In an odd gathering some leaf is a
    // singleton and the formula does not say which: no fold is certain. A leaf that replaces
    // another is not on the old fold.
    void join(const Gathering& one, const std::vector<std::size_t>& at) {
        if (one.called % 2 != 0 || one.singletons) {
            return;
        }
        for (int position = 1; position <= one.called / 2; ++position) {
            const std::size_t left = at[static_cast<std::size_t>(position)];
            const std::size_t right = at[static_cast<std::size_t>(one.called + 1 - position)];
            if (left == kNone || right == kNone ||
                m_leaves[left].replaced != m_leaves[right].replaced) {
                continue;
            }
            m_leaves[left].conjugate = right;
            m_leaves[right].conjugate = left;
        }
    }

    static constexpr std::size_t kNone = static_cast<std::size_t>(-1);
    const MakeUp& m_makeUp;
    std::vector<std::vector<std::size_t>> m_guests;
    std::vector<Leaf> m_leaves;
};

} // namespace

std::vector<Leaf> leavesOf(const MakeUp& makeUp) {
    return LeafLayer(makeUp).lay();
}

std::optional<int> idealLeaves(const Gathering& gathering) {
    if (gathering.called == 0) {
        return std::nullopt;
    }
    int count = gathering.only.empty() ? gathering.called : static_cast<int>(gathering.only.size());
    count -= static_cast<int>(gathering.cancelled.size());
    for (const AddedLeaves& added : gathering.added) {
        count += added.count;
    }
    return count;
}

int lackingLeaves(const Gathering& gathering) {
    return static_cast<int>(gathering.lacking.size());
}

LeafTally tally(const MakeUp& makeUp) {
    LeafTally out;
    for (const Gathering& gathering : makeUp.gatherings) {
        if (const std::optional<int> leaves = idealLeaves(gathering)) {
            out.known += *leaves;
            out.lacking += lackingLeaves(gathering);
            out.blank += static_cast<int>(gathering.blank.size());
        } else {
            ++out.unknown;
        }
    }
    return out;
}

SignedLeaf refOf(const MakeUp& makeUp, const Leaf& leaf) {
    Signature signature = makeUp.gatherings[leaf.gathering].signature;
    signature.inferred = false;
    return {signature, leaf.position, leaf.added, Side::both};
}

} // namespace headcap::core
