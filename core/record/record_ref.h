// Any record, by its kind and key: what the journal, a search result or an audit point names.
#pragma once

#include <compare>

#include "core/record/record_kind.h"
#include "core/values/id.h"

namespace headcap::core {

struct RecordRef {
    RecordKind kind;
    Uuid id;

    friend bool operator==(const RecordRef&, const RecordRef&) = default;
    friend auto operator<=>(const RecordRef&, const RecordRef&) = default;
};

} // namespace headcap::core
