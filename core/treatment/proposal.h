// What was proposed, and what the owner decided: a proposal has options, doing nothing among
// them; an option has lines. An oral approval is noted with who, when and how (AIC Commentary
// 26).
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/id.h"
#include "core/values/money.h"
#include "core/values/time.h"

namespace headcap::core {

struct Job;
struct Person;

enum class DecisionKind { approved, approvedWithLimits, declined, moreAsked };

enum class DecisionMeans { signature, letter, email, spoken };

struct Proposal {
    Id<Proposal> id;
    Id<Job> job;
    std::int64_t version = 1;
    Day madeOn;
    std::optional<Id<Person>> who;
    std::string aim{};
    std::string notIncluded{};
    std::string risks{};
    std::optional<Day> sentOn{};
    std::string note{};
    std::int64_t taxPpm = 0; // 200,000 is 20 %
    bool taxPerLine = false;
    std::optional<Money> deposit{};
    std::optional<Money> insuredValue{};
    std::optional<Day> validUntil{};
    std::optional<Day> startOn{};
    std::optional<Day> readyOn{};

    friend bool operator==(const Proposal&, const Proposal&) = default;
};

struct ProposalOption {
    Id<ProposalOption> id;
    Id<Job> job;
    Id<Proposal> proposal;
    std::int64_t position = 1;
    std::string name{}; // "A", "Do nothing"
    std::string effect{};
    std::string risk{};
    std::string irreversible{}; // what can't be undone

    friend bool operator==(const ProposalOption&, const ProposalOption&) = default;
};

struct ProposalLine {
    Id<ProposalLine> id;
    Id<Job> job;
    Id<ProposalOption> option;
    std::int64_t position = 1;
    std::string technique{}; // key of resources/techniques.json, or the workshop's own word
    std::string place{};
    std::string description{};
    std::string materials{};
    Minutes minutes{0};
    std::optional<Money> price{};
    std::int64_t count = 1; // of what the technique is done to
    std::optional<Money> materialsCost{};

    friend bool operator==(const ProposalLine&, const ProposalLine&) = default;
};

struct Decision {
    Id<Decision> id;
    Id<Job> job;
    Id<Proposal> proposal;
    std::optional<Id<ProposalOption>> option;
    DecisionKind kind = DecisionKind::approved;
    std::string limits{}; // "ask me above 400"
    std::string byName{};
    std::string authority{};
    Day onDay;
    DecisionMeans means = DecisionMeans::email;
    std::string note{};
    std::optional<Money> limit{}; // not to be gone above without asking

    friend bool operator==(const Decision&, const Decision&) = default;
};

template <>
struct EnumNames<DecisionKind> {
    static constexpr std::array<std::string_view, 4> kNames{"approved", "approved_with_limits",
                                                            "declined", "more_asked"};
};

template <>
struct EnumNames<DecisionMeans> {
    static constexpr std::array<std::string_view, 4> kNames{"signature", "letter", "email",
                                                            "spoken"};
};

template <>
struct Description<Proposal> {
    static constexpr std::string_view kKind = "proposal";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Proposal>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("version", &R::version),
                          field("made_on", &R::madeOn),
                          field("who", &R::who),
                          searched("aim", &R::aim),
                          field("not_included", &R::notIncluded),
                          field("risks", &R::risks),
                          field("sent_on", &R::sentOn),
                          field("note", &R::note),
                          field("tax_ppm", &R::taxPpm),
                          field("tax_per_line", &R::taxPerLine),
                          field("deposit", &R::deposit),
                          field("insured_value", &R::insuredValue),
                          field("valid_until", &R::validUntil),
                          field("start_on", &R::startOn),
                          field("ready_on", &R::readyOn)};
    }
};

template <>
struct Description<ProposalOption> {
    static constexpr std::string_view kKind = "proposal_option";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = ProposalOption>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("proposal", &R::proposal),
                          field("position", &R::position),
                          searched("name", &R::name),
                          searched("effect", &R::effect),
                          searched("risk", &R::risk),
                          searched("irreversible", &R::irreversible)};
    }
};

template <>
struct Description<ProposalLine> {
    static constexpr std::string_view kKind = "proposal_line";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = ProposalLine>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("option", &R::option),
                          field("position", &R::position),
                          searched("technique", &R::technique),
                          field("place", &R::place),
                          searched("description", &R::description),
                          field("materials", &R::materials),
                          field("minutes", &R::minutes),
                          field("price", &R::price),
                          field("count", &R::count),
                          field("materials_cost", &R::materialsCost)};
    }
};

template <>
struct Description<Decision> {
    static constexpr std::string_view kKind = "decision";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Decision>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("proposal", &R::proposal),
                          field("option", &R::option),
                          field("kind", &R::kind),
                          field("limits", &R::limits),
                          field("by_name", &R::byName),
                          field("authority", &R::authority),
                          field("on_day", &R::onDay),
                          field("means", &R::means),
                          field("note", &R::note),
                          field("limit", &R::limit)};
    }
};

} // namespace headcap::core
