#include "demo-data/loader/moment.h"

#include <fmt/format.h>

#include "demo-data/loader/data_error.h"

namespace headcap::demo {

std::string Moment::filled(std::string_view placeholder) const {
    if (placeholder == "{who}") {
        return who;
    }
    if (placeholder == "{when}") {
        return when;
    }
    if (placeholder == "{day}") {
        return when.substr(0, when.rfind(' '));
    }
    if (placeholder == "{job}") {
        return job;
    }
    if (placeholder == "{item}") {
        return item;
    }
    return std::string{placeholder};
}

std::string Moment::toldText(std::string_view text) const {
    std::string told;
    while (!text.empty()) {
        const auto open = text.find('{');
        const auto close = text.find('}', open);
        if (open == std::string_view::npos || close == std::string_view::npos) {
            return told.append(text);
        }
        told.append(text.substr(0, open));
        const auto inner = text.substr(open + 1, close - open - 1);
        if (inner == "year" || inner == "yy") {
            const auto at = days.instant(when);
            const int year = at ? static_cast<int>(days.dayOf(*at).year()) : 0;
            told += inner == "year" ? fmt::format("{:04}", year) : fmt::format("{:02}", year % 100);
        } else {
            const auto ref = names.find(scope, inner);
            const auto number = ref ? names.numberOf(*ref) : std::nullopt;
            if (!number) {
                throw DataError{fmt::format("{{{}}} names no job or lot with a number", inner)};
            }
            told += *number;
        }
        text.remove_prefix(close + 1);
    }
    return told;
}

} // namespace headcap::demo
