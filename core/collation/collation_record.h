// What the record keeps of a collation: the make-up as published, the statement of this copy,
// and what was found leaf by leaf.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Item;
struct Job;
struct Person;

enum class CollationKind {
    lacking,
    loose,
    detached,
    misbound,
    duplicated,
    cancel,
    inserted,
    supplied,
    facsimile,
    misnumbered,
    missigned,
    tornWithLoss,
    torn,
    trimmedIntoText,
    blankLacking,
    foldedPlate,
    other
};

// What is done about it.
enum class CollationDecision { undecided, leftAsIs, toBeSupplied, sought, madeGood, notNeeded };

// One to a volume of a job.
struct Collation {
    Id<Collation> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    std::string formula{};            // as typed; empty where there is none
    std::string extent{};             // pagination statement
    std::string authority{};          // the bibliography or copy it is collated against
    std::string statement{};          // of this copy
    std::string method{};             // how it was established
    std::string notExamined{};        // what was not looked at
    std::int64_t leavesCalledFor = 0; // 0: not established
    std::int64_t leavesPresent = 0;
    std::int64_t platesCalledFor = 0;
    std::int64_t platesPresent = 0;
    std::optional<Day> finishedOn{};
    std::optional<Id<Person>> who;

    friend bool operator==(const Collation&, const Collation&) = default;
};

struct CollationFinding {
    Id<CollationFinding> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    CollationKind kind = CollationKind::other;
    std::string place{}; // leaf set as text
    std::string note{};
    bool onArrival = true; // so when it came; false: found or caused later
    CollationDecision decision = CollationDecision::undecided;
    std::string decisionNote{};
    std::optional<Id<Person>> who;
    std::string found{};    // as it is: where it is bound, as printed
    std::string expected{}; // as it should be

    friend bool operator==(const CollationFinding&, const CollationFinding&) = default;
};

template <>
struct EnumNames<CollationKind> {
    static constexpr std::array<std::string_view, 17> kNames{
        "lacking",      "loose",          "detached", "misbound",          "duplicated",
        "cancel",       "inserted",       "supplied", "facsimile",         "misnumbered",
        "missigned",    "torn_with_loss", "torn",     "trimmed_into_text", "blank_lacking",
        "folded_plate", "other"};
};

template <>
struct EnumNames<CollationDecision> {
    static constexpr std::array<std::string_view, 6> kNames{
        "undecided", "left_as_is", "to_be_supplied", "sought", "made_good", "not_needed"};
};

template <>
struct Description<Collation> {
    static constexpr std::string_view kKind = "collation";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Collation>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          searched("formula", &R::formula),
                          field("extent", &R::extent),
                          searched("authority", &R::authority),
                          searched("statement", &R::statement),
                          field("method", &R::method),
                          field("not_examined", &R::notExamined),
                          field("leaves_called_for", &R::leavesCalledFor),
                          field("leaves_present", &R::leavesPresent),
                          field("plates_called_for", &R::platesCalledFor),
                          field("plates_present", &R::platesPresent),
                          field("finished_on", &R::finishedOn),
                          field("who", &R::who)};
    }
};

template <>
struct Description<CollationFinding> {
    static constexpr std::string_view kKind = "collation_finding";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = CollationFinding>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("kind", &R::kind),
                          searched("place", &R::place),
                          searched("note", &R::note),
                          field("on_arrival", &R::onArrival),
                          field("decision", &R::decision),
                          searched("decision_note", &R::decisionNote),
                          field("who", &R::who),
                          field("found", &R::found),
                          field("expected", &R::expected)};
    }
};

} // namespace headcap::core
