// The collation statement of this copy, written from the findings: what it should be, where it
// departs and what puts that right, the tally of leaves and plates, how that was established, what
// was not looked at, what the owner must be told. A person may rewrite it; it is a draft of what
// the record already says.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/collation/walk.h"
#include "core/custody/people.h"
#include "core/facsimile/facsimile.h"

namespace headcap::core {

// All of one volume.
struct CopyRecords {
    std::string formula;
    std::string extent;
    std::vector<CollationFinding> findings;
    std::vector<Facsimile> facsimiles;
    std::vector<CalledPlate> plates;
    std::vector<Walk> walks;
    std::vector<WalkEntry> entries;
    std::vector<Person> people;
};

// Empty where there is none such.
[[nodiscard]] std::string nameOf(const CopyRecords& copy, const std::optional<Id<Person>>& who);

struct CopyTally {
    std::optional<int> leavesCalledFor; // none while the make-up leaves a count open
    int leavesLacking = 0;
    int leavesSupplied = 0;      // in facsimile, or from another copy
    bool arePresentKnown = true; // every leaf was looked at, or found
    int platesCalledFor = 0;
    int platesPresent = 0;
    int platesLacking = 0;
    int platesSupplied = 0;
    int platesNotLookedFor = 0;

    [[nodiscard]] std::optional<int> leavesPresent() const;
};
[[nodiscard]] CopyTally tallyOf(const CopyRecords& copy);
// How far the leaves of this copy were looked at. Findings without a walk: by other means, whole.
enum class LookedAt { notAtAll, inPart, whole };
[[nodiscard]] LookedAt lookedAt(const CopyRecords& copy);
// "108 leaves called for, 106 present, 2 lacking, 1 supplied; 3 plates called for, 2 present".
[[nodiscard]] std::string tallyText(const CopyTally& tally);

// "8°: A⁴ B–O⁸. Lacks C2; K5 in facsimile; B3 misnumbered 12 for 21. 108 leaves called for, …"
[[nodiscard]] std::string statementOf(const CopyRecords& copy);
// "Gone through by Orrin Vale, 2 April 2031: A1–C4 leaf by leaf; gatherings D–K passed whole."
[[nodiscard]] std::string methodOf(const CopyRecords& copy, const Clock& clock);
// What was typed of how it was established stays beside it; an earlier one of its own gives way.
[[nodiscard]] std::string methodBeside(const std::string& typed, const std::string& written);
// "2 April 2031", "2 April 2031 to 4 April 2031". `entries`: of the walk, in order.
[[nodiscard]] std::string daysOf(const std::vector<WalkEntry>& entries, const Walk& walk,
                                 const Clock& clock);
// "D3–D8, 2 plates"; empty where all was looked at.
[[nodiscard]] std::string notExamined(const CopyRecords& copy);
// What must be told before the book is taken down (Cockerell 1901, ch. II); empty: nothing.
[[nodiscard]] std::string wordToOwner(const CopyRecords& copy);

} // namespace headcap::core
