// What was approved beside what was done: work that no approved line covers, approved lines that
// nothing carried out, and a limit gone above. Each is explained, by word in the record or by a
// notice to the owner, or it is open.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

enum class DepartureKind { doneNotApproved, approvedNotDone, overLimit };

struct Departure {
    DepartureKind kind = DepartureKind::doneNotApproved;
    RecordRef subject; // the step, the line, the decision
    std::string sentence;
    const Explanation* explanation = nullptr;
    const Notice* notice = nullptr; // of a change, at that time
    [[nodiscard]] bool isOpen() const { return explanation == nullptr && notice == nullptr; }
};

// Approved and not done counts once the bench is passed.
[[nodiscard]] std::vector<Departure> departures(const JobFile& file, const Clock& clock);

// What the rule of the audit calls it: "done_not_approved".
[[nodiscard]] std::string ruleOf(DepartureKind kind);

// The work done: an approved line at its price, in the share of its minutes that were worked where
// these were more; other work, and lines without a price, at the workshop's rate; with the
// materials of the lines begun. Taxed as the approved proposal says.
struct CostAsDone {
    Money net;
    Money gross; // what the owner pays, and what a limit of theirs is held against
};
// One a currency, in the order of the lines; none where neither a rate nor a price is known.
[[nodiscard]] std::vector<CostAsDone> costAsDone(const JobFile& file);
[[nodiscard]] std::optional<CostAsDone> costAsDone(const JobFile& file, std::string_view currency);

[[nodiscard]] const Explanation* explanationOf(const JobFile& file, const RecordRef& subject,
                                               const std::string& rule);
[[nodiscard]] Change explain(const JobFile& file, const RecordRef& subject, const std::string& rule,
                             const std::string& text, std::optional<Id<Person>> who, Instant now,
                             IdSource& ids);

} // namespace headcap::core
