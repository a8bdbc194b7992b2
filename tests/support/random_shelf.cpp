#include "tests/support/random_shelf.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/materials/ledger.h"
#include "core/values/contract.h"
#include "tests/support/job_builder.h"

namespace headcap::core::tests {
namespace {

std::size_t below(std::mt19937_64& chance, std::size_t n) {
    return std::uniform_int_distribution<std::size_t>{0, n - 1}(chance);
}

Amount grams(std::int64_t g) {
    return Amount::of(Mass::grams(g));
}

} // namespace

RandomShelf::RandomShelf(std::uint64_t seed, const ShelfSizes& sizes)
    : clock(at(day(2031, 4, 2))), ids(clock, seed) {
    std::mt19937_64 chance{seed};
    shelf.materials.push_back({.id = ids.next<Material>(),
                               .name = "paste",
                               .kind = MaterialClass::adhesivePrepared,
                               .unit = Unit::gram});
    all.materials = shelf.materials;
    for (int i = 0; i < sizes.jobs; ++i) {
        const Owner owner{.id = ids.next<Owner>(), .name = fmt::format("Owner {}", i)};
        const Item item{.id = ids.next<Item>(), .owner = owner.id, .partOf = std::nullopt};
        all.owners.push_back(owner);
        all.items.push_back(item);
        all.jobs.push_back({.id = ids.next<Job>(),
                            .number = fmt::format("2031-{:03}", i),
                            .item = item.id,
                            .owner = owner.id,
                            .receivedOn = day(2031, 1, 1)});
    }
    shelf.lots.reserve(static_cast<std::size_t>(sizes.lots));
    for (int i = 0; i < sizes.lots; ++i) {
        addLot(chance, i, sizes);
    }
    all.lots = shelf.lots;
    all.parts = shelf.parts;
    for (int i = 0; i < sizes.uses; ++i) {
        addUse(chance);
    }
}

void RandomShelf::addLot(std::mt19937_64& chance, int number, const ShelfSizes& sizes) {
    const Hand hand{std::nullopt, clock.now()};
    Lot lot{.id = ids.next<Lot>(),
            .number = fmt::format("31-{:05}", number),
            .material = shelf.materials.front().id,
            .savedFrom = "an account book",
            .savedIn = std::nullopt,
            .mixedBy = std::nullopt,
            .parent = std::nullopt};
    const std::size_t known = shelf.lots.size();
    const std::size_t from =
        sizes.nearest == 0 ? 0 : known - std::min(known, static_cast<std::size_t>(sizes.nearest));
    const auto kind = known < 3 ? 0 : below(chance, 6);
    const auto any = [&] { return shelf.lots[from + below(chance, known - from)].id; };
    tl::expected<Change, LedgerProblem> change = tl::unexpected(LedgerProblem::numberMissing);
    if (kind == 3 || kind == 4) {
        std::vector<MixPart> parts;
        Amount yield = grams(0);
        for (std::size_t i = 0; i <= below(chance, 3); ++i) {
            parts.push_back({any(), grams(1 + static_cast<std::int64_t>(below(chance, 20)))});
            yield = *sum(yield, parts.back().amount);
        }
        lot.origin = LotOrigin::mixed;
        change = mixLot(lot, parts, yield, shelf, hand, ids);
    } else {
        lot.origin = kind == 0 ? LotOrigin::bought : LotOrigin::saved;
        if (kind == 5) {
            lot.origin = LotOrigin::offcut;
            lot.parent = any();
        }
        change = receiveLot(lot, grams(1'000), shelf, hand, ids);
    }
    HEADCAP_CONTRACT(change.has_value());
    for (const Write& write : change->writes) {
        if (const auto* added = std::get_if<Lot>(&write.record)) {
            shelf.lots.push_back(*added);
        } else if (const auto* part = std::get_if<LotPart>(&write.record)) {
            shelf.parts.push_back(*part);
        } else {
            shelf.ledger.push_back(std::get<LedgerEntry>(write.record));
        }
    }
    clock.pass(std::chrono::minutes{1});
}

void RandomShelf::addUse(std::mt19937_64& chance) {
    const Lot& lot = shelf.lots[below(chance, shelf.lots.size())];
    const Job& job = all.jobs[below(chance, all.jobs.size())];
    Step step{.id = ids.next<Step>(),
              .job = job.id,
              .part = std::nullopt,
              .at = clock.now(),
              .who = Id<Person>{ids.nextUuid()},
              .technique = "tear_mending",
              .place = "B2",
              .line = std::nullopt,
              .corrects = std::nullopt,
              .struckBy = std::nullopt};
    if (below(chance, 8) == 0) {
        step.struckAt = clock.now();
    }
    const MaterialUse use{.id = ids.next<MaterialUse>(),
                          .job = job.id,
                          .step = step.id,
                          .lot = lot.id,
                          .amount = grams(1)};
    const LedgerEntry entry{.id = ids.next<LedgerEntry>(),
                            .lot = lot.id,
                            .at = step.at,
                            .who = step.who,
                            .kind = LedgerKind::used,
                            .amount = grams(-1),
                            .use = use.id,
                            .contraryOf = std::nullopt};
    shelf.ledger.push_back(entry);
    if (step.struckAt) {
        LedgerEntry back = entry;
        back.id = ids.next<LedgerEntry>();
        back.kind = LedgerKind::contrary;
        back.amount = grams(1);
        back.contraryOf = entry.id;
        shelf.ledger.push_back(back);
    }
    all.steps.push_back(step);
    all.uses.push_back(use);
    clock.pass(std::chrono::minutes{1});
}

} // namespace headcap::core::tests
