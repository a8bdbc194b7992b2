// What the record keeps of letting a book go: the release list as answered, what was explained, and
// the return itself.
#pragma once

#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/record/record_ref.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Job;
struct Person;

enum class ReleaseAnswer { open, done, explained };

// A row of the release list that a person answered. Rows the record itself answers are not kept.
struct ReleaseCheck {
    Id<ReleaseCheck> id;
    Id<Job> job;
    std::string key{}; // of the row
    ReleaseAnswer answer = ReleaseAnswer::open;
    std::string why{};
    std::optional<Id<Person>> who;
    std::optional<Instant> at{};

    friend bool operator==(const ReleaseCheck&, const ReleaseCheck&) = default;
};

// Why what was done differs from what was approved, or an open row may stay open.
struct Explanation {
    Id<Explanation> id;
    Id<Job> job;
    RecordRef subject;  // the step, line or other record it speaks of
    std::string rule{}; // of the audit, where it answers one
    std::string text{};
    std::optional<Id<Person>> who;
    Instant at;

    friend bool operator==(const Explanation&, const Explanation&) = default;
};

// The return of the book, or of a part of it.
struct HandBack {
    Id<HandBack> id;
    Id<Job> job;
    Day onDay;
    std::optional<Id<Person>> who;
    std::string givenTo{};
    std::string means{}; // fetched, sent by whom
    std::string condition{};
    std::string wentWith{}; // what went with it
    std::string receipt{};
    std::optional<Day> objectBy{};
    std::optional<Day> nextLookOn{};
    std::string note{};

    friend bool operator==(const HandBack&, const HandBack&) = default;
};

template <>
struct EnumNames<ReleaseAnswer> {
    static constexpr std::array<std::string_view, 3> kNames{"open", "done", "explained"};
};

template <>
struct Description<ReleaseCheck> {
    static constexpr std::string_view kKind = "release_check";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = ReleaseCheck>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),      field("job", &R::job),
                          field("key", &R::key),    field("answer", &R::answer),
                          searched("why", &R::why), field("who", &R::who),
                          field("at", &R::at)};
    }
};

template <>
struct Description<Explanation> {
    static constexpr std::string_view kKind = "explanation";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Explanation>
    static constexpr auto fields() {
        return std::tuple{
            field("id", &R::id),     field("job", &R::job),      field("subject", &R::subject),
            field("rule", &R::rule), searched("text", &R::text), field("who", &R::who),
            field("at", &R::at)};
    }
};

template <>
struct Description<HandBack> {
    static constexpr std::string_view kKind = "hand_back";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = HandBack>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("on_day", &R::onDay),
                          field("who", &R::who),
                          field("given_to", &R::givenTo),
                          field("means", &R::means),
                          searched("condition", &R::condition),
                          field("went_with", &R::wentWith),
                          field("receipt", &R::receipt),
                          field("object_by", &R::objectBy),
                          field("next_look_on", &R::nextLookOn),
                          searched("note", &R::note)};
    }
};

} // namespace headcap::core
