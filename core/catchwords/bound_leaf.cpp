#include "core/catchwords/bound_leaf.h"

#include <algorithm>

#include <fmt/format.h>

namespace headcap::core {
namespace {

struct ReadPage {
    std::optional<NumberOnPage> number;
    std::optional<PrintedMark> mark;
    bool unprinted = false;
};

std::vector<ReadPage> readAll(std::span<const PageRow> pages) {
    std::vector<ReadPage> read(pages.size());
    for (std::size_t row = 0; row < pages.size(); ++row) {
        const PageRow& page = pages[row];
        read[row].number = readNumberOnPage(page.number);
        read[row].mark = readPrintedMark(page.signature);
        const bool numbered = read[row].number && !read[row].number->supplied;
        read[row].unprinted = !page.isPrinted && !numbered && page.signature.empty() &&
                              page.catchword.empty() && page.firstWords.empty();
    }
    return read;
}

Numbering numberingOf(const std::vector<ReadPage>& pages, bool withSupplied) {
    int nextPage = 0;
    int nextLeaf = 0;
    for (std::size_t row = 0; row + 2 < pages.size(); ++row) {
        if (!pages[row].number || (pages[row].number->supplied && !withSupplied))
            continue;
        const int value = pages[row].number->value;
        if (pages[row + 1].number && pages[row + 1].number->value == value + 1)
            ++nextPage;
        if (pages[row + 2].number && pages[row + 2].number->value == value + 1)
            ++nextLeaf;
    }
    if (nextPage == 0 && nextLeaf == 0)
        return withSupplied ? Numbering::none : numberingOf(pages, true);
    return nextLeaf > nextPage ? Numbering::leaves : Numbering::pages;
}

// Tells rectos from versos: marks stand on rectos, rectos have odd page numbers (or, where leaves
// are numbered, numbers at all); mostly the two alternate.
class SideFinder {
public:
    SideFinder(const std::vector<ReadPage>& pages, Numbering numbering)
        : m_pages(pages), m_numbering(numbering) {}

    std::vector<bool> versos() {
        const std::size_t count = m_pages.size();
        m_cost.assign(count, {0, 0});
        m_from.assign(count, {0, 0});
        for (std::size_t row = 0; row < count; ++row) {
            for (std::size_t side = 0; side < 2; ++side)
                reach(row, side);
        }
        std::vector<bool> versos(count);
        std::size_t side = count > 0 && m_cost[count - 1][1] <= m_cost[count - 1][0] ? 1 : 0;
        for (std::size_t row = count; row-- > 0;) {
            versos[row] = side == 1;
            side = m_from[row][side];
        }
        return versos;
    }

private:
    static constexpr int kMarkOnVerso = 6;
    static constexpr int kWrongParity = 2;
    static constexpr int kWrongReckoning = 1; // of a number supplied in brackets
    static constexpr int kOneSided = 5;       // a leaf of which only one side is there, unprinted
    static constexpr int kOneSidedPrinted = 14;

    void reach(std::size_t row, std::size_t side) {
        m_cost[row][side] = here(row, side);
        if (row == 0)
            return;
        const bool blank = m_pages[row].unprinted || m_pages[row - 1].unprinted;
        const int alone = m_cost[row - 1][side] + (blank ? kOneSided : kOneSidedPrinted);
        const int turned = m_cost[row - 1][1 - side];
        m_from[row][side] = turned <= alone ? 1 - side : side;
        m_cost[row][side] += std::min(turned, alone);
    }

    [[nodiscard]] int here(std::size_t row, std::size_t side) const {
        const ReadPage& page = m_pages[row];
        int cost = page.mark && side == 1 ? kMarkOnVerso : 0;
        const int wrong = page.number && page.number->supplied ? kWrongReckoning : kWrongParity;
        if (page.number && m_numbering == Numbering::pages)
            cost += (page.number->value % 2 == 1) == (side == 1) ? wrong : 0;
        if (page.number && m_numbering == Numbering::leaves)
            cost += side == 1 ? wrong : 0;
        return cost;
    }

    const std::vector<ReadPage>& m_pages;
    Numbering m_numbering;
    std::vector<std::array<int, 2>> m_cost;
    std::vector<std::array<std::size_t, 2>> m_from;
};

// "V v" may be the second V or the fifth leaf of V; what came before tells.
void settleDoubledV(std::vector<BoundLeaf>& leaves) {
    constexpr std::size_t kBack = 4;
    for (std::size_t at = 0; at < leaves.size(); ++at) {
        auto& mark = leaves[at].mark;
        if (!mark || !mark->gathering || mark->leaf != 1)
            continue;
        for (std::size_t back = 1; back <= std::min(kBack, at); ++back) {
            const auto& before = leaves[at - back].mark;
            if (!before || !before->gathering)
                continue;
            const GatheringRank& fifth = *before->gathering;
            const bool doubled =
                signatureOf(*mark->gathering) == fmt::format("2{}", signatureOf(fifth));
            const bool letterV = signatureOf(fifth) == "V" || signatureOf(fifth) == "v";
            if (doubled && letterV && before->leaf + static_cast<int>(back) == 5)
                mark = PrintedMark{fifth, 5};
        }
    }
}

} // namespace

BoundBook bindLeaves(std::span<const PageRow> pages) {
    BoundBook book{.pages = pages};
    const auto read = readAll(pages);
    book.numbering = numberingOf(read, false);
    const auto versos = SideFinder(read, book.numbering).versos();
    for (std::size_t row = 0; row < pages.size(); ++row) {
        const bool opens = !versos[row] || book.leaves.empty() || book.leaves.back().verso;
        if (opens)
            book.leaves.push_back({.unprinted = true});
        BoundLeaf& leaf = book.leaves.back();
        (versos[row] ? leaf.verso : leaf.recto) = row;
        leaf.numbers[versos[row] ? 1 : 0] = read[row].number;
        if (read[row].mark && !leaf.mark)
            leaf.mark = read[row].mark;
        leaf.unprinted = leaf.unprinted && read[row].unprinted;
    }
    settleDoubledV(book.leaves);
    return book;
}

} // namespace headcap::core
