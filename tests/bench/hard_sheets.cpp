#include "tests/bench/hard_sheets.h"

#include <algorithm>
#include <map>
#include <random>

#include <fmt/format.h>

namespace headcap::core::bench {
namespace {

class Dice {
public:
    explicit Dice(unsigned seed) : m_engine(seed) {}
    int between(int low, int high) {
        return low + static_cast<int>(m_engine() % static_cast<unsigned>(high - low + 1));
    }

private:
    std::mt19937 m_engine;
};

struct Piece {
    int width, height, count;
    std::int64_t value;
};

CutProblem problemOf(int width, int height, const std::vector<Piece>& pieces, bool mayTurn) {
    CutProblem problem;
    problem.objective = CutObjective::mostValue;
    problem.rules.mayTurn = mayTurn;
    problem.sheets.push_back({"sheet", Length::millimetres(width), Length::millimetres(height)});
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        WantedPiece piece{std::to_string(i), Length::millimetres(pieces[i].width),
                          Length::millimetres(pieces[i].height)};
        piece.count = pieces[i].count;
        piece.value = pieces[i].value * 1'000'000;
        problem.pieces.push_back(piece);
    }
    return problem;
}

void takeApart(Dice& dice, int width, int height, int into, int least,
               std::map<std::pair<int, int>, int>& pieces) {
    const bool canX = width >= 2 * least, canY = height >= 2 * least;
    if (into <= 1 || (!canX && !canY)) {
        ++pieces[{width, height}];
        return;
    }
    const bool isAtX = canX && (!canY || dice.between(0, width + height) < width);
    const int whole = isAtX ? width : height;
    const int at = dice.between(least, whole - least);
    const int first = std::clamp(into * at / whole, 1, into - 1);
    takeApart(dice, isAtX ? at : width, isAtX ? height : at, first, least, pieces);
    takeApart(dice, isAtX ? width - at : width, isAtX ? height : height - at, into - first, least,
              pieces);
}

HardSheet withoutWaste(int side, int into, bool mayTurn, unsigned seed) {
    Dice dice(seed);
    std::map<std::pair<int, int>, int> found;
    takeApart(dice, side, side * 4 / 5, into, std::max(6, side / 30), found);
    std::vector<Piece> pieces;
    for (const auto& [size, count] : found) {
        pieces.push_back({size.first, size.second, count, size.first * size.second});
    }
    for (int i = 0; i < into / 2; ++i) {
        const int width = dice.between(side / 12, side / 2);
        const int height = dice.between(side / 12, side / 2);
        pieces.push_back({width, height, dice.between(1, 2), width * height});
    }
    return {fmt::format("without waste, {} × {} into {}{}", side, side * 4 / 5, into,
                        mayTurn ? ", turned" : ""),
            problemOf(side, side * 4 / 5, pieces, mayTurn), std::int64_t{side} * (side * 4 / 5),
            true};
}

// Gilmore and Gomory's recursion for one sheet, any number of each piece.
std::int64_t unconstrained(int width, int height, const std::vector<Piece>& pieces, bool mayTurn) {
    const auto rows = static_cast<std::size_t>(height) + 1;
    std::vector<std::int64_t> best((static_cast<std::size_t>(width) + 1) * rows);
    const auto at = [&](int x, int y) -> std::int64_t& {
        return best[static_cast<std::size_t>(x) * rows + static_cast<std::size_t>(y)];
    };
    for (int x = 1; x <= width; ++x) {
        for (int y = 1; y <= height; ++y) {
            std::int64_t most = 0;
            for (const Piece& piece : pieces) {
                const bool fits = piece.width <= x && piece.height <= y;
                const bool fitsTurned = mayTurn && piece.height <= x && piece.width <= y;
                most = fits || fitsTurned ? std::max(most, piece.value) : most;
            }
            for (int a = 1; a <= x / 2; ++a) {
                most = std::max(most, at(a, y) + at(x - a, y));
            }
            for (int b = 1; b <= y / 2; ++b) {
                most = std::max(most, at(x, b) + at(x, y - b));
            }
            at(x, y) = most;
        }
    }
    return at(width, height);
}

// Sides of a tenth to seven tenths of the sheet's, few of each; valued by area, or by area times a
// factor of 0.25 to 0.75.
HardSheet constrained(int side, int types, bool isWeighted, bool mayTurn, unsigned seed) {
    Dice dice(seed);
    std::vector<Piece> pieces;
    std::int64_t wanted = 0;
    for (int i = 0; i < types; ++i) {
        const int width = dice.between(side / 10, side * 7 / 10);
        const int height = dice.between(side / 10, side * 7 / 10);
        const std::int64_t area = std::int64_t{width} * height;
        pieces.push_back({width, height, dice.between(1, 4),
                          isWeighted ? area * dice.between(25, 75) / 100 : area});
        wanted += pieces.back().value * pieces.back().count;
    }
    return {fmt::format("constrained {} × {}, {} types{}{}", side, side, types,
                        isWeighted ? ", weighted" : "", mayTurn ? ", turned" : ""),
            problemOf(side, side, pieces, mayTurn),
            std::min(wanted, unconstrained(side, side, pieces, mayTurn)), false};
}

} // namespace

std::vector<HardSheet> hardSheets() {
    std::vector<HardSheet> all;
    unsigned seed = 100;
    for (const int side : {100, 250, 500, 1'000}) {
        for (const int into : {15, 30, 60}) {
            for (const bool mayTurn : {false, true}) {
                all.push_back(withoutWaste(side, into, mayTurn, ++seed));
            }
        }
    }
    for (const int side : {100, 200, 300}) {
        for (const int types : {25, 50, 100}) {
            for (const bool isWeighted : {false, true}) {
                ++seed;
                all.push_back(constrained(side, types, isWeighted, seed % 2 == 0, seed));
            }
        }
    }
    return all;
}

} // namespace headcap::core::bench
