// A job: one stay of an item in the workshop, from its receipt to its return, and the states it
// passes through.
#pragma once

#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/id.h"
#include "core/values/money.h"
#include "core/values/time.h"

namespace headcap::core {

struct Item;
struct Owner;
struct Person;

enum class JobState {
    received,
    surveyed,
    proposed,
    approved,
    atTheBench,
    passed,
    reported,
    returned,
    onHold,
    declined,
    withdrawn
};

// Whether earlier reports and photographs were asked for (AIC Commentary 5, 25).
enum class EarlierRecords { notAsked, asked, received, noneExist };

struct Job {
    Id<Job> id;
    std::string number{}; // "2026-014", what people see and say
    Id<Item> item;
    Id<Owner> owner; // at the time of this job
    JobState state = JobState::received;
    Day receivedOn;
    std::optional<Day> dueOn{};
    std::string request{};    // what the owner asks for
    std::string purpose{};    // exhibition, use, sale, keeping
    std::string receivedAs{}; // how it came in: box, wrapper, loose pieces in an envelope
    std::string keptAt{};     // where it is now
    EarlierRecords earlierRecords = EarlierRecords::notAsked;
    std::string earlierRecordsNote{};
    std::optional<Money> value{}; // while it is in the house, as the owner states it
    std::string advice{};         // for its care, added to what the program draws from the record
    std::string note{};

    friend bool operator==(const Job&, const Job&) = default;
};

// Who changed the state, when and why; going back is allowed and recorded.
struct StateChange {
    Id<StateChange> id;
    Id<Job> job;
    JobState fromState = JobState::received;
    JobState toState = JobState::received;
    Instant at;
    std::optional<Id<Person>> who;
    std::string why{};

    friend bool operator==(const StateChange&, const StateChange&) = default;
};

template <>
struct EnumNames<JobState> {
    static constexpr std::array<std::string_view, 11> kNames{
        "received", "surveyed", "proposed", "approved", "at_the_bench", "passed",
        "reported", "returned", "on_hold",  "declined", "withdrawn"};
};

template <>
struct EnumNames<EarlierRecords> {
    static constexpr std::array<std::string_view, 4> kNames{"not_asked", "asked", "received",
                                                            "none_exist"};
};

template <>
struct Description<Job> {
    static constexpr std::string_view kKind = "job";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Job>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          searched("number", &R::number),
                          field("item", &R::item),
                          field("owner", &R::owner),
                          field("state", &R::state),
                          field("received_on", &R::receivedOn),
                          field("due_on", &R::dueOn),
                          searched("request", &R::request),
                          field("purpose", &R::purpose),
                          field("received_as", &R::receivedAs),
                          field("kept_at", &R::keptAt),
                          field("earlier_records", &R::earlierRecords),
                          field("earlier_records_note", &R::earlierRecordsNote),
                          field("value", &R::value),
                          field("advice", &R::advice),
                          searched("note", &R::note)};
    }
};

template <>
struct Description<StateChange> {
    static constexpr std::string_view kKind = "state_change";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = StateChange>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("from_state", &R::fromState),
                          field("to_state", &R::toState),
                          field("at", &R::at),
                          field("who", &R::who),
                          field("why", &R::why)};
    }
};

} // namespace headcap::core
