// A formula as written, before it is worked out: its terms with their leaf counts and the changes
// in parentheses, in order. What a term leaves open stays open here.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/collation/signature.h"

namespace headcap::core {

// Where an assumption comes from.
enum class Ground : unsigned char { formula, extent, request, prose };

// Something taken as so that the text does not say outright, or words set aside.
struct Assumption {
    std::string what;
    Ground from = Ground::formula;
    friend bool operator==(const Assumption&, const Assumption&) = default;
};

// A part that could not be read. `at` is a byte of the text it stands in.
struct ReadingProblem {
    std::size_t at = 0;
    std::string message;
    bool inExtent = false;
    friend bool operator==(const ReadingProblem&, const ReadingProblem&) = default;
};

// How the number after a signature stands: a plain one can be a leaf count that lost its place
// above the line (A8) or one leaf (G1).
enum class CountForm : unsigned char { none, raised, plain, lowered };

struct LeafTarget {
    std::optional<Signature> signature; // none: the gathering the change follows
    int leaf = 0;                       // 0: the whole gathering
};

struct Term;

struct LeafChange {
    enum class Kind : unsigned char { cancelled, lacking, replaced, blank, added };
    Kind kind = Kind::cancelled;
    std::vector<LeafTarget> leaves;
    bool perhapsBlank = false; // "(-A1, blank?)"
    int addedCount = 0;        // added leaves without a mark of their own
    bool addedConjugate = false;
    std::vector<Term> addedTerms;
    std::size_t at = 0;
};

struct Term {
    std::size_t at = 0;
    Signature first;
    std::optional<Signature> last;
    bool allInferred = false; // a whole range in brackets
    Alphabet alphabet = Alphabet::latin;
    int statedGatherings = 0; // "[=41]"
    CountForm form = CountForm::none;
    std::vector<int> counts; // in turn along the range; 0 where one was lost
    std::vector<int> only;   // π1,2 P4–8: just these leaves
    bool singletons = false;
    bool continues = false;
    int part = 0;
    std::vector<LeafChange> changes;
};

struct Terms {
    std::string format; // as in formatName, "8o"; empty where none is given
    std::vector<Term> terms;
    std::vector<ReadingProblem> problems;
    std::vector<Assumption> assumptions;
    std::optional<int> leavesStated; // "; 108 leaves"
    std::string extentStated;        // the pagination in the same statement
    bool raisedCounts = false;       // some leaf count stands above the line
    bool firstBlank = false;         // "first leaf blank", "last leaf blank" in the prose
    int lastBlank = 0;               // how many of the last leaves
    std::vector<LeafTarget> blanks;  // "H4 blank" in the prose
};

[[nodiscard]] Terms readTerms(std::string_view formula);

} // namespace headcap::core
