// The condition as surveyed: findings, each of one place and one term, what was seen kept apart
// from what is inferred; how the item was examined; spot tests.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/id.h"
#include "core/values/measures.h"
#include "core/values/time.h"

namespace headcap::core {

struct Item;
struct Job;
struct Person;

enum class Activity { unknown, stable, active };

// May it be handled?
enum class Handling { yes, withCare, no };

// How it was looked at, and what was not looked at.
struct Examination {
    Id<Examination> id;
    Id<Job> job;
    std::optional<Id<Item>> part; // the volume, where the item has several
    Day onDay;
    std::optional<Id<Person>> who;
    std::string method{}; // light, magnification
    std::string notExamined{};

    friend bool operator==(const Examination&, const Examination&) = default;
};

struct Finding {
    Id<Finding> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    std::string component{};    // key of the vocabulary in resources/condition_terms.json: "boards"
    std::string term{};         // "detached"
    std::string place{};        // leaf set, board and edge, as text
    std::string extent{};       // leaves, mm², %, as people write it
    std::optional<Area> area{}; // where it was measured
    std::int64_t severity = 0;  // 0 none to 3 severe; -1 not said
    Activity activity = Activity::unknown;
    Handling handling = Handling::yes;
    std::string observed{};     // what was seen
    std::string inferred{};     // cause, as opinion
    bool earlierRepair = false; // the finding is of an earlier repair

    friend bool operator==(const Finding&, const Finding&) = default;
};

// A spot test or sample: non-invasive first; a sample needs consent (AIC Commentary 16, 17).
struct Test {
    Id<Test> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    Day onDay;
    std::optional<Id<Person>> who;
    std::string place{};
    std::string purpose{}; // "solubility of the ink in water"
    std::string method{};
    std::string result{};
    bool sampleTaken = false;
    std::string consent{}; // of the owner to a sample
    std::string kept{};    // what was kept of it

    friend bool operator==(const Test&, const Test&) = default;
};

template <>
struct EnumNames<Activity> {
    static constexpr std::array<std::string_view, 3> kNames{"unknown", "stable", "active"};
};

template <>
struct EnumNames<Handling> {
    static constexpr std::array<std::string_view, 3> kNames{"yes", "with_care", "no"};
};

template <>
struct Description<Examination> {
    static constexpr std::string_view kKind = "examination";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Examination>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("on_day", &R::onDay),
                          field("who", &R::who),
                          field("method", &R::method),
                          field("not_examined", &R::notExamined)};
    }
};

template <>
struct Description<Finding> {
    static constexpr std::string_view kKind = "finding";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Finding>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          searched("component", &R::component),
                          searched("term", &R::term),
                          searched("place", &R::place),
                          field("extent", &R::extent),
                          field("area", &R::area),
                          field("severity", &R::severity),
                          field("activity", &R::activity),
                          field("handling", &R::handling),
                          searched("observed", &R::observed),
                          searched("inferred", &R::inferred),
                          field("earlier_repair", &R::earlierRepair)};
    }
};

template <>
struct Description<Test> {
    static constexpr std::string_view kKind = "test";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Test>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("on_day", &R::onDay),
                          field("who", &R::who),
                          searched("place", &R::place),
                          searched("purpose", &R::purpose),
                          searched("method", &R::method),
                          searched("result", &R::result),
                          field("sample_taken", &R::sampleTaken),
                          field("consent", &R::consent),
                          field("kept", &R::kept)};
    }
};

} // namespace headcap::core
