// Places given anywhere in a job, against the make-up of its book, volume by volume.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/collation/place_words.h"
#include "core/record/job_file.h"

namespace headcap::core {

struct VolumeBook {
    std::optional<Id<Item>> part;
    std::string label; // "vol. 2"; empty of a book of one volume
    LaidBook book;     // its plates by their names
};

// The volumes whose make-up is known.
[[nodiscard]] std::vector<VolumeBook> booksOf(const JobFile& file);

// In the volume that is named, or in whichever has it.
[[nodiscard]] std::optional<PlaceReading> readPlace(const std::vector<VolumeBook>& books,
                                                    const std::optional<Id<Item>>& part,
                                                    std::string_view text);

} // namespace headcap::core
