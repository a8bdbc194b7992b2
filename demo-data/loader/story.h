// The demo's data as a story: groups of records, each with its moment, its hand and its plain
// sentence, from all files in the order of time.
#pragma once

#include <string>
#include <vector>

#include "core/values/embedded_file.h"
#include "demo-data/loader/moment.h"

namespace headcap::demo {

// A file of the data: shared (people, materials, lots), or of one job.
struct DataFile {
    std::string name;
    std::string scope; // of its names; empty: shared
    Json content;
};

// One change to the workshop, as it will stand in the journal.
struct Group {
    const DataFile* file = nullptr;
    const Json* content = nullptr;
    core::Instant at;

    [[nodiscard]] std::string text(const char* member) const {
        return content->value(member, std::string{});
    }
};

class Story {
public:
    // Throws DataError.
    Story(const std::vector<EmbeddedFile>& files, const DemoDays& days);
    Story(const Story&) = delete;
    Story& operator=(const Story&) = delete;

    [[nodiscard]] const std::vector<DataFile>& files() const { return m_files; }
    [[nodiscard]] const Json& defaults() const { return m_defaults; }
    [[nodiscard]] const std::vector<Group>& groups() const { return m_groups; }
    [[nodiscard]] Moment momentOf(const Group& group, const KnownNames& names) const;

private:
    const DemoDays& m_days;
    std::vector<DataFile> m_files;
    Json m_defaults = Json::object();
    std::vector<Group> m_groups;
};

} // namespace headcap::demo
