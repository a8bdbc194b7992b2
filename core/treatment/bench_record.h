// What the bench keeps beside the log: clocks that run, what is setting, and the checks of a step.
#pragma once

#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/treatment/step.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

// A clock started for a piece of work. It runs until it is stopped, whether or not the program
// does; then a step takes its minutes.
struct BenchClock {
    Id<BenchClock> id;
    Id<Job> job;
    std::optional<Id<Person>> who;
    std::optional<Id<ProposalLine>> line;
    std::string technique{};
    std::string place{};
    Instant startedAt;
    std::optional<Instant> stoppedAt{};
    std::optional<Id<Step>> step; // that took its minutes
    std::string note{};

    friend bool operator==(const BenchClock&, const BenchClock&) = default;
};

// Something that sets, dries or is pressed until a time.
struct Setting {
    Id<Setting> id;
    Id<Job> job;
    std::optional<Id<Step>> step;
    std::string what{};
    Instant startedAt;
    Instant endsAt;
    std::optional<Instant> seenAt{}; // when somebody saw that it was over, or took it out
    std::optional<Id<Person>> seenBy;

    friend bool operator==(const Setting&, const Setting&) = default;
};

// A check of the technique, made or not made in this step. It goes with its step.
struct StepCheck {
    Id<StepCheck> id;
    Id<Job> job;
    Id<Step> step;
    std::string what{};
    bool done = false;
    std::string whyNot{};

    friend bool operator==(const StepCheck&, const StepCheck&) = default;
};

template <>
struct Description<BenchClock> {
    static constexpr std::string_view kKind = "bench_clock";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = BenchClock>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("who", &R::who),
                          field("line", &R::line),
                          field("technique", &R::technique),
                          field("place", &R::place),
                          field("started_at", &R::startedAt),
                          field("stopped_at", &R::stoppedAt),
                          field("step", &R::step),
                          field("note", &R::note)};
    }
};

template <>
struct Description<Setting> {
    static constexpr std::string_view kKind = "setting";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Setting>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("step", &R::step),
                          field("what", &R::what),
                          field("started_at", &R::startedAt),
                          field("ends_at", &R::endsAt),
                          field("seen_at", &R::seenAt),
                          field("seen_by", &R::seenBy)};
    }
};

template <>
struct Description<StepCheck> {
    static constexpr std::string_view kKind = "step_check";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = StepCheck>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),     field("job", &R::job),
                          field("step", &R::step), field("what", &R::what),
                          field("done", &R::done), field("why_not", &R::whyNot)};
    }
};

} // namespace headcap::core
