// Where the leaves of an order stand as they are bound: rows, from 1.
#pragma once

#include <cstddef>
#include <string>

#include "core/catchwords/bound_leaf.h"

namespace headcap::core {

class ReboundRows {
public:
    ReboundRows(const BoundBook& book, const LeafOrder& order) : m_book(book), m_order(order) {}

    [[nodiscard]] int first(std::size_t at) const {
        return static_cast<int>(m_book.leaves[m_order.printed[at]].firstRow()) + 1;
    }
    [[nodiscard]] int before(std::size_t at) const { return first(at) - 1; }
    [[nodiscard]] int after(std::size_t at) const {
        return static_cast<int>(m_book.leaves[m_order.printed[at]].lastRow()) + 2;
    }
    [[nodiscard]] std::string name(int row) const {
        return nameOfRow(m_book.pages, static_cast<std::size_t>(row));
    }

private:
    const BoundBook& m_book;
    const LeafOrder& m_order;
};

} // namespace headcap::core
