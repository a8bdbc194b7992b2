#include <fmt/format.h>

#include "core/values/edtf.h"

namespace headcap::core {
namespace {

std::string endText(const EdtfEnd& end, std::string_view open) {
    switch (end.kind) {
    case EdtfEndKind::open:
        return std::string(open);
    case EdtfEndKind::unknown:
        return {};
    case EdtfEndKind::date:
        break;
    }
    const EdtfDate& date = end.date;
    const std::int64_t size = date.year < 0 ? -date.year : date.year;
    std::string text = size > 9999 ? "Y" : "";
    text += date.year < 0 ? "-" : "";
    std::string digits = fmt::format("{:04}", size);
    const auto unspecified = static_cast<std::size_t>(date.unspecifiedDigits);
    digits.replace(digits.size() - unspecified, unspecified, unspecified, 'X');
    text += digits;
    for (const int part : {date.month, date.day}) {
        if (part != 0) {
            text += part == EdtfDate::kUnspecified ? "-XX" : fmt::format("-{:02}", part);
        }
    }
    text += date.time;
    if (date.qualifier != '\0') {
        text += date.qualifier;
    }
    return text;
}

} // namespace

std::string edtfText(const Edtf& edtf) {
    const bool isSet = edtf.kind == EdtfKind::oneOf || edtf.kind == EdtfKind::allOf;
    std::string text;
    for (const EdtfMember& member : edtf.members) {
        text += text.empty() ? "" : ",";
        text += endText(member.first, isSet ? "" : "..");
        if (member.last) {
            text += isSet ? ".." : "/";
            text += endText(*member.last, isSet ? "" : "..");
        }
    }
    if (!isSet) {
        return text;
    }
    return edtf.kind == EdtfKind::oneOf ? '[' + text + ']' : '{' + text + '}';
}

} // namespace headcap::core
