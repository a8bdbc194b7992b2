#include "demo-data/loader/story.h"

#include <algorithm>

#include <fmt/format.h>

#include "demo-data/loader/data_error.h"

namespace headcap::demo {
namespace {

constexpr std::string_view kDefaultsFile = "defaults.json";

Json parsed(const EmbeddedFile& file) {
    try {
        return Json::parse(file.text);
    } catch (const Json::exception& error) {
        throw DataError{fmt::format("{}: {}", file.name, error.what())};
    }
}

// A file of a job has its names for itself.
DataFile dataFile(const EmbeddedFile& file) {
    DataFile data{std::string{file.name}, {}, parsed(file)};
    if (data.content.contains("job")) {
        data.scope = file.name.substr(0, file.name.rfind('.'));
    }
    return data;
}

} // namespace

Story::Story(const std::vector<EmbeddedFile>& files, const DemoDays& days) : m_days(days) {
    for (const EmbeddedFile& file : files) {
        if (file.name == kDefaultsFile) {
            m_defaults = parsed(file);
        } else {
            m_files.push_back(dataFile(file));
        }
    }
    for (const DataFile& file : m_files) {
        const auto story = file.content.find("story");
        if (story == file.content.end()) {
            throw DataError{file.name + " tells no story"};
        }
        for (const Json& group : *story) {
            const auto when = group.value("when", std::string{});
            const auto at = days.instant(when);
            if (!at) {
                throw DataError{fmt::format("{}: \"{}\" is no time", file.name, when)};
            }
            m_groups.push_back({&file, &group, *at});
        }
    }
    std::ranges::stable_sort(m_groups, {}, &Group::at);
}

Moment Story::momentOf(const Group& group, const KnownNames& names) const {
    const Json& file = group.file->content;
    return {.names = names,
            .days = m_days,
            .scope = group.file->scope,
            .when = group.text("when"),
            .who = group.text("who"),
            .job = file.value("job", std::string{}),
            .item = file.value("item", std::string{})};
}

} // namespace headcap::demo
