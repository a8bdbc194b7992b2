// What several rules ask of a job's record.
#pragma once

#include <string>
#include <vector>

#include "core/audit/rules.h"

namespace headcap::core::facts {

// Steps that have not been struck, in order of time.
[[nodiscard]] std::vector<const Step*> standing(const JobFile& file);
// Uses of standing steps.
[[nodiscard]] std::vector<const MaterialUse*> standingUses(const JobFile& file);
[[nodiscard]] bool isTreated(const JobFile& file); // anything done to it but looking

// Whether the owner was told of a subject on any day, or by a day, or from a day on.
[[nodiscard]] bool isTold(const JobFile& file, NoticeSubject subject);
[[nodiscard]] bool isToldBy(const JobFile& file, NoticeSubject subject, Day day);
[[nodiscard]] bool isToldFrom(const JobFile& file, NoticeSubject subject, Day day);

// The owner was told since the step of a fault in it that is past mending: as of an incident, or of
// a change.
[[nodiscard]] bool isOwnedUp(const AuditContext& at, const Step& step);

[[nodiscard]] bool lacksLeaves(const JobFile& file);
[[nodiscard]] bool isFinishedBy(const JobFile& file, Day day); // the collation, all of it

// "Resewing of 18 March 2031", to begin a sentence with.
[[nodiscard]] std::string nameOf(const Step& step, const AuditContext& at);
// "Paste 31-002 in Tipping in of 20 March 2031".
[[nodiscard]] std::string nameOf(const MaterialUse& use, const AuditContext& at);

// Says it of each standing step that is wanting.
template <class Wanting>
void eachStep(const AuditContext& at, const AuditSink& found, std::string_view says,
              Wanting wanting) {
    for (const Step* step : standing(at.file)) {
        if (wanting(*step)) {
            found(*step, nameOf(*step, at), says);
        }
    }
}

} // namespace headcap::core::facts
