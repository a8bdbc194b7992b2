// A technique as this workshop does it: in place of the one of its key that ships, or one more.
// Lists are kept one a line.
#pragma once

#include <string>

#include "core/record/describe.h"
#include "core/treatment/step.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct HouseTechnique {
    Id<HouseTechnique> id;
    std::string key{};
    std::string name{};
    StepKind kind = StepKind::treatment;
    std::string said{};
    std::string doneTo{};
    std::string materials{};
    Minutes minutes{0};         // usual, for one of what it is done to; 0: not known
    std::string minutesBasis{}; // "a leaf"
    Minutes sets{0};            // setting, drying or pressing time
    Reversibility reversibility = Reversibility::unknown;
    std::string undoing{};
    bool adds = false;
    bool wets = false;
    bool testsMedia = false;
    bool disbinds = false;
    std::string checks{};
    std::string cautions{};
    std::string before{};
    std::string advice{};
    std::string source{};
    bool retired = false; // no longer offered

    friend bool operator==(const HouseTechnique&, const HouseTechnique&) = default;
};

template <>
struct Description<HouseTechnique> {
    static constexpr std::string_view kKind = "house_technique";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = HouseTechnique>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("key", &R::key),
                          searched("name", &R::name),
                          field("kind", &R::kind),
                          field("said", &R::said),
                          field("done_to", &R::doneTo),
                          field("materials", &R::materials),
                          field("minutes", &R::minutes),
                          field("minutes_basis", &R::minutesBasis),
                          field("sets", &R::sets),
                          field("reversibility", &R::reversibility),
                          field("undoing", &R::undoing),
                          field("adds", &R::adds),
                          field("wets", &R::wets),
                          field("tests_media", &R::testsMedia),
                          field("disbinds", &R::disbinds),
                          field("checks", &R::checks),
                          field("cautions", &R::cautions),
                          field("before", &R::before),
                          field("advice", &R::advice),
                          field("source", &R::source),
                          field("retired", &R::retired)};
    }
};

} // namespace headcap::core
