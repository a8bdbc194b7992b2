// Where a lot went: every step, facsimile and cutting it was used in, itself or through whatever
// was mixed from it or cut off it, in any number of turns, with the jobs and the owners to tell.
// Struck steps put nothing in.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/materials/cutting_record.h"
#include "core/materials/material.h"
#include "core/record/job_file.h"

namespace headcap::core {

// What a trace is drawn from; the whole workshop, or only what the lot reaches.
struct Whereabouts {
    std::vector<Material> materials{};
    std::vector<Lot> lots{};
    std::vector<LotPart> parts{};
    std::vector<MaterialUse> uses{};
    std::vector<Step> steps{};
    std::vector<Facsimile> facsimiles{};
    std::vector<Cutting> cuttings{};
    std::vector<CutPart> cutParts{};
    std::vector<Job> jobs{};
    std::vector<Item> items{};
    std::vector<Owner> owners{};
    TechniquesInForce techniques{};
    bool hasMoreUses = false; // older than those that were asked for
};

// Only what this lot reaches, found by what names it; of each lot the newest uses, where only so
// many are asked for.
[[nodiscard]] Whereabouts loadWhereabouts(const RecordStore& store, const Id<Lot>& lot,
                                          std::optional<std::size_t> mostUses = std::nullopt);

struct TracedUse {
    const Lot* lot; // that was used
    const MaterialUse* use;
    const Step* step;
};

struct TracedLeaf {
    const Lot* lot;
    const Facsimile* leaf;
    bool isPrintedOn = false; // or else held by it
};

// A piece cut for the job; whether a step has put it in, the step says.
struct TracedPiece {
    const Lot* lot;
    const Cutting* cutting;
    const CutPart* piece;
};

struct TracedJob {
    const Job* job;
    const Item* item = nullptr;
    const Owner* owner = nullptr;    // at the time of the job
    const Owner* ownerNow = nullptr; // where the book has since gone to another
    std::vector<TracedUse> uses{};   // in order of time
    std::vector<TracedLeaf> leaves{};
    std::vector<TracedPiece> pieces{};
};

// Points into the whereabouts it was drawn from.
struct LotTrace {
    const Lot* lot = nullptr;
    std::vector<const Lot*> lots{}; // made from it: the nearest first, then by number
    std::vector<TracedJob> jobs{};  // by number
    TechniquesInForce techniques{};

    // The lots on every way from the traced lot to this one, which comes last; none for itself.
    [[nodiscard]] std::vector<const Lot*> through(const Lot& used) const;

    std::map<const Lot*, std::vector<const Lot*>> madeFrom{}; // of `lots`, only what is traced
};

// Nothing where there is no such lot. A lot that, by a wrong record, was made from itself is
// followed once.
[[nodiscard]] std::optional<LotTrace> traceLot(const Whereabouts& all, const Id<Lot>& lot);

} // namespace headcap::core
