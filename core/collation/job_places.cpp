#include "core/collation/job_places.h"

#include <algorithm>

#include "core/collation/walk.h"

namespace headcap::core {
namespace {

std::string labelOf(const JobFile& file, const std::optional<Id<Item>>& part) {
    const Item* item = file.parts.empty() ? nullptr : file.part(part);
    return item == nullptr             ? std::string{}
           : item->volumeLabel.empty() ? headingOf(*item)
                                       : item->volumeLabel;
}

} // namespace

std::vector<VolumeBook> booksOf(const JobFile& file) {
    std::vector<VolumeBook> books;
    for (const Collation& collation : file.collations) {
        VolumeBook volume{collation.part, labelOf(file, collation.part),
                          walkedBook(collation.formula, collation.extent).book};
        if (volume.book.leaves.empty()) {
            continue;
        }
        for (const CalledPlate& plate : file.plates) {
            if (plate.part == collation.part) {
                volume.book.plates.push_back(plate.name);
            }
        }
        books.push_back(std::move(volume));
    }
    return books;
}

std::optional<PlaceReading> readPlace(const std::vector<VolumeBook>& books,
                                      const std::optional<Id<Item>>& part, std::string_view text) {
    const auto isNamed = [&](const VolumeBook& volume) { return part && volume.part == part; };
    const bool isOne = std::ranges::any_of(books, isNamed);
    std::optional<PlaceReading> best;
    for (const VolumeBook& volume : books) {
        if (isOne && !isNamed(volume)) {
            continue;
        }
        auto reading = readPlace(volume.book, text);
        if (!reading) {
            return std::nullopt; // what this volume has is not known
        }
        if (reading->isThere && !isOne && books.size() > 1 && !volume.label.empty()) {
            reading->text = volume.label + ": " + reading->text;
        }
        const auto rank = [](const PlaceReading& one) {
            return one.isThere ? 2 : one.isAbsent ? 0 : 1;
        };
        if (!best || rank(*reading) > rank(*best)) {
            best = std::move(reading);
        }
    }
    return best;
}

} // namespace headcap::core
