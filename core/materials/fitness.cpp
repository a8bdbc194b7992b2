#include "core/materials/fitness.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/materials/permanence.h"
#include "core/materials/shelf_life.h"
#include "core/values/decimal.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

struct Asked {
    const Lot& lot;
    const Material& kind;
    const FitnessPurpose& purpose;

    [[nodiscard]] std::optional<std::int64_t> ph() const {
        return lot.phHundredths ? lot.phHundredths : kind.phHundredths;
    }
    [[nodiscard]] std::optional<std::int64_t> reserve() const {
        return lot.alkaliReserveMmolKg ? lot.alkaliReserveMmolKg : kind.alkaliReserveMmolKg;
    }
    [[nodiscard]] LotAge age() const { return ageOf(lot, &kind, purpose.on); }
};

std::string pastDate(const Asked& asked) {
    return asked.age() == LotAge::overdue
               ? fmt::format("is past its date, {}", dayText(*goodUntilOf(asked.lot, &asked.kind)))
               : std::string{};
}

std::string nearDate(const Asked& asked) {
    return asked.age() == LotAge::nearDate
               ? fmt::format("is good until {}", dayText(*goodUntilOf(asked.lot, &asked.kind)))
               : std::string{};
}

std::string notPermanent(const Asked& asked) {
    if (!asked.purpose.stays || !isSheet(asked.kind.kind)) {
        return {};
    }
    for (const PermanenceFault fault : permanenceFaults(asked.ph(), asked.reserve())) {
        switch (fault) {
        case PermanenceFault::phTooLow:
            return fmt::format("has a pH of {}, under 7.5", decimalText(*asked.ph(), 2));
        case PermanenceFault::phTooHigh:
            return fmt::format("has a pH of {}, above 10", decimalText(*asked.ph(), 2));
        case PermanenceFault::reserveTooLow:
            return fmt::format("has an alkali reserve of {} mol/kg, under 0.4",
                               decimalText(*asked.reserve(), 3));
        }
    }
    return {};
}

std::string notReversible(const Asked& asked) {
    return asked.purpose.stays && asked.purpose.isPromisedReversible &&
                   asked.kind.reversibility == Reversibility::no
               ? "is not readily taken off again, and the step promises that it can be undone"
               : "";
}

std::string tooHeavy(const Asked& asked) {
    const auto mended = asked.purpose.mendedMgM2; // nothing is held against a guess
    if (!asked.purpose.isRepairOfPaper || !isSheet(asked.kind.kind) || !asked.purpose.stays ||
        !mended || asked.kind.grammageMgM2 <= *mended) {
        return {};
    }
    return fmt::format("weighs {} g/m², and what it mends {}",
                       decimalText(asked.kind.grammageMgM2, 3), decimalText(*mended, 3));
}

std::string grainAcross(const Asked& asked) {
    return asked.purpose.grainAtSpine == GrainAtSpine::across && isSheet(asked.kind.kind)
               ? "lies with its grain across the spine"
               : "";
}

// Of a sheet that has one: handmade paper without grain is not asked for it.
std::string grainUnsaid(const Asked& asked) {
    return asked.purpose.followsSpine && asked.purpose.stays && isSheet(asked.kind.kind) &&
                   asked.lot.grain != Grain::none &&
                   asked.purpose.grainAtSpine == GrainAtSpine::notSaid
               ? "follows the spine: say how its grain lies there"
               : "";
}

std::string bufferedOnPrint(const Asked& asked) {
    const bool isBuffered = asked.reserve().value_or(0) > 0 || asked.ph().value_or(700) > 750;
    return asked.purpose.touchesCyanotype && isSheet(asked.kind.kind) && isBuffered
               ? "is buffered, and cyanotypes fade beside alkali"
               : "";
}

// Records once kept the standard and its evidence in one field, with a comma between.
bool hasEvidence(const Asked& asked) {
    return !asked.lot.evidence.empty() || !asked.kind.evidence.empty() ||
           asked.kind.standard.find(',') != std::string::npos || asked.ph().has_value();
}

std::string claimUnproven(const Asked& asked) {
    return asked.purpose.stays && isSheet(asked.kind.kind) && !asked.kind.standard.empty() &&
                   !hasEvidence(asked)
               ? fmt::format("is said to meet {}, and no evidence is noted", asked.kind.standard)
               : std::string{};
}

std::string printUnstable(const Asked& asked) {
    return asked.purpose.isForFacsimile && asked.kind.kind == MaterialClass::ink &&
                   asked.kind.standard.empty() && asked.lot.evidence.empty() &&
                   asked.kind.evidence.empty()
               ? "prints a facsimile, and nothing is noted of how long its colours last"
               : "";
}

struct Rule {
    FitnessRule rule;
    bool asksReason;
    std::string_view source;
    std::string (*look)(const Asked&);
};

constexpr std::array kRules{
    Rule{FitnessRule::pastDate, true, "common practice", pastDate},
    Rule{FitnessRule::nearDate, false, "common practice", nearDate},
    Rule{FitnessRule::notPermanent, true, "ISO 9706", notPermanent},
    Rule{FitnessRule::notReversible, true, "E.C.C.O. II Art. 9", notReversible},
    Rule{FitnessRule::tooHeavy, false, "published practice: a repair is weaker than what it mends",
         tooHeavy},
    Rule{FitnessRule::grainAcross, true, "Cockerell 1901; Etherington & Roberts", grainAcross},
    Rule{FitnessRule::grainUnsaid, false, "Cockerell 1901; Etherington & Roberts", grainUnsaid},
    Rule{FitnessRule::bufferedOnPrint, true, "published guidance on cyanotypes", bufferedOnPrint},
    Rule{FitnessRule::claimUnproven, false, "ISO 9706", claimUnproven},
    Rule{FitnessRule::printUnstable, false, "ISO 11798", printUnstable},
};

} // namespace

bool isSheet(MaterialClass kind) {
    return kind == MaterialClass::paper || kind == MaterialClass::tissue ||
           kind == MaterialClass::board;
}

std::vector<FitnessPoint> fitnessOf(const Lot& lot, const Material& kind,
                                    const FitnessPurpose& purpose) {
    std::vector<FitnessPoint> points;
    for (const Rule& rule : kRules) {
        if (std::string sentence = rule.look({lot, kind, purpose}); !sentence.empty()) {
            points.push_back({rule.rule, rule.asksReason, std::move(sentence), rule.source});
        }
    }
    return points;
}

} // namespace headcap::core
