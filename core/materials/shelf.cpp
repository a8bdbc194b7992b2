#include "core/materials/shelf.h"

#include <algorithm>

#include "core/materials/ledger.h"
#include "core/values/unit_text.h"

namespace headcap::core {
namespace {

template <class Record>
const Record* lookUp(const std::vector<Record>& records, const Id<Record>& id) {
    const auto found = std::ranges::find(records, id, &Record::id);
    return found == records.end() ? nullptr : &*found;
}

template <class Record>
std::vector<Record> everything(const RecordStore& store) {
    std::vector<Record> records;
    for (auto& stored : all<Record>(store)) {
        records.push_back(std::move(stored.record));
    }
    return records;
}

} // namespace

const Lot* Shelf::lot(const Id<Lot>& id) const {
    return lookUp(lots, id);
}

const Lot* Shelf::numbered(std::string_view number) const {
    const auto found =
        std::ranges::find_if(lots, [&](const Lot& lot) { return sameLetters(lot.number, number); });
    return found == lots.end() ? nullptr : &*found;
}

const Material* Shelf::material(const Id<Material>& id) const {
    return lookUp(materials, id);
}

const Material* Shelf::materialOf(const Id<Lot>& id) const {
    const Lot* found = lot(id);
    return found ? material(found->material) : nullptr;
}

std::optional<Amount> Shelf::balanceOf(const Id<Lot>& id) const {
    const Material* kind = materialOf(id);
    return kind ? core::balanceOf(id, kind->unit, ledger) : std::nullopt;
}

Shelf loadShelf(const RecordStore& store) {
    return {everything<Material>(store), everything<Lot>(store), everything<LotPart>(store),
            everything<LedgerEntry>(store)};
}

Shelf shelfOf(const JobFile& file) {
    return {file.materials, file.lots, file.lotParts, file.ledger};
}

std::string lotName(const Lot& lot, const Material* material) {
    const std::string what = material ? material->name : lot.product;
    return what.empty() ? lot.number : lot.number + ", " + what;
}

} // namespace headcap::core
