// Builds the file of a job for tests. People, places and books are invented.
#pragma once

#include <string>

#include "core/record/job_file.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core::tests {

inline Day day(int y, unsigned m, unsigned d) {
    return Day{std::chrono::year{y}, std::chrono::month{m}, std::chrono::day{d}};
}

inline Instant at(Day on, int hour = 10, int minute = 0) {
    return std::chrono::sys_days{on} + std::chrono::hours{hour} + std::chrono::minutes{minute};
}

// A job newly received, and what can be added to it. Each adder gives the record it added, to be
// changed at will until the next of its kind is added.
class JobBuilder {
public:
    explicit JobBuilder(std::uint64_t seed = 1);
    JobBuilder(const JobBuilder&) = delete; // the keys hold on to the clock
    JobBuilder& operator=(const JobBuilder&) = delete;

    FixedClock clock{at(day(2031, 4, 2))};
    IdSource ids;
    JobFile file;

    Person& person(const std::string& name, const std::string& initials);
    Material& material(const std::string& name, MaterialClass kind, Unit unit);
    Lot& lot(const std::string& number, const std::string& material, Amount received);
    Step& step(const std::string& technique, const std::string& place, Day on);
    MaterialUse& use(const Step& step, const std::string& lot, Amount amount);
    Facsimile& facsimile(const std::string& place);
    CollationFinding& lacking(const std::string& place);
    Finding& finding(const std::string& component, const std::string& term,
                     const std::string& place);
    Photograph& photograph(PhotoRole role);
    Notice& notice(NoticeSubject subject, Day on);
    Proposal& proposal();
    ProposalOption& option(const Proposal& proposal, const std::string& name);
    ProposalLine& line(const ProposalOption& option, const std::string& technique);
    Decision& decision(const Proposal& proposal, DecisionKind kind);

    [[nodiscard]] const Lot& lotNumbered(const std::string& number) const;
    [[nodiscard]] Id<Person> anyone() const { return file.people.front().id; }
};

// A finished job in which nothing is left open that must be settled: an octavo with a leaf in
// facsimile, resewn, its tears mended, a spine lining removed.
class FinishedJob : public JobBuilder {
public:
    FinishedJob();
};

} // namespace headcap::core::tests
