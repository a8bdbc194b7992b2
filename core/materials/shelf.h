// The shelf: all lots of a workshop with their kinds, what mixed ones were made from, and the
// ledger, as values. A job's file holds the same for the lots of its own (shelfOf).
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct Shelf {
    std::vector<Material> materials{};
    std::vector<Lot> lots{};
    std::vector<LotPart> parts{};
    std::vector<LedgerEntry> ledger{};

    [[nodiscard]] const Lot* lot(const Id<Lot>& id) const;
    [[nodiscard]] const Lot* numbered(std::string_view number) const; // letters of any case
    [[nodiscard]] const Material* material(const Id<Material>& id) const;
    [[nodiscard]] const Material* materialOf(const Id<Lot>& id) const;
    // Of what there is on paper; nothing where the lot's kind is not known, or entries of another
    // unit stand against it.
    [[nodiscard]] std::optional<Amount> balanceOf(const Id<Lot>& id) const;
};

[[nodiscard]] Shelf loadShelf(const RecordStore& store);
[[nodiscard]] Shelf shelfOf(const JobFile& file);

// What a label, a list and the report call a lot: "26-014, wheat starch paste".
[[nodiscard]] std::string lotName(const Lot& lot, const Material* material);

} // namespace headcap::core
