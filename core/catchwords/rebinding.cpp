#include "core/catchwords/rebinding.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <string>
#include <unordered_map>

#include <fmt/format.h>

namespace headcap::core {
namespace {

constexpr double kNumberBreak = 4.0;
constexpr double kMarkBreak = 3.0;
constexpr double kBreak = 2.9;       // a turn that costs more is a place to cut
constexpr double kExplainable = 6.0; // a lost leaf or a misnumbering explains any break for less
constexpr double kMeeting = 2.0;     // for a catchword that meets its page at the new place
constexpr double kWorthMoving = 10.0;
constexpr std::size_t kMostMoves = 12;
constexpr std::size_t kReach = 24; // pieces on either side to which one may be moved
constexpr std::size_t kTellingLetters = 24;

class Binder {
public:
    Binder(const BoundBook& book, const LeafLinks& links, LeafOrder order)
        : m_book(book), m_links(links), m_order(std::move(order)),
          m_unit(book.numbering == Numbering::leaves ? 1 : 2) {}

    Rebinding bind() {
        takeOutDuplicates();
        for (std::size_t move = 0; move < kMostMoves; ++move) {
            if (!moveOne())
                break;
        }
        return {std::move(m_order), std::move(m_findings)};
    }

private:
    struct Piece {
        std::size_t begin = 0; // in the order
        std::size_t end = 0;
        [[nodiscard]] std::size_t size() const { return end - begin; }
    };

    struct Neighbours {
        double cost = 0;
        bool textAgrees = false;
        bool numbersAgree = false;
    };

    struct Move {
        std::size_t piece = 0;
        std::size_t before = 0; // the piece before which it goes
        double gain = 0;
    };

    // --- duplicates

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

    void takeOutDuplicates() {
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
                takeOut(*copies[at], at, end - at, out);
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
        m_order = std::move(left);
    }

    // Of the two copies the one that fits its neighbours worse is the intruder.
    void takeOut(std::size_t first, std::size_t second, std::size_t count, std::vector<bool>& out) {
        const std::size_t last = m_order.printed.size() - 1;
        const auto misfit = [&](std::size_t begin) {
            const std::size_t end = begin + count - 1;
            return (begin > 0 ? cost(begin - 1, begin) : 0) + (end < last ? cost(end, end + 1) : 0);
        };
        const bool apart = second - first > count;
        const bool firstIntrudes = apart && misfit(first) > misfit(second);
        const std::size_t begin = firstIntrudes ? first : second;
        const std::size_t other = firstIntrudes ? second : first;
        for (std::size_t at = begin; at < begin + count; ++at)
            out[at] = true;
        const int after = rowBefore(begin);
        m_findings.push_back(
            {LeafFindingKind::duplicate, after, rowAfter(begin + count - 1),
             static_cast<int>(count), true,
             fmt::format("After {} {} bound in again: the same text stands from {} on.",
                         rowName(after),
                         count == 1 ? "a leaf is" : fmt::format("{} leaves are", count),
                         rowName(firstRow(other)))});
    }

    // --- what a turn from one leaf to another costs

    [[nodiscard]] std::optional<int> numberOf(std::size_t at) const {
        const auto& numbers = m_book.leaves[m_order.printed[at]].numbers;
        if (numbers[0])
            return numbers[0]->value;
        if (numbers[1])
            return numbers[1]->value - (m_unit == 2 ? 1 : 0);
        return std::nullopt;
    }

    // What is known of two leaves as neighbours; the same pairs are asked for again and again.
    const Neighbours& neighbours(std::size_t at, std::size_t next) {
        const std::uint64_t key =
            (static_cast<std::uint64_t>(m_order.printed[at]) << 32) | m_order.printed[next];
        const auto [found, fresh] = m_neighbours.try_emplace(key);
        if (fresh)
            found->second = weigh(at, next);
        return found->second;
    }

