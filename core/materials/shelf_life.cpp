#include "core/materials/shelf_life.h"

#include <algorithm>

namespace headcap::core {
namespace {

std::optional<Day> begun(const Lot& lot) {
    return lot.mixedOn ? lot.mixedOn : lot.openedOn;
}

} // namespace

std::optional<Day> goodUntilOf(const Lot& lot, const Material* material) {
    if (lot.goodUntil) {
        return lot.goodUntil;
    }
    const auto from = begun(lot);
    if (!from || material == nullptr || material->shelfLifeDays <= 0) {
        return std::nullopt;
    }
    return Day{std::chrono::sys_days{*from} + std::chrono::days{material->shelfLifeDays}};
}

LotAge ageOf(const Lot& lot, const Material* material, Day on) {
    const auto until = goodUntilOf(lot, material);
    if (!until) {
        return LotAge::keeps;
    }
    const int left = daysBetween(on, *until);
    if (left < 0) {
        return LotAge::overdue;
    }
    const auto from = begun(lot);
    const int life = from ? daysBetween(*from, *until) : 30;
    return left < std::clamp(life / 5, 2, 30) ? LotAge::nearDate : LotAge::fresh;
}

} // namespace headcap::core
