#include "core/catchwords/rebinding.h"

#include <algorithm>
#include <optional>
#include <string>

#include <fmt/format.h>

#include "core/catchwords/duplicate_leaves.h"
#include "core/catchwords/leaf_neighbours.h"
#include "core/catchwords/rebound_rows.h"

namespace headcap::core {
namespace {

constexpr double kBreak = 2.9;       // a turn that costs more is a place to cut
constexpr double kExplainable = 6.0; // a lost leaf or a misnumbering explains any break for less
constexpr double kMeeting = 2.0;     // for a catchword that meets its page at the new place
constexpr double kWorthMoving = 10.0;
constexpr std::size_t kMostMoves = 12;
constexpr std::size_t kReach = 24; // pieces on either side to which one may be moved

class Binder {
public:
    Binder(const BoundBook& book, const LeafLinks& links, LeafOrder order)
        : m_order(std::move(order)), m_findings(takeOutDuplicates(book, links, m_order)),
          m_neighbours(book, links, m_order), m_rows(book, m_order) {}

    Rebinding bind() {
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

    struct Move {
        std::size_t piece = 0;
        std::size_t before = 0; // the piece before which it goes
        double gain = 0;
    };

    std::vector<Piece> cut() {
        std::vector<Piece> pieces;
        for (std::size_t at = 0; at < m_order.printed.size(); ++at) {
            if (at == 0 || m_neighbours.cost(at - 1, at) >= kBreak ||
                !m_neighbours.agree(at - 1, at))
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
                const bool gap =
                    before > 0 && before < pieces.size() &&
                    m_neighbours.cost(pieces[before].begin - 1, pieces[before].begin) >= kBreak;
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
            return at && next ? m_neighbours.cost(*at, *next) : 0.0;
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
        const bool meetsLeft = left && m_neighbours.agree(*left, moved.begin);
        const bool meetsRight = right && m_neighbours.agree(moved.end - 1, *right);
        const bool meets = (meetsLeft || !left) && (meetsRight || !right);
        const bool leftHolds = joinedLeft < kBreak || m_neighbours.textAgrees(*left, moved.begin);
        const bool rightHolds =
            joinedRight < kBreak || m_neighbours.textAgrees(moved.end - 1, *right);
        if (!meets || !leftHolds || !rightHolds)
            return 0;
        const auto broken = [&](std::optional<std::size_t> at, std::optional<std::size_t> to) {
            return std::min(turn(at, to), kExplainable);
        };
        const double now =
            broken(previous, moved.begin) + broken(moved.end - 1, next) + broken(left, right);
        const double meetings =
            (left && m_neighbours.textAgrees(*left, moved.begin) ? kMeeting : 0) +
            (right && m_neighbours.textAgrees(moved.end - 1, *right) ? kMeeting : 0);
        return now + meetings - broken(previous, next) - joinedLeft - joinedRight;
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
        const int after = m_rows.before(begin);
        const auto count = static_cast<int>(moved.size());
        const std::string what = count == 1 ? "A leaf" : fmt::format("{} leaves", count);
        std::string sentence;
        if (exchanged || exchangedBack)
            sentence =
                fmt::format("{} after {} and what follows are exchanged", what, m_rows.name(after));
        else if (move.before < pieces.size())
            sentence = fmt::format("{} after {} belong{} before {}", what, m_rows.name(after),
                                   count == 1 ? "s" : "",
                                   m_rows.name(m_rows.first(pieces[move.before].begin)));
        else
            sentence = fmt::format("{} after {} belong{} at the end", what, m_rows.name(after),
                                   count == 1 ? "s" : "");
        m_findings.push_back({LeafFindingKind::misbound, after, m_rows.after(end - 1), count,
                              move.gain >= kWorthMoving + 4,
                              sentence + ": there catchwords, numbers and signatures run on."});
    }

    LeafOrder m_order;
    std::vector<LeafFinding> m_findings;
    LeafNeighbours m_neighbours;
    ReboundRows m_rows;
};

} // namespace

Rebinding putInOrder(const BoundBook& book, const LeafLinks& links, const LeafOrder& bound) {
    return Binder(book, links, bound).bind();
}

} // namespace headcap::core