    [[nodiscard]] Neighbours weigh(std::size_t at, std::size_t next) const {
        const auto turn = m_links.between(m_order.printed[at], m_order.printed[next]);
        const auto number = numberOf(at);
        const auto following = numberOf(next);
        const int jump = number && following ? *following - *number - m_unit : 0;
        Neighbours found;
        found.textAgrees = turn && turn->verdict <= CatchwordVerdict::variant;
        found.numbersAgree = number && following && jump == 0;
        found.cost = (turn ? m_links.costIfRunsOn(turn) : 0.5) + markBreak(at, next);
        if (jump != 0)
            found.cost += numberBreak(next, jump);
        return found;
    }

    double cost(std::size_t at, std::size_t next) { return neighbours(at, next).cost; }

    [[nodiscard]] double numberBreak(std::size_t next, int jump) const {
        const int bare = m_order.unprintedBefore[next];
        return bare > 0 && jump > 0 && jump <= bare * m_unit ? 0.5 : kNumberBreak;
    }

    [[nodiscard]] double markBreak(std::size_t at, std::size_t next) const {
        const auto& mark = m_book.leaves[m_order.printed[at]].mark;
        const auto& following = m_book.leaves[m_order.printed[next]].mark;
        if (!following || !following->gathering)
            return 0;
        if (!mark || !mark->gathering)
            return following->leaf > 2 && following->leaf < 5 ? 1.0 : 0.0;
        const bool runsOn = mark->gathering == following->gathering
                                ? following->leaf == mark->leaf + 1
                                : following->leaf == 1;
        return runsOn ? 0 : kMarkBreak;
    }

    // --- moves

    std::vector<Piece> cut() {
        std::vector<Piece> pieces;
        for (std::size_t at = 0; at < m_order.printed.size(); ++at) {
            if (at == 0 || cost(at - 1, at) >= kBreak || !agree(at - 1, at))
                pieces.push_back({at, at});
            pieces.back().end = at + 1;
        }
        return pieces;
    }

    bool moveOne() {
        const auto pieces = cut();
        Move best;
        for (std::size_t piece = 0; piece < pieces.size(); ++piece) {
            const std::size_t first = piece > kReach ? piece - kReach : 0;
            const std::size_t last = std::min(pieces.size(), piece + kReach);
            for (std::size_t before = first; before <= last; ++before) {
                // A piece that is wanted somewhere has left a gap there.
                const bool gap = before > 0 && before < pieces.size() &&
                                 cost(pieces[before].begin - 1, pieces[before].begin) >= kBreak;
                const bool end = before == 0 || before == pieces.size();
                if (before == piece || before == piece + 1 || !(gap || end))
                    continue;
                const double gain = gainOf(pieces, piece, before);
                const bool fewer = gain > best.gain - 1e-9 && best.gain > 0 &&
                                   pieces[piece].size() < pieces[best.piece].size();
                if (gain > best.gain + 1e-9 || fewer)
                    best = {piece, before, gain};
            }
        }
        if (best.gain < kWorthMoving)
            return false;
        report(pieces, best);
        apply(pieces, best);
        return true;
    }

    double gainOf(const std::vector<Piece>& pieces, std::size_t piece, std::size_t before) {
        const Piece& moved = pieces[piece];
        const auto turn = [&](std::optional<std::size_t> at, std::optional<std::size_t> next) {
            return at && next ? cost(*at, *next) : 0.0;
        };
        const auto lastOf = [&](std::size_t at) -> std::optional<std::size_t> {
            return at > 0 ? std::optional(pieces[at - 1].end - 1) : std::nullopt;
        };
        const auto firstOf = [&](std::size_t at) -> std::optional<std::size_t> {
            return at < pieces.size() ? std::optional(pieces[at].begin) : std::nullopt;
        };
        const auto previous = lastOf(piece);
        const auto next = firstOf(piece + 1);
        const auto left = lastOf(before);
        const auto right = firstOf(before);
        const double joinedLeft = turn(left, moved.begin);
        const double joinedRight = turn(moved.end - 1, right);
        const bool meetsLeft = left && agree(*left, moved.begin);
        const bool meetsRight = right && agree(moved.end - 1, *right);
        const bool meets = (meetsLeft || !left) && (meetsRight || !right);
        const bool leftHolds = joinedLeft < kBreak || textAgrees(*left, moved.begin);
        const bool rightHolds = joinedRight < kBreak || textAgrees(moved.end - 1, *right);
        if (!meets || !leftHolds || !rightHolds)
            return 0;
        const auto broken = [&](std::optional<std::size_t> at, std::optional<std::size_t> to) {
            return std::min(turn(at, to), kExplainable);
        };
        const double now =
            broken(previous, moved.begin) + broken(moved.end - 1, next) + broken(left, right);
        const double meetings = (left && textAgrees(*left, moved.begin) ? kMeeting : 0) +
                                (right && textAgrees(moved.end - 1, *right) ? kMeeting : 0);
        return now + meetings - broken(previous, next) - joinedLeft - joinedRight;
    }

