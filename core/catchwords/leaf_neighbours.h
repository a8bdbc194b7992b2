// What text, numbers and marks say of two leaves as neighbours, whatever order they are bound in.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <unordered_map>

#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/leaf_links.h"

namespace headcap::core {

// Of the leaves of an order, named by their places in it; the order may change between questions.
class LeafNeighbours {
public:
    LeafNeighbours(const BoundBook& book, const LeafLinks& links, const LeafOrder& order)
        : m_book(book), m_links(links), m_order(order),
          m_unit(book.numbering == Numbering::leaves ? 1 : 2) {}

    // In nats: the less likely that the one follows the other, the dearer.
    double cost(std::size_t at, std::size_t next) { return neighbours(at, next).cost; }
    bool textAgrees(std::size_t at, std::size_t next) { return neighbours(at, next).textAgrees; }
    // Something speaks for the turn, not only nothing against it.
    bool agree(std::size_t at, std::size_t next);

private:
    struct Neighbours {
        double cost = 0;
        bool textAgrees = false;
        bool numbersAgree = false;
    };

    // The same pairs are asked for again and again.
    const Neighbours& neighbours(std::size_t at, std::size_t next);
    [[nodiscard]] Neighbours weigh(std::size_t at, std::size_t next) const;
    [[nodiscard]] std::optional<int> numberOf(std::size_t at) const;
    [[nodiscard]] double numberBreak(std::size_t next, int jump) const;
    [[nodiscard]] double markBreak(std::size_t at, std::size_t next) const;

    const BoundBook& m_book;
    const LeafLinks& m_links;
    const LeafOrder& m_order;
    int m_unit;
    std::unordered_map<std::uint64_t, Neighbours> m_neighbours;
};

} // namespace headcap::core
