// The files that records name, each held against its digest.
#pragma once

#include <functional>
#include <vector>

#include "core/record/safe_keeping.h"
#include "db/files/file_store.h"
#include "db/sqlite/connection.h"

namespace headcap::db {

// A file that is missing or altered, for one of the records that name it.
struct FileFault {
    core::VerifyFinding finding; // names the record's job
    core::FileStore::Shelf shelf;
    std::optional<core::Digest> digest{}; // nothing: the record's own is none
    std::string fileName{};
    std::int64_t bytes = 0; // 0: not known
};

// Of photographs, attachments or issued reports. `looked` is called for each record.
[[nodiscard]] std::vector<FileFault> faultyFiles(Connection& connection,
                                                 const FolderFileStore& files,
                                                 core::RecordKind kind,
                                                 const std::function<void()>& looked);

// Those files looked for in a folder, by name and by content, and put back.
[[nodiscard]] core::MendReport mendFaults(std::vector<FileFault> faults, FolderFileStore& files,
                                          const std::filesystem::path& from,
                                          const core::Progress& progress);

} // namespace headcap::db