    bool textAgrees(std::size_t at, std::size_t next) { return neighbours(at, next).textAgrees; }

    // Something speaks for the turn, not only nothing against it.
    bool agree(std::size_t at, std::size_t next) {
        const Neighbours& found = neighbours(at, next);
        return found.textAgrees || found.numbersAgree;
    }

    void apply(const std::vector<Piece>& pieces, const Move& move) {
        const auto rotate = [&](auto& list) {
            const auto at = [&](std::size_t index) {
                return list.begin() + static_cast<std::ptrdiff_t>(index);
            };
            const Piece& moved = pieces[move.piece];
            const std::size_t target =
                move.before < pieces.size() ? pieces[move.before].begin : list.size();
            if (target > moved.begin)
                std::rotate(at(moved.begin), at(moved.end), at(target));
            else
                std::rotate(at(target), at(moved.begin), at(moved.end));
        };
        rotate(m_order.printed);
        rotate(m_order.unprintedBefore);
    }

    void report(const std::vector<Piece>& pieces, const Move& move) {
        const Piece& moved = pieces[move.piece];
        const bool exchanged =
            move.before == move.piece + 2 && pieces[move.piece + 1].size() == moved.size();
        const bool exchangedBack =
            move.before + 1 == move.piece && pieces[move.before].size() == moved.size();
        const std::size_t begin = exchangedBack ? pieces[move.before].begin : moved.begin;
        const std::size_t end = exchanged ? pieces[move.piece + 1].end : moved.end;
        const int after = rowBefore(begin);
        const auto count = static_cast<int>(moved.size());
        const std::string what = count == 1 ? "A leaf" : fmt::format("{} leaves", count);
        std::string sentence;
        if (exchanged || exchangedBack)
            sentence =
                fmt::format("{} after {} and what follows are exchanged", what, rowName(after));
        else if (move.before < pieces.size())
            sentence =
                fmt::format("{} after {} belong{} before {}", what, rowName(after),
                            count == 1 ? "s" : "", rowName(firstRow(pieces[move.before].begin)));
        else
            sentence = fmt::format("{} after {} belong{} at the end", what, rowName(after),
                                   count == 1 ? "s" : "");
        m_findings.push_back({LeafFindingKind::misbound, after, rowAfter(end - 1), count,
                              move.gain >= kWorthMoving + 4,
                              sentence + ": there catchwords, numbers and signatures run on."});
    }

    [[nodiscard]] std::string rowName(int row) const {
        return nameOfRow(m_book.pages, static_cast<std::size_t>(row));
    }
    [[nodiscard]] int firstRow(std::size_t at) const {
        return static_cast<int>(m_book.leaves[m_order.printed[at]].firstRow()) + 1;
    }
    // As bound, whatever the order here: the rows beside the leaf.
    [[nodiscard]] int rowBefore(std::size_t at) const { return firstRow(at) - 1; }
    [[nodiscard]] int rowAfter(std::size_t at) const {
        return static_cast<int>(m_book.leaves[m_order.printed[at]].lastRow()) + 2;
    }

    const BoundBook& m_book;
    const LeafLinks& m_links;
    LeafOrder m_order;
    int m_unit;
    std::unordered_map<std::uint64_t, Neighbours> m_neighbours;
    std::vector<LeafFinding> m_findings;
};

} // namespace

Rebinding putInOrder(const BoundBook& book, const LeafLinks& links, const LeafOrder& bound) {
    return Binder(book, links, bound).bind();
}

} // namespace headcap::core
