// What leaves, rows and numbers of the account are called in the sentences of its findings.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/catchwords/bound_leaf.h"
#include "core/catchwords/leaf_story.h"

namespace headcap::core {

// "C3", "2A1"; "leaf 3 of an unsigned gathering"; empty where no marks tell.
[[nodiscard]] std::string leafName(const StoryLeaf& leaf, int back = 0);

// "a", "a and b", "a, b and c".
[[nodiscard]] std::string joined(const std::vector<std::string>& parts);

class StoryNames {
public:
    StoryNames(const BoundBook& book, const std::vector<StoryLeaf>& story)
        : m_book(book), m_story(story) {}

    [[nodiscard]] const BoundLeaf& bound(std::size_t at) const {
        return m_book.leaves[m_story[at].leaf];
    }
    // Rows from 1.
    [[nodiscard]] std::size_t firstRow(std::size_t at) const { return bound(at).firstRow() + 1; }
    [[nodiscard]] std::size_t lastRowBefore(std::size_t at) const;
    [[nodiscard]] std::string rowName(std::size_t row) const {
        return nameOfRow(m_book.pages, row);
    }
    [[nodiscard]] int unit() const { return m_book.numbering == Numbering::leaves ? 1 : 2; }

    // The signature mark as printed.
    [[nodiscard]] std::string_view markOf(std::size_t at) const;
    // The numbers passed over by so many leaves before this one: "pp. 107–108", "f. 54".
    [[nodiscard]] std::string numbersBefore(std::size_t at, int leaves) const;
    // "(B3 and B4)", "(2)" where no marks tell.
    [[nodiscard]] std::string lackingNames(std::size_t at) const;
    // "the catchword “que” does not meet the next page".
    [[nodiscard]] std::string catchwordFails(std::size_t at) const;

private:
    const BoundBook& m_book;
    const std::vector<StoryLeaf>& m_story;
};

} // namespace headcap::core
