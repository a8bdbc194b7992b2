#include "core/materials/free_lot_number.h"

#include "core/custody/job_states.h"

namespace headcap::core {

std::optional<std::string> freeLotNumber(const RecordStore& store, Day today) {
    return nextLotNumber(store.greatest(RecordKind::lot, "number", lotNumberPrefix(today.year())),
                         today.year());
}

} // namespace headcap::core
