// Before a book leaves: a list made from this job. Some rows the record answers by itself; the
// others a person answers, as done or with an explanation. The last is the sign-off.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "core/custody/page.h"
#include "core/record/job_file.h"

namespace headcap::core {

struct ReleaseRow {
    std::string key;         // "leaf_tally"
    std::string asks;        // "The leaves are counted"
    std::string finds;       // what the record says of it: "107 of 108 leaves, K5 in facsimile"
    bool isByRecord = false; // nobody need answer it
    bool isMet = false;      // the record says so
    const ReleaseCheck* answer = nullptr;
    Page page = Page::report;         // where it is seen to
    std::optional<Id<Piece>> piece{}; // that came with the book: answered in its own record
    [[nodiscard]] bool isSettled() const {
        return isMet || (answer != nullptr && answer->answer != ReleaseAnswer::open);
    }
};

// "2 × grey boards with tape".
[[nodiscard]] std::string nameOf(const Piece& piece);

// In the order in which one goes through them; the sign-off last.
[[nodiscard]] std::vector<ReleaseRow> releaseList(const JobFile& file, const Clock& clock);
// The book has been given back: what is open was not done, and only that can be said of it.
[[nodiscard]] bool isListClosed(const JobFile& file);
// Every row is settled, the sign-off too.
[[nodiscard]] bool mayLeave(const std::vector<ReleaseRow>& rows);

inline constexpr std::string_view kSignOff = "sign_off";

enum class ReleaseProblem {
    noSuchRow,
    unexplained,   // explained, and not a word why
    nobody,        // no person to answer for it
    stillOpen,     // signed off while other rows are open
    gone,          // the book has gone back: nothing of it can be done or signed any more
    toWhomMissing, // given back to whom
    conditionMissing,
};

struct ReleaseAnswering {
    std::string key;
    ReleaseAnswer answer = ReleaseAnswer::done;
    std::string why{};
    std::optional<Id<Person>> who;
};
[[nodiscard]] tl::expected<Change, ReleaseProblem> answerRow(const JobFile& file,
                                                             const Clock& clock,
                                                             const ReleaseAnswering& answering,
                                                             IdSource& ids);

// The return as one change: the receipt and what went with it, the move to the owner, the next look
// as a follow-up, and the job returned where its states allow it.
[[nodiscard]] tl::expected<Change, ReleaseProblem>
giveBack(const JobFile& file, const HandBack& back, const Clock& clock, IdSource& ids);

} // namespace headcap::core
