#include <algorithm>
#include <utility>

#include "core/collation/leaf_places.h"

namespace headcap::core {
namespace {

using Located = tl::expected<LeafPlace, PlaceError>;

tl::unexpected<PlaceError> fail(PlaceProblem problem) {
    return tl::unexpected(PlaceError{problem, 0, {}});
}

tl::expected<std::size_t, PlaceError> gatheringOf(const LaidBook& book, const Signature& mark) {
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < book.makeUp.gatherings.size(); ++i) {
        if (sameMark(book.makeUp.gatherings[i].signature, mark)) {
            if (found) {
                return fail(PlaceProblem::severalPlaces);
            }
            found = i;
        }
    }
    if (!found) {
        return fail(PlaceProblem::noSuchGathering);
    }
    if (book.makeUp.gatherings[*found].called == 0) {
        return fail(PlaceProblem::sizeUnknown);
    }
    return *found;
}

// Gathers the leaves and plates of one item after another.
class SetLocator {
public:
    explicit SetLocator(const LaidBook& book) : m_book(book) {}

    tl::expected<void, PlaceError> add(const LeafSetItem& item) {
        if (const auto* span = std::get_if<LeafSpan>(&item)) {
            return std::holds_alternative<PlateRef>(span->first) ? plates(*span) : leaves(*span);
        }
        if (const auto* span = std::get_if<GatheringSpan>(&item)) {
            return gatherings(*span);
        }
        if (const auto* counted = std::get_if<CountOf>(&item)) {
            (counted->what == Countable::plates   ? m_out.platesUnplaced
             : counted->what == Countable::leaves ? m_out.leavesUnplaced
                                                  : m_out.gatheringsUnplaced) += counted->count;
            return {};
        }
        range(0, m_book.leaves.size());
        return {};
    }

    LocatedSet take() {
        std::sort(m_out.leaves.begin(), m_out.leaves.end());
        m_out.leaves.erase(std::unique(m_out.leaves.begin(), m_out.leaves.end()),
                           m_out.leaves.end());
        return std::move(m_out);
    }

private:
    tl::expected<void, PlaceError> leaves(const LeafSpan& span) {
        const Located first = locate(m_book, span.first);
        const Located last = span.last ? locate(m_book, *span.last) : first;
        if (!first || !last) {
            return tl::unexpected((first ? last : first).error());
        }
        if (last->leaf < first->leaf) {
            return fail(PlaceProblem::backwards);
        }
        range(first->leaf, last->leaf + 1);
        return {};
    }

    tl::expected<void, PlaceError> plates(const LeafSpan& span) {
        const auto find = [&](const LeafRef& ref) {
            const auto* plate = std::get_if<PlateRef>(&ref);
            return plate == nullptr
                       ? m_book.plates.end()
                       : std::find(m_book.plates.begin(), m_book.plates.end(), plate->label);
        };
        const auto first = find(span.first);
        const auto last = span.last ? find(*span.last) : first;
        if (first == m_book.plates.end() || last == m_book.plates.end()) {
            return fail(PlaceProblem::noSuchPlate);
        }
        if (last < first) {
            return fail(PlaceProblem::backwards);
        }
        m_out.plates.insert(m_out.plates.end(), first, last + 1);
        return {};
    }

    tl::expected<void, PlaceError> gatherings(const GatheringSpan& span) {
        const auto first = gatheringOf(m_book, span.first);
        const auto last = span.last ? gatheringOf(m_book, *span.last) : first;
        if (!first || !last) {
            return tl::unexpected((first ? last : first).error());
        }
        if (*last < *first) {
            return fail(PlaceProblem::backwards);
        }
        for (std::size_t i = 0; i < m_book.leaves.size(); ++i) {
            const std::size_t gathering = m_book.leaves[i].gathering;
            if (gathering >= *first && gathering <= *last) {
                m_out.leaves.push_back(i);
            }
        }
        return {};
    }

    void range(std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            m_out.leaves.push_back(i);
        }
    }

    const LaidBook& m_book;
    LocatedSet m_out;
};

} // namespace

tl::expected<LocatedSet, PlaceError> locate(const LaidBook& book, const LeafSet& set) {
    SetLocator locator(book);
    for (std::size_t i = 0; i < set.items.size(); ++i) {
        if (auto added = locator.add(set.items[i]); !added) {
            added.error().item = i;
            return tl::unexpected(added.error());
        }
    }
    return locator.take();
}

LeafSet toLeafSet(const LaidBook& book, std::vector<std::size_t> leaves) {
    std::sort(leaves.begin(), leaves.end());
    leaves.erase(std::unique(leaves.begin(), leaves.end()), leaves.end());
    LeafSet out;
    if (!leaves.empty() && leaves.size() == book.leaves.size()) {
        out.items.push_back(WholeBook{});
        return out;
    }
    std::vector<std::size_t> sizes(book.makeUp.gatherings.size());
    for (const Leaf& leaf : book.leaves) {
        ++sizes[leaf.gathering];
    }
    const auto mark = [&](std::size_t gathering) {
        Signature signature = book.makeUp.gatherings[gathering].signature;
        signature.inferred = false;
        return signature;
    };
    for (std::size_t i = 0; i < leaves.size();) {
        const std::size_t gathering = book.leaves[leaves[i]].gathering;
        std::size_t end = i + 1;
        while (end < leaves.size() && leaves[end] == leaves[end - 1] + 1 &&
               book.leaves[leaves[end]].gathering == gathering) {
            ++end;
        }
        if (end - i == sizes[gathering] && sizes[gathering] > 1) {
            auto* before =
                out.items.empty() ? nullptr : std::get_if<GatheringSpan>(&out.items.back());
            const std::size_t previous = i == 0 ? gathering : book.leaves[leaves[i - 1]].gathering;
            if (before != nullptr && leaves[i - 1] + 1 == leaves[i] && previous + 1 == gathering) {
                before->last = mark(gathering);
            } else {
                out.items.emplace_back(GatheringSpan{mark(gathering), std::nullopt});
            }
        } else {
            LeafSpan span{asSigned(book, {leaves[i]}), std::nullopt};
            if (end - i > 1) {
                span.last = asSigned(book, {leaves[end - 1]});
            }
            out.items.emplace_back(std::move(span));
        }
        i = end;
    }
    return out;
}

} // namespace headcap::core
