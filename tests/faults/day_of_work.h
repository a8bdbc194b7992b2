// A day's work in a workshop, one write of each kind after another, each with a key by which it
// can be looked for afterwards.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "core/record/stores.h"

namespace headcap::test {

inline const core::Progress kGoOn = [](std::int64_t, std::int64_t) { return true; };

// What must be there for work to be done on it; made once.
struct Bench {
    core::Id<core::Person> person;
    core::Id<core::Job> job;
    core::Id<core::Lot> lot;
};
[[nodiscard]] Bench setUpBench(core::Stores stores, core::IdSource& ids, const core::Clock& clock);
[[nodiscard]] std::optional<Bench> benchOf(core::Stores stores);

class DayOfWork {
public:
    DayOfWork(core::Stores stores, core::IdSource& ids, const core::Clock& clock, Bench bench,
              std::uint64_t seed)
        : m_stores(stores), m_ids(ids), m_clock(clock), m_bench(bench), m_chance(seed) {}

    // Does the next piece of work; the key of what must be there from now on, once it returns.
    // Nothing where the work was a backup, an undo or the like.
    std::optional<core::RecordRef> next();

    // The same without reports, whose numbers another window would take, and without undo.
    std::optional<core::RecordRef> addOnly();

private:
    std::optional<core::RecordRef> logStep();
    std::optional<core::RecordRef> importPhotograph();
    std::optional<core::RecordRef> mixLot();
    std::optional<core::RecordRef> issueReport();
    std::optional<core::RecordRef> noteFinding();
    std::optional<core::RecordRef> undoAndRedo();
    std::optional<core::RecordRef> must(const core::Change& change, core::RecordRef ref);
    core::Digest keep(core::FileStore::Shelf shelf);
    std::string words(std::size_t count);

    core::Stores m_stores;
    core::IdSource& m_ids;
    const core::Clock& m_clock;
    Bench m_bench;
    std::mt19937_64 m_chance;
    std::int64_t m_reports = 0;
};

// Whether a record that was acknowledged is there; or was, and the journal says that the last thing
// done was to undo it, for the end may come between an undo and the redo that follows.
[[nodiscard]] bool isKept(core::Stores stores, const core::RecordRef& ref);

// What a check of the whole finds, as lines; empty where it is sound.
[[nodiscard]] std::string findings(core::Stores stores);

} // namespace headcap::test
