#include <algorithm>
#include <limits>

#include "core/values/book_date.h"
#include "core/values/book_date_point.h"
#include "core/values/book_date_words.h"
#include "core/values/edtf.h"

namespace headcap::core {
namespace {

std::string yearText(const EdtfDate& date) {
    if (date.year > 9999 || date.year < -9999) {
        return edtfText({EdtfKind::date, {{{EdtfEndKind::date, dateOfYear(date.year)}, {}}}});
    }
    const auto year = static_cast<int>(date.year);
    switch (date.unspecifiedDigits) {
    case 0:
        if (date.year <= 0) {
            return std::to_string(1 - date.year) + " BC";
        }
        return (date.year < 1000 ? "AD " : "") + std::to_string(date.year);
    case 1: // "the 1600s" would be the century
        return date.year % 100 == 0 ? std::to_string(date.year / 10) + "-"
                                    : std::to_string(date.year) + "s";
    case 2:
        return ordinalText(year / 100 + 1) + " century";
    case 3:
        return ordinalText(year / 1000 + 1) + " millennium";
    default:
        return "undated";
    }
}

std::string bareText(const EdtfDate& date) {
    std::string text;
    if (date.day > 0) {
        text += std::to_string(date.day) + ' ';
    }
    if (date.month > 0) {
        text += std::string(monthName(date.month)) + ' ';
    }
    return text + yearText(date);
}

std::string dateText(const EdtfDate& date) {
    const bool about = date.qualifier == '~' || date.qualifier == '%';
    const bool perhaps = date.qualifier == '?' || date.qualifier == '%';
    return (about ? "ca. " : "") + bareText(date) + (perhaps ? "?" : "");
}

bool isCentury(const EdtfDate& date) {
    return date.unspecifiedDigits == 2 && date.month == 0 && date.year >= 0 &&
           date.qualifier == '\0';
}

std::string betweenDates(const EdtfDate& first, EdtfDate last) {
    if (isCentury(first) && isCentury(last)) {
        return ordinalText(static_cast<int>(first.year) / 100 + 1) + "\u2013" + bareText(last);
    }
    const bool sharesAbout =
        first.qualifier == '~' && (last.qualifier == '~' || last.qualifier == '%');
    if (sharesAbout) {
        last.qualifier = last.qualifier == '%' ? '?' : '\0';
    }
    // "ca. 1590–1600" is read as about both, so about the first alone stands behind it.
    const bool isFirstAlone = !sharesAbout && (first.qualifier == '~' || first.qualifier == '%');
    std::string left = dateText(first);
    if (isFirstAlone) {
        left = left.substr(std::string_view("ca. ").size()) + " ca.";
    }
    const std::string right = dateText(last);
    const bool isWide = first.month > 0 || last.month > 0;
    return left + (isWide ? " \u2013 " : "\u2013") + right;
}

std::string intervalText(const EdtfMember& member) {
    const EdtfEnd& first = member.first;
    const EdtfEnd& last = *member.last;
    if (first.kind == EdtfEndKind::date && last.kind == EdtfEndKind::date) {
        return betweenDates(first.date, last.date);
    }
    if (last.kind == EdtfEndKind::date) {
        return (first.kind == EdtfEndKind::open ? "until " : "?\u2013") + dateText(last.date);
    }
    return dateText(first.date) + (last.kind == EdtfEndKind::open ? "\u2013" : "\u2013?");
}

// "not before 1600", "early 16th century", "between 1590 and 1600".
std::string boundedText(const EdtfMember& member) {
    const EdtfEnd& first = member.first;
    const EdtfEnd& last = *member.last;
    if (first.kind != EdtfEndKind::date) {
        return "not after " + dateText(last.date);
    }
    if (last.kind != EdtfEndKind::date) {
        return "not before " + dateText(first.date);
    }
    const std::int64_t hundred = first.date.year / 100;
    const bool isPart = first.date.qualifier == '~' && last.date.qualifier == '~' &&
                        first.date.year >= 0 && last.date.year / 100 == hundred &&
                        first.date.month == 0 && last.date.month == 0 &&
                        first.date.unspecifiedDigits == 0 && last.date.unspecifiedDigits == 0;
    if (isPart) {
        const auto part = centuryPartOf(static_cast<int>(first.date.year % 100),
                                        static_cast<int>(last.date.year % 100));
        if (part) {
            return std::string(part->name) + ordinalText(static_cast<int>(hundred) + 1) +
                   " century";
        }
    }
    return "between " + dateText(first.date) + " and " + dateText(last.date);
}

std::string setText(const Edtf& edtf) {
    if (edtf.members.size() == 1 && edtf.kind == EdtfKind::oneOf && edtf.members[0].last) {
        return boundedText(edtf.members[0]);
    }
    std::string text;
    for (std::size_t i = 0; i < edtf.members.size(); ++i) {
        const EdtfMember& member = edtf.members[i];
        if (i > 0) {
            const bool isLast = i + 1 == edtf.members.size();
            text += !isLast ? ", " : edtf.kind == EdtfKind::oneOf ? " or " : " and ";
        }
        text += member.last ? intervalText(member) : dateText(member.first.date);
    }
    return text;
}

} // namespace

std::string toText(const BookDate& date) {
    const auto edtf = parseEdtf(date.edtf);
    if (!edtf) {
        return date.edtf;
    }
    switch (edtf->kind) {
    case EdtfKind::date:
        return dateText(edtf->members[0].first.date);
    case EdtfKind::interval:
        return intervalText(edtf->members[0]);
    case EdtfKind::oneOf:
    case EdtfKind::allOf:
        break;
    }
    return setText(*edtf);
}

std::optional<YearSpan> yearsOf(const BookDate& date) {
    const auto edtf = parseEdtf(date.edtf);
    if (!edtf) {
        return std::nullopt;
    }
    std::int64_t first = std::numeric_limits<std::int64_t>::max();
    std::int64_t last = std::numeric_limits<std::int64_t>::min();
    for (const EdtfMember& member : edtf->members) {
        for (const EdtfEnd& end : {member.first, member.last.value_or(member.first)}) {
            if (end.kind != EdtfEndKind::date || end.date.unspecifiedDigits > 3) {
                return std::nullopt;
            }
            first = std::min(first, firstYear(end.date));
            last = std::max(last, lastYear(end.date));
        }
    }
    using Years = std::numeric_limits<int>;
    if (first < Years::min() || last > Years::max()) {
        return std::nullopt;
    }
    return YearSpan{static_cast<int>(first), static_cast<int>(last)};
}

} // namespace headcap::core
