#include "core/catchwords/inferred_make_up.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

namespace headcap::core {
namespace {

std::string superscript(int value) {
    static constexpr std::array<const char*, 10> kFigures = {"⁰", "¹", "²", "³", "⁴",
                                                             "⁵", "⁶", "⁷", "⁸", "⁹"};
    std::string text;
    for (const char figure : fmt::format("{}", value))
        text += kFigures[static_cast<std::size_t>(figure - '0')];
    return text;
}

bool opensGathering(const std::vector<StoryLeaf>& story, std::size_t at) {
    return at == 0 || story[at].arrival.turn != Turn::sameGathering;
}

InferredGathering wholeGatheringLacking(const GatheringRank& rank, int leaves, int row) {
    InferredGathering lost{.signature = signatureOf(rank),
                           .leaves = leaves,
                           .lacking = leaves,
                           .firstRow = row,
                           .lastRow = row - 1,
                           .rank = rank};
    for (int leaf = 1; leaf <= leaves; ++leaf)
        lost.lackingLeaves.push_back(leaf);
    return lost;
}

class GatheringReader {
public:
    GatheringReader(const BoundBook& book, const BookHabits& habits,
                    const std::vector<StoryLeaf>& story)
        : m_book(book), m_habits(habits), m_story(story) {}

    std::vector<InferredGathering> read() {
        std::size_t begin = 0;
        for (std::size_t at = 1; at <= m_story.size(); ++at) {
            if (at < m_story.size() && !opensGathering(m_story, at))
                continue;
            if (at > begin)
                close(begin, at);
            begin = at;
        }
        return std::move(m_gatherings);
    }

private:
    void close(std::size_t begin, std::size_t end) {
        InferredGathering gathering;
        gathering.rank = m_story[begin].gathering;
        if (gathering.rank)
            gathering.signature = signatureOf(*gathering.rank);
        int length = m_story[end - 1].position;
        if (end < m_story.size()) {
            const Arrival& next = m_story[end].arrival;
            const int atEnd = next.gatheringsLacking > 0 ? 0 : next.lackingBefore;
            length += next.countedBefore + atEnd;
            for (int leaf = length - atEnd + 1; leaf <= length; ++leaf)
                gathering.lackingLeaves.push_back(leaf);
        }
        for (std::size_t at = begin; at < end; ++at) {
            const StoryLeaf& leaf = m_story[at];
            for (int back = leaf.arrival.lackingAfter; back >= 1; --back)
                gathering.lackingLeaves.push_back(leaf.position - back);
            const auto& mark = m_book.leaves[leaf.leaf].mark;
            gathering.marked = gathering.marked || (mark && !leaf.arrival.missigned);
        }
        std::ranges::sort(gathering.lackingLeaves);
        gathering.leaves = length;
        gathering.lacking = static_cast<int>(gathering.lackingLeaves.size());
        gathering.firstRow = static_cast<int>(m_book.leaves[m_story[begin].leaf].firstRow()) + 1;
        gathering.lastRow = static_cast<int>(m_book.leaves[m_story[end - 1].leaf].lastRow()) + 1;
        gathering.sure = gathering.marked && m_habits.isUsualFold(length);
        m_gatherings.push_back(std::move(gathering));
        loseWhole(end);
    }

    void loseWhole(std::size_t end) {
        if (end >= m_story.size())
            return;
        const Arrival& next = m_story[end].arrival;
        auto rank = m_story[end - 1].gathering;
        for (int lost = 0; lost < next.gatheringsLacking && rank; ++lost) {
            rank = nextGathering(*rank);
            m_gatherings.push_back(wholeGatheringLacking(
                *rank, next.lackingBefore / next.gatheringsLacking,
                static_cast<int>(m_book.leaves[m_story[end].leaf].firstRow()) + 1));
        }
    }

    const BoundBook& m_book;
    const BookHabits& m_habits;
    const std::vector<StoryLeaf>& m_story;
    std::vector<InferredGathering> m_gatherings;
};

std::string lackingOf(const InferredGathering& gathering) {
    if (gathering.lacking == gathering.leaves)
        return fmt::format("-{}{}", gathering.signature, superscript(gathering.leaves));
    std::string text;
    for (const int leaf : gathering.lackingLeaves)
        text += text.empty() ? fmt::format("-{}{}", gathering.signature, leaf)
                             : fmt::format(",{}", leaf);
    return text;
}

// --- extent

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

std::vector<InferredGathering> gatheringsOf(const BoundBook& book, const BookHabits& habits,
                                            const std::vector<StoryLeaf>& story) {
    if (!habits.hasMarks())
        return {};
    auto gatherings = GatheringReader(book, habits, story).read();
    bool signedBefore = false;
    for (InferredGathering& gathering : gatherings) {
        if (gathering.signature.empty())
            gathering.signature = signedBefore ? "χ" : "π";
        else
            signedBefore = true;
    }
    return gatherings;
}

std::string formulaOf(const std::vector<InferredGathering>& gatherings) {
    std::string formula;
    for (std::size_t at = 0; at < gatherings.size();) {
        const InferredGathering& first = gatherings[at];
        std::size_t end = at + 1;
        const auto follows = [&](const InferredGathering& gathering) {
            const InferredGathering& before = gatherings[end - 1];
            return first.rank && gathering.rank && gathering.leaves == first.leaves &&
                   (gathering.marked == first.marked || gathering.lacking == gathering.leaves) &&
                   gatheringsBetween(*before.rank, *gathering.rank) == 1;
        };
        while (end < gatherings.size() && follows(gatherings[end]))
            ++end;
        std::string run = first.signature;
        if (end - at > 1)
            run += "-" + gatherings[end - 1].signature;
        const bool inferred = !first.marked && first.rank && first.lacking < first.leaves;
        formula += formula.empty() ? "" : " ";
        formula += inferred ? fmt::format("[{}]", run) : run;
        formula += superscript(first.leaves);
        std::string lacking;
        for (; at < end; ++at) {
            if (gatherings[at].lacking > 0)
                lacking += (lacking.empty() ? "" : "; ") + lackingOf(gatherings[at]);
        }
        if (!lacking.empty())
            formula += fmt::format(" ({})", lacking);
    }
    return formula;
}

std::string extentOf(const BoundBook& book, const std::vector<StoryLeaf>& story) {
    return ExtentReader(book, story).read();
}

} // namespace headcap::core
