#include "core/survey/finding_state.h"

#include <algorithm>
#include <array>
#include <string_view>

#include <fmt/format.h>

namespace headcap::core {
namespace {

std::string_view severityText(std::int64_t severity) {
    constexpr std::array<std::string_view, 4> kWords{"none", "slight", "moderate", "severe"};
    return kWords[static_cast<std::size_t>(std::clamp<std::int64_t>(severity, 0, 3))];
}

std::string_view activityText(Activity activity) {
    switch (activity) {
    case Activity::unknown:
        return "activity not known";
    case Activity::stable:
        return "stable";
    case Activity::active:
        break;
    }
    return "active";
}

std::string_view handlingText(Handling handling) {
    switch (handling) {
    case Handling::yes:
        return "may be handled";
    case Handling::withCare:
        return "handle with care";
    case Handling::no:
        break;
    }
    return "not to be handled";
}

} // namespace

bool isJudged(const Finding& finding) {
    return finding.severity != kSeverityNotSaid;
}

std::string stateWords(const Finding& finding) {
    if (isJudged(finding)) {
        return fmt::format("{}, {}, {}", severityText(finding.severity),
                           activityText(finding.activity), handlingText(finding.handling));
    }
    const std::string goesOn = finding.activity == Activity::unknown
                                   ? std::string{}
                                   : fmt::format("{}; ", activityText(finding.activity));
    return finding.handling == Handling::yes
               ? goesOn + "how severe, and whether it may be handled, is not said"
               : fmt::format("{}how severe is not said; {}", goesOn,
                             handlingText(finding.handling));
}

} // namespace headcap::core
