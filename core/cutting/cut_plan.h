// What is to be cut, from what, by which rules, and the plan that answers it. Cuts are those of a
// board shear or guillotine: straight through, edge to edge, one after another. x runs along a
// sheet's width and y along its height, both from the same corner. Lengths are exact; values and
// costs are millionths of whatever unit the asker counts in (unset: the area in mm²).
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/values/measures.h"

namespace headcap::core {

// Which side the grain runs along. A sheet without grain (handmade) and a piece to which it is
// indifferent are `none`, and turn freely.
enum class GrainWay { none, alongWidth, alongHeight };

// How much paper grows when pasted, in millionths of its size, across and along the grain.
struct Stretch {
    std::int64_t acrossPpm = 0;
    std::int64_t alongPpm = 0;
    friend bool operator==(const Stretch&, const Stretch&) = default;
};

// What is cut away from the edges of a sheet before anything else, because it is damaged.
struct EdgeTrim {
    Length left, right, top, bottom;
    friend bool operator==(const EdgeTrim&, const EdgeTrim&) = default;
};

struct StockSheet {
    std::string id;
    Length width, height;
    GrainWay grain = GrainWay::none;
    int count = 1;
    std::optional<std::int64_t> cost; // millionths; unset: its area
    bool isKeptBack = false;          // taken only where nothing else will do
    EdgeTrim trim = {};
    Stretch stretch = {};
    friend bool operator==(const StockSheet&, const StockSheet&) = default;
};

struct WantedPiece {
    std::string id;
    Length width, height; // as wanted in the book: after pasting, drying and trimming
    GrainWay grain = GrainWay::none;
    int count = 1;                     // the most wanted
    std::optional<std::int64_t> value; // millionths; unset: its area
    bool isPasted = false;             // cut smaller by the sheet's stretch
    Length overlap = {};               // left on each edge, to be trimmed after drying
    friend bool operator==(const WantedPiece&, const WantedPiece&) = default;
};

enum class CutObjective {
    allPieces, // leave out as few pieces as can be, then spend the least, then keep large offcuts
    mostValue, // the most value out of the sheets
};

struct CutRules {
    Length kerf;         // what the blade takes; a shear takes nothing
    Length leastStrip;   // no narrower strip can be cut off; the trim of edges is exempt
    Length leastOffcut;  // a remainder with a shorter side is waste, not stock
    bool mayTurn = true; // pieces may be turned by 90° where the grain allows
    friend bool operator==(const CutRules&, const CutRules&) = default;
};

struct CutProblem {
    std::vector<StockSheet> sheets;
    std::vector<WantedPiece> pieces;
    CutObjective objective = CutObjective::allPieces;
    CutRules rules;
    friend bool operator==(const CutProblem&, const CutProblem&) = default;
};

struct SheetPlace {
    std::size_t sheet = 0; // index into the problem's sheets
    int number = 1;        // which of that sheet's count, from 1
    friend bool operator==(const SheetPlace&, const SheetPlace&) = default;
    friend auto operator<=>(const SheetPlace&, const SheetPlace&) = default;
};

struct CutRect {
    Length x, y, width, height;
    friend bool operator==(const CutRect&, const CutRect&) = default;
};

struct PlacedPiece {
    std::size_t piece = 0; // index into the problem's pieces
    SheetPlace on;
    CutRect at; // the size to cut
    bool isTurned = false;
};

enum class CutAxis { x, y };

// One cut. On axis x it lies at x = at and runs in y from `from` to `to`; the blade takes
// at … at + kerf.
struct SheetCut {
    SheetPlace on;
    int order = 1; // from 1 on each sheet
    CutAxis axis = CutAxis::x;
    Length at, from, to;
};

struct PlannedOffcut {
    SheetPlace on;
    CutRect at;
    GrainWay grain = GrainWay::none;
};

enum class LeftOutReason {
    fitsNoSheet, // too large, or the grain forbids it, on every sheet there is
    noRoom,
};

struct LeftOutPiece {
    std::size_t piece = 0;
    int count = 0;
    LeftOutReason reason = LeftOutReason::noRoom;
};

struct CutPlan {
    std::vector<PlacedPiece> placed;
    std::vector<LeftOutPiece> leftOut;
    std::vector<SheetCut> cuts;
    std::vector<PlannedOffcut> offcuts;
    Area usedArea;          // of the pieces; used, offcuts and waste make up the sheets cut
    Area waste;             // trim, kerf and what is too small to keep
    std::int64_t value = 0; // of the pieces placed, in millionths
    std::int64_t cost = 0;  // of the sheets cut, in millionths
    // Proved: none can place more (allPieces: none leaves out fewer, or as few at less cost;
    // mostValue: none is worth more). The shape of the offcuts is not part of the proof.
    bool isProvedBest = false;
};

} // namespace headcap::core
