// The places of a job as its own records word them: those of the approved lines, whole ("SR 11,
// 12, 19") and each by itself ("SR 12"), and the names of its volumes. A line of the bench log is
// read with them, and so is told from words.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct KnownPlace {
    std::string text{};
    std::optional<Id<Item>> part;         // the one volume that it names
    std::optional<Id<ProposalLine>> line; // the approved line that words it so
    std::string technique{};              // of that line
};

// In the order of the lines, each line's whole place first; then the volumes.
[[nodiscard]] std::vector<KnownPlace> knownPlaces(const JobFile& file);

// The places of a list, each by itself: "SR 11, 12 and 19" gives SR 11, SR 12, SR 19; "SR 11–13"
// gives SR 11, SR 12, SR 13. Nothing of a place that is no list.
[[nodiscard]] std::vector<std::string> placesListed(std::string_view place);

// The one volume that the text names: "wrapper of SR 19"; nothing where it names several, or none.
[[nodiscard]] std::optional<Id<Item>> volumeIn(const std::vector<KnownPlace>& places,
                                               std::string_view text);

// What a step at that place carries out, where an approved line has the technique and the place:
// the place itself, or one of those it lists.
[[nodiscard]] std::optional<Id<ProposalLine>>
lineAt(const std::vector<KnownPlace>& places, std::string_view technique, std::string_view place);

} // namespace headcap::core
