#include <array>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "core/catchwords/inferred_make_up.h"

namespace headcap::core {
namespace {

std::string roman(int value) {
    static constexpr std::pair<int, const char*> kParts[] = {
        {1000, "m"}, {900, "cm"}, {500, "d"}, {400, "cd"}, {100, "c"}, {90, "xc"}, {50, "l"},
        {40, "xl"},  {10, "x"},   {9, "ix"},  {5, "v"},    {4, "iv"},  {1, "i"}};
    std::string text;
    for (const auto& [part, letters] : kParts) {
        for (; value >= part; value -= part)
            text += letters;
    }
    return text;
}

// One page (or, foliated, one leaf) after another, as the account has it.
struct ExtentPage {
    std::optional<NumberOnPage> number; // as it should be, where one is printed
    bool restarts = false;
};

class ExtentReader {
public:
    ExtentReader(const BoundBook& book, const std::vector<StoryLeaf>& story)
        : m_perLeaf(book.numbering == Numbering::leaves ? 1 : 2) {
        for (const StoryLeaf& leaf : story)
            addLeaf(book.leaves[leaf.leaf], leaf);
    }

    std::string read() {
        for (const ExtentPage& page : m_pages) {
            if (page.number)
                numbered(page);
            else
                ++m_unnumbered;
        }
        closeSequence();
        closeUnnumbered(0);
        std::string text;
        for (const std::string& part : m_parts)
            text += (text.empty() ? "" : ", ") + part;
        return text.empty() ? text : fmt::format("{} {}", text, m_perLeaf == 1 ? "leaves" : "p.");
    }

private:
    void addLeaf(const BoundLeaf& bound, const StoryLeaf& leaf) {
        const Arrival& arrival = leaf.arrival;
        const int between = arrival.lacking() + arrival.countedBefore + arrival.countedAfter;
        if (!m_pages.empty())
            m_pages.resize(m_pages.size() + static_cast<std::size_t>(between * m_perLeaf));
        for (int side = 0; side < m_perLeaf; ++side) {
            const auto page = static_cast<std::size_t>(side);
            ExtentPage entry;
            const auto& number = bound.numbers[page];
            if (number && !number->supplied && !arrival.misprinted[page] && leaf.expectedNumber)
                entry.number = NumberOnPage{*leaf.expectedNumber + side, number->style, false};
            entry.restarts = side == 0 && arrival.numbersRestart;
            m_pages.push_back(entry);
        }
    }

    void numbered(const ExtentPage& page) {
        const NumberOnPage& number = *page.number;
        const bool runsOn = m_last && m_last->style == number.style &&
                            number.value > m_last->value && !page.restarts;
        if (!runsOn) {
            closeSequence();
            // The first pages of a sequence often bear no number, but are counted.
            const int counted = std::min(m_unnumbered, number.value - 1);
            closeUnnumbered(counted);
            m_first = number.value - counted;
            m_count = counted;
        } else {
            m_count += m_unnumbered;
        }
        m_unnumbered = 0;
        ++m_count;
        m_last = number;
    }

    void closeSequence() {
        if (!m_last)
            return;
        const auto write = [&](int value) {
            return m_last->style == PrintedNumerals::roman ? roman(value)
                                                           : fmt::format("{}", value);
        };
        std::string part = m_first == 1
                               ? write(m_last->value)
                               : fmt::format("{}-{}", write(m_first), write(m_last->value));
        if (m_last->value - m_first + 1 != m_count)
            part += fmt::format(" [i.e. {}]", write(m_first + m_count - 1));
        m_parts.push_back(std::move(part));
        m_last.reset();
    }

    void closeUnnumbered(int countedElsewhere) {
        if (m_unnumbered > countedElsewhere)
            m_parts.push_back(fmt::format("[{}]", m_unnumbered - countedElsewhere));
        m_unnumbered = 0;
    }

    int m_perLeaf;
    std::vector<ExtentPage> m_pages;
    std::vector<std::string> m_parts;
    std::optional<NumberOnPage> m_last;
    int m_first = 1;
    int m_count = 0;
    int m_unnumbered = 0;
};

} // namespace

std::string extentOf(const BoundBook& book, const std::vector<StoryLeaf>& story) {
    return ExtentReader(book, story).read();
}

} // namespace headcap::core
