// Records of the demo's data: an object with a member a field, children of other kinds nested in
// it, and defaults for what it leaves out.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "demo-data/loader/moment.h"

namespace headcap::demo {

// An object of the data that becomes a record; a child names the record it stands in.
struct ToldRecord {
    core::RecordKind kind = core::RecordKind::workshop;
    const Json* object = nullptr;
    core::RecordRef ref;
    const ToldRecord* parent = nullptr;
};

// What a kind's fields are where the data leave them out.
class Defaults {
public:
    Defaults() = default;
    explicit Defaults(Json kinds) : m_kinds(std::move(kinds)) {}
    [[nodiscard]] const Json* of(core::RecordKind kind, const std::string& field) const;

private:
    Json m_kinds = Json::object();
};

// Members that are no field of the kind, and are read by others: "key", "picture", "paper".
[[nodiscard]] bool isAside(std::string_view member);

// A kind by its name, as the data group records and nest children.
[[nodiscard]] std::optional<core::RecordKind> kindNamed(std::string_view member);

// The record, but for what `given` says over it. Throws DataError naming record and field.
[[nodiscard]] core::AnyRecord readRecord(const ToldRecord& told, const Defaults& defaults,
                                         const Moment& moment, const Json& given = Json::object());

// The record with the fields changed that the object names.
[[nodiscard]] core::AnyRecord changedRecord(const core::AnyRecord& record, const Json& fields,
                                            const Moment& moment);

} // namespace headcap::demo
