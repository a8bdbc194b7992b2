// The workshop's own finished work, as an estimate learns from it: what each job that has passed
// the bench took for a technique, how many pieces it was done to, how large the book was and what
// covered it.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/job_file.h"
#include "core/treatment/estimate.h"

namespace headcap::core {

// How many leaves, plates or gatherings a place names, where its own words say it: "B2, C1–C4" are
// five; one where they don't ("spine").
[[nodiscard]] std::int64_t countOfPlace(const std::string& place);

// "leather", "vellum", "cloth", "paper" by the words that describe a binding; empty: not said.
[[nodiscard]] std::string coveringOf(std::string_view binding);

// Of one job's standing steps of one technique; nothing where no time was noted. A line that a step
// carries out says how many pieces.
[[nodiscard]] std::optional<PastWork> pastWorkOf(const Item& item, std::span<const Step> steps,
                                                 std::span<const ProposalLine> lines);

// Of every job that has passed the bench, but for this one.
[[nodiscard]] std::vector<PastWork> loadPastWork(const RecordStore& store,
                                                 const std::vector<std::string>& techniques,
                                                 const Id<Job>& butFor);

[[nodiscard]] WorkAsked askedOf(const ProposalLine& line, const Item& item);

} // namespace headcap::core
