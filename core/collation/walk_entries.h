// The records that each key of a walk comes to.
#pragma once

#include <string>

#include "core/collation/leaf_expectation.h"
#include "core/collation/walk.h"

namespace headcap::core {

// Who says it, when, and where keys come from.
struct WalkPen {
    IdSource& ids;
    Instant now;
    std::optional<Id<Person>> who;
};

[[nodiscard]] Walk beginWalk(const Id<Job>& job, const std::optional<Id<Item>>& part,
                             const Collation& collation, WalkKind kind, const WalkPen& pen);

[[nodiscard]] WalkEntry leafAsExpected(const Walk& walk, const LaidBook& book, std::size_t leaf,
                                       const WalkPen& pen);
[[nodiscard]] WalkEntry restAsExpected(const Walk& walk, const LaidBook& book, std::size_t leaf,
                                       const WalkPen& pen);

// What was typed at a leaf; what is empty was as it should be, or was not read.
struct LeafReading {
    std::string signature;
    std::string recto;
    std::string verso;
    std::string catchword;                   // at the foot of the verso
    std::string firstWords;                  // of the recto
    TextRunsOn runsOn = TextRunsOn::notRead; // from the page before

    [[nodiscard]] bool isEmpty() const;
    friend bool operator==(const LeafReading&, const LeafReading&) = default;
};
[[nodiscard]] LeafReading readingOf(const WalkEntry& entry);

// What differs from what should be there: the numbers by value, the mark by gathering and leaf, in
// whatever form either is written.
struct ReadingDifference {
    bool signature = false;
    bool recto = false;
    bool verso = false;
    bool text = false; // it does not run on
    [[nodiscard]] bool any() const { return signature || recto || verso || text; }
};
[[nodiscard]] ReadingDifference differenceOf(const LeafReading& reading,
                                             const LeafExpectation& expected);

[[nodiscard]] WalkEntry leafRead(const Walk& walk, const LaidBook& book, std::size_t leaf,
                                 const LeafReading& reading, bool asExpected, const WalkPen& pen);
// One leaf more of a walk without a make-up, the next in the order it is bound.
[[nodiscard]] WalkEntry nextLeafRead(const Walk& walk, std::size_t leavesBefore,
                                     const LeafReading& reading, const WalkPen& pen);

// A finding at a leaf and the entry that carries it. `found` of a misnumbered or missigned leaf is
// what was read of it.
struct WalkFinding {
    CollationFinding finding;
    WalkEntry entry;
};
[[nodiscard]] WalkFinding findingAt(const Walk& walk, const LaidBook& book, std::size_t leaf,
                                    CollationKind kind, const LeafExpectation& expected,
                                    const LeafReading& read, const WalkPen& pen);

} // namespace headcap::core
