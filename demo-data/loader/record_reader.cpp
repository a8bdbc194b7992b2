#include "demo-data/loader/record_reader.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "demo-data/loader/data_error.h"
#include "demo-data/loader/field_reader.h"

namespace headcap::demo {
namespace {

constexpr std::array<std::string_view, 3> kAside{"key", "picture", "paper"};

std::string nameOf(const ToldRecord& told) {
    return fmt::format("{} {}", core::nameOf(told.kind), told.object->value("key", "without key"));
}

// What a column holds where nothing is said of it.
std::vector<core::ColumnValue> emptyColumns(core::RecordKind kind) {
    std::vector<core::ColumnValue> columns;
    for (const core::Column& column : core::columnsOf(kind)) {
        if (column.mayBeNull) {
            columns.emplace_back(std::monostate{});
        } else if (column.isText) {
            columns.emplace_back(std::string{});
        } else {
            columns.emplace_back(std::int64_t{0});
        }
    }
    return columns;
}

core::AnyRecord built(core::RecordKind kind, const std::vector<core::ColumnValue>& columns,
                      const std::string& name) {
    auto record = core::recordFrom(kind, columns);
    if (!record) {
        throw DataError{
            fmt::format("{}: {} is missing or not one of its words", name, record.error().column)};
    }
    return *record;
}

void put(const FieldSlot& slot, const Json& value, const Moment& moment,
         std::vector<core::ColumnValue>& columns, const std::string& name) {
    try {
        readField(slot, value, moment, columns);
    } catch (const DataError& error) {
        throw DataError{fmt::format("{}, field {}: {}", name, slot.name, error.what())};
    }
}

void rejectStrangers(core::RecordKind kind, const Json& object, const std::string& name) {
    for (const auto& [member, value] : object.items()) {
        if (!isAside(member) && !kindNamed(member) && slotNamed(kind, member) == nullptr) {
            throw DataError{fmt::format("{} has no field {}", name, member)};
        }
    }
}

// A member of a kind's name holds children, unless it is a field of this kind ("item", "job").
bool holdsChildren(const std::string& member, const Json& value) {
    return kindNamed(member) && value.is_array();
}

} // namespace

const Json* Defaults::of(core::RecordKind kind, const std::string& field) const {
    const auto fields = m_kinds.find(std::string{core::nameOf(kind)});
    if (fields == m_kinds.end()) {
        return nullptr;
    }
    const auto value = fields->find(field);
    return value == fields->end() ? nullptr : &*value;
}

bool isAside(std::string_view member) {
    return std::ranges::find(kAside, member) != kAside.end();
}

std::optional<core::RecordKind> kindNamed(std::string_view member) {
    return core::recordKindNamed(member);
}

core::AnyRecord readRecord(const ToldRecord& told, const Defaults& defaults, const Moment& moment,
                           const Json& given) {
    const std::string name = nameOf(told);
    rejectStrangers(told.kind, *told.object, name);
    auto columns = emptyColumns(told.kind);
    columns[0] = told.ref.id.text();
    const FieldSlot* up =
        told.parent != nullptr ? slotNaming(told.kind, told.parent->kind) : nullptr;
    for (const FieldSlot& slot : fieldSlots(told.kind)) {
        if (const auto own = given.find(slot.name); own != given.end()) {
            put(slot, *own, moment, columns, name);
        } else if (const auto member = told.object->find(slot.name);
                   member != told.object->end() && !holdsChildren(slot.name, *member)) {
            put(slot, *member, moment, columns, name);
        } else if (&slot == up) {
            columns[slot.first] = told.parent->ref.id.text();
        } else if (const Json* usual = defaults.of(told.kind, slot.name)) {
            const Json value =
                usual->is_string() ? Json(moment.filled(usual->get<std::string>())) : *usual;
            if (!(value.is_string() && value.get<std::string>().empty())) {
                put(slot, value, moment, columns, name);
            }
        }
    }
    return built(told.kind, columns, name);
}

core::AnyRecord changedRecord(const core::AnyRecord& record, const Json& fields,
                              const Moment& moment) {
    const core::RecordKind kind = core::kindOf(record);
    const std::string name = std::string{core::nameOf(kind)};
    rejectStrangers(kind, fields, name);
    auto columns = core::valuesOf(record);
    for (const auto& [member, value] : fields.items()) {
        if (const FieldSlot* slot = slotNamed(kind, member)) {
            put(*slot, value, moment, columns, name);
        }
    }
    return built(kind, columns, name);
}

} // namespace headcap::demo
