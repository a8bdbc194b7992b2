// Whether a date can be, and whether ends come in order.
#include <algorithm>
#include <tuple>

#include "core/values/edtf_date.h"

namespace headcap::core {
namespace {

// Enough to compare two ends: year, month, day, of the first or the last day it may be.
using Bound = std::tuple<std::int64_t, int, int>;

Bound earliest(const EdtfDate& date) {
    const int month = date.month > 0 && !date.isSeason() ? date.month : 1;
    return {firstYear(date), month, std::max(date.day, 1)};
}

Bound latest(const EdtfDate& date) {
    const int month = date.month > 0 && !date.isSeason() ? date.month : 12;
    return {lastYear(date), month, date.day > 0 ? date.day : 31};
}

bool isInOrder(const EdtfMember& member) {
    if (!member.last) {
        return member.first.kind == EdtfEndKind::date;
    }
    const bool bothDates =
        member.first.kind == EdtfEndKind::date && member.last->kind == EdtfEndKind::date;
    const bool neither =
        member.first.kind != EdtfEndKind::date && member.last->kind != EdtfEndKind::date;
    return bothDates ? earliest(member.first.date) <= latest(member.last->date) : !neither;
}

bool isSoundMember(const EdtfMember& member, EdtfKind kind) {
    const auto endIsSound = [&](const EdtfEnd& end) {
        return end.kind != EdtfEndKind::date ||
               (isSoundDate(end.date) && (kind == EdtfKind::date || end.date.time.empty()));
    };
    // A season has no first and last day that all agree on, so it can't end an interval.
    const bool hasSeason =
        member.first.date.isSeason() || (member.last && member.last->date.isSeason());
    return endIsSound(member.first) && (!member.last || endIsSound(*member.last)) &&
           !(member.last && hasSeason) && isInOrder(member);
}

} // namespace

bool isSound(const Edtf& edtf) {
    const bool isSet = edtf.kind == EdtfKind::oneOf || edtf.kind == EdtfKind::allOf;
    return !edtf.members.empty() && (isSet || edtf.members.size() == 1) &&
           (isSet || edtf.members[0].last.has_value() == (edtf.kind == EdtfKind::interval)) &&
           std::ranges::all_of(edtf.members, [&](const EdtfMember& member) {
               return isSoundMember(member, edtf.kind);
           });
}

} // namespace headcap::core
