// The bench log: who did what, when, where in the book, with which lots. A step is never
// deleted: it can be struck, or corrected by a further one.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/amount.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Item;
struct Job;
struct Lot;
struct Person;
struct ProposalLine;

enum class StepKind { treatment, examination, removal, uncovering, incident };

// Whether the step can be undone.
enum class Reversibility { unknown, yes, withCare, no };

// How the grain of a sheet lies where it follows the spine.
enum class GrainAtSpine { notSaid, along, across, noGrain };

// Once written, only the striking of a step may be added to it.
struct Step {
    Id<Step> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    Instant at; // when it was begun
    Id<Person> who;
    StepKind kind = StepKind::treatment;
    std::string technique{}; // key of resources/techniques.json, or the workshop's own word
    std::string place{};     // leaf set as text
    std::string description{};
    Minutes minutes{0};
    Reversibility reversibility = Reversibility::unknown;
    std::string undoing{};                // how it is undone
    std::string removed{};                // original matter taken out, moved or kept aside
    std::string removedFate{};            // what became of it
    std::optional<Instant> setsUntil{};   // setting or pressing time
    std::optional<Id<ProposalLine>> line; // the approved line it carries out
    std::optional<Id<Step>> corrects;     // the struck step this one says rightly
    std::optional<Instant> struckAt{};
    std::optional<Id<Person>> struckBy;
    std::string struckWhy{};
    std::optional<std::int64_t> temperatureTenthsC{};
    std::optional<std::int64_t> humidityPercent{};
    std::string concentration{};
    std::string pressure{};

    friend bool operator==(const Step&, const Step&) = default;
};

// What a step put in, or used up: from a lot, in what amount, where it sits, and how it comes
// off.
struct MaterialUse {
    Id<MaterialUse> id;
    Id<Job> job;
    Id<Step> step;
    std::optional<Id<Lot>> lot;
    std::string material{}; // in words, where there is no lot
    std::optional<Amount> amount{};
    std::string role{}; // "adhesive", "repair paper"
    bool stays = true;  // false: used up, nothing of it stays in the book
    std::string place{};
    std::string removal{};
    std::string overrideReason{}; // why an unfit or overdue lot was used all the same
    GrainAtSpine grainAtSpine = GrainAtSpine::notSaid;

    friend bool operator==(const MaterialUse&, const MaterialUse&) = default;
};

template <>
struct EnumNames<StepKind> {
    static constexpr std::array<std::string_view, 5> kNames{"treatment", "examination", "removal",
                                                            "uncovering", "incident"};
};

template <>
struct EnumNames<Reversibility> {
    static constexpr std::array<std::string_view, 4> kNames{"unknown", "yes", "with_care", "no"};
};

template <>
struct EnumNames<GrainAtSpine> {
    static constexpr std::array<std::string_view, 4> kNames{"not_said", "along", "across",
                                                            "no_grain"};
};

template <>
struct Description<Step> {
    static constexpr std::string_view kKind = "step";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = Step>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("at", &R::at),
                          field("who", &R::who),
                          field("kind", &R::kind),
                          searched("technique", &R::technique),
                          searched("place", &R::place),
                          searched("description", &R::description),
                          field("minutes", &R::minutes),
                          field("reversibility", &R::reversibility),
                          searched("undoing", &R::undoing),
                          searched("removed", &R::removed),
                          field("removed_fate", &R::removedFate),
                          field("sets_until", &R::setsUntil),
                          field("line", &R::line),
                          field("corrects", &R::corrects),
                          field("struck_at", &R::struckAt),
                          field("struck_by", &R::struckBy),
                          field("struck_why", &R::struckWhy),
                          field("temperature_tenths_c", &R::temperatureTenthsC),
                          field("humidity_percent", &R::humidityPercent),
                          field("concentration", &R::concentration),
                          field("pressure", &R::pressure)};
    }
};

template <>
struct Description<MaterialUse> {
    static constexpr std::string_view kKind = "material_use";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = MaterialUse>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("step", &R::step),
                          field("lot", &R::lot),
                          searched("material", &R::material),
                          field("amount", &R::amount),
                          searched("role", &R::role),
                          field("stays", &R::stays),
                          field("place", &R::place),
                          field("removal", &R::removal),
                          field("override_reason", &R::overrideReason),
                          field("grain_at_spine", &R::grainAtSpine)};
    }
};

} // namespace headcap::core
