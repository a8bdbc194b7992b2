#include "core/catchwords/duplicate_leaves.h"

#include <cstddef>
#include <optional>
#include <string>
#include <unordered_map>

#include <fmt/format.h>

#include "core/catchwords/leaf_neighbours.h"
#include "core/catchwords/rebound_rows.h"

namespace headcap::core {
namespace {

constexpr std::size_t kTellingLetters = 24;

class Duplicates {
public:
    Duplicates(const BoundBook& book, const LeafLinks& links, const LeafOrder& order)
        : m_book(book), m_order(order), m_neighbours(book, links, order), m_rows(book, order) {}

    // What is left of the order.
    LeafOrder takeOut() {
        std::unordered_map<std::string, std::size_t> seen;
        std::vector<std::optional<std::size_t>> copies(m_order.printed.size());
        for (std::size_t at = 0; at < copies.size(); ++at) {
            auto text = textOf(at);
            if (text.size() < kTellingLetters)
                continue;
            const auto [first, fresh] = seen.try_emplace(std::move(text), at);
            if (!fresh)
                copies[at] = first->second;
        }
        std::vector<bool> out(copies.size());
        for (std::size_t at = 0; at < copies.size();) {
            std::size_t end = at + 1;
            if (copies[at]) {
                while (end < copies.size() && copies[end] && *copies[end] == *copies[end - 1] + 1)
                    ++end;
                takeOutCopy(*copies[at], at, end - at, out);
            }
            at = end;
        }
        LeafOrder left;
        for (std::size_t at = 0; at < out.size(); ++at) {
            if (out[at])
                continue;
            left.printed.push_back(m_order.printed[at]);
            left.unprintedBefore.push_back(m_order.unprintedBefore[at]);
        }
        return left;
    }

    std::vector<LeafFinding> findings() { return std::move(m_findings); }

private:
    [[nodiscard]] std::string textOf(std::size_t at) const {
        std::string text;
        const BoundLeaf& leaf = m_book.leaves[m_order.printed[at]];
        for (const auto& row : {leaf.recto, leaf.verso}) {
            if (!row)
                continue;
            for (const auto part : {m_book.pages[*row].firstWords, m_book.pages[*row].catchword}) {
                text += part;
                text += '\t';
            }
        }
        return text;
    }

    // Of the two copies the one that fits its neighbours worse is the intruder.
    void takeOutCopy(std::size_t first, std::size_t second, std::size_t count,
                     std::vector<bool>& out) {
        const std::size_t last = m_order.printed.size() - 1;
        const auto misfit = [&](std::size_t begin) {
            const std::size_t end = begin + count - 1;
            return (begin > 0 ? m_neighbours.cost(begin - 1, begin) : 0) +
                   (end < last ? m_neighbours.cost(end, end + 1) : 0);
        };
        const bool apart = second - first > count;
        const bool firstIntrudes = apart && misfit(first) > misfit(second);
        const std::size_t begin = firstIntrudes ? first : second;
        const std::size_t other = firstIntrudes ? second : first;
        for (std::size_t at = begin; at < begin + count; ++at)
            out[at] = true;
        const int after = m_rows.before(begin);
        m_findings.push_back(
            {LeafFindingKind::duplicate, after, m_rows.after(begin + count - 1),
             static_cast<int>(count), true,
             fmt::format("After {} {} bound in again: the same text stands from {} on.",
                         m_rows.name(after),
                         count == 1 ? "a leaf is" : fmt::format("{} leaves are", count),
                         m_rows.name(m_rows.first(other)))});
    }

    const BoundBook& m_book;
    const LeafOrder& m_order;
    LeafNeighbours m_neighbours;
    ReboundRows m_rows;
    std::vector<LeafFinding> m_findings;
};

} // namespace

std::vector<LeafFinding> takeOutDuplicates(const BoundBook& book, const LeafLinks& links,
                                           LeafOrder& order) {
    Duplicates duplicates(book, links, order);
    LeafOrder left = duplicates.takeOut();
    auto findings = duplicates.findings();
    order = std::move(left);
    return findings;
}

} // namespace headcap::core
