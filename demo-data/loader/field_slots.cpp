#include "demo-data/loader/field_slots.h"

#include <algorithm>
#include <array>

namespace headcap::demo {
namespace {

struct Ending {
    std::string_view first;
    std::string_view second; // of the column after it, where the value has two
    Form form;
};
constexpr std::array kEndings{
    Ending{"_nm", "", Form::length},          Ending{"_um2", "", Form::area},
    Ending{"_min", "", Form::minutes},        Ending{"_mg_m2", "", Form::grammage},
    Ending{"_count", "_unit", Form::amount},  Ending{"_minor", "_currency", Form::money},
    Ending{"_ppm", "_basis", Form::strength}, Ending{"_kind", "_id", Form::anyKey},
};

bool isBookDate(core::RecordKind kind, std::string_view column) {
    return column == "source_date" ||
           (column == "date" && (kind == core::RecordKind::item || kind == core::RecordKind::work));
}

FieldSlot slotAt(core::RecordKind kind, std::size_t at) {
    const auto& columns = core::columnsOf(kind);
    const core::Column& column = columns[at];
    for (const Ending& ending : kEndings) {
        if (!column.name.ends_with(ending.first)) {
            continue;
        }
        const std::string name = column.name.substr(0, column.name.size() - ending.first.size());
        if (ending.second.empty()) {
            return {name, ending.form, at};
        }
        if (at + 1 < columns.size() && columns[at + 1].name == name + std::string{ending.second}) {
            return {name, ending.form, at, 2};
        }
    }
    if (column.references) {
        return {column.name, Form::key, at, 1, column.references};
    }
    if (isBookDate(kind, column.name)) {
        return {column.name, Form::bookDate, at};
    }
    return {column.name, column.isText ? Form::text : Form::number, at};
}

std::vector<FieldSlot> slotsOf(core::RecordKind kind) {
    std::vector<FieldSlot> slots;
    for (std::size_t at = 1; at < core::columnsOf(kind).size(); at += slots.back().columns) {
        slots.push_back(slotAt(kind, at));
    }
    return slots;
}

} // namespace

const std::vector<FieldSlot>& fieldSlots(core::RecordKind kind) {
    static const auto kSlots = [] {
        std::array<std::vector<FieldSlot>, core::kRecordKindCount> all;
        for (std::size_t i = 0; i < all.size(); ++i) {
            all[i] = slotsOf(static_cast<core::RecordKind>(i));
        }
        return all;
    }();
    return kSlots[static_cast<std::size_t>(kind)];
}

const FieldSlot* slotNamed(core::RecordKind kind, std::string_view name) {
    const auto& slots = fieldSlots(kind);
    const auto at = std::ranges::find(slots, name, &FieldSlot::name);
    return at == slots.end() ? nullptr : &*at;
}

const FieldSlot* slotNaming(core::RecordKind kind, core::RecordKind named) {
    const auto& slots = fieldSlots(kind);
    const auto at = std::ranges::find(slots, std::optional{named}, &FieldSlot::references);
    return at == slots.end() ? nullptr : &*at;
}

} // namespace headcap::demo
