#include "core/collation/copy_records.h"

#include <algorithm>

namespace headcap::core {
namespace {

template <class Record>
std::vector<Record> ofPart(const std::vector<Record>& records,
                           const std::optional<Id<Item>>& part) {
    std::vector<Record> found;
    std::copy_if(records.begin(), records.end(), std::back_inserter(found),
                 [&](const Record& r) { return r.part == part; });
    return found;
}

} // namespace

CopyRecords copyOf(const JobFile& file, const std::optional<Id<Item>>& part,
                   const Collation& collation) {
    return {.formula = collation.formula,
            .extent = collation.extent,
            .findings = ofPart(file.collationFindings, part),
            .facsimiles = ofPart(file.facsimiles, part),
            .plates = ofPart(file.plates, part),
            .walks = ofPart(file.walks, part),
            .entries = file.walkEntries,
            .people = file.people};
}

} // namespace headcap::core
