// Where in the story a value is read: which file it stands in, when, by whose hand; and what it
// may name.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "core/record/any_record.h"
#include "demo-data/loader/demo_days.h"
#include "demo-data/loader/known_names.h"

namespace headcap::demo {

using Json = nlohmann::ordered_json;

struct Moment {
    const KnownNames& names;
    const DemoDays& days;
    std::string scope; // of the file; empty for shared ones
    std::string when;  // "day -34 09:10"
    std::string who;   // "@orrin"; empty where nobody is named
    std::string job;   // "@job" in a file of a job
    std::string item;
    std::string currency = "EUR";

    // The placeholders of the defaults: "{who}", "{when}", "{day}", "{job}", "{item}".
    [[nodiscard]] std::string filled(std::string_view placeholder) const;
    // "{year}" and "{yy}" of the moment, and "{@lot}" as the number of what it names.
    [[nodiscard]] std::string toldText(std::string_view text) const;
};

} // namespace headcap::demo
