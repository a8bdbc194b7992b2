#include "db/sqlite/kept_files.h"

#include <map>
#include <set>

#include "core/record/kind_words.h"
#include "db/files/durable_file.h"
#include "db/sqlite/record_sql.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;
using core::RecordKind;
using Shelf = core::FileStore::Shelf;

Shelf shelfOf(RecordKind kind) {
    return kind == RecordKind::photograph   ? Shelf::photograph
           : kind == RecordKind::attachment ? Shelf::attachment
                                            : Shelf::report;
}

std::string partName(RecordKind kind) {
    return kind == RecordKind::issuedReport ? "report" : std::string{core::nameOf(kind)};
}

// What is wrong with a file, as the end of a sentence; empty: nothing.
std::string faultOf(const FolderFileStore& files, Shelf shelf, const core::Digest& digest) {
    const auto path = files.find(shelf, digest);
    if (!path) {
        return " is missing.";
    }
    try {
        return digestOfFile(*path) == digest ? "" : " is not what was kept.";
    } catch (const core::StoreError& error) {
        return std::string{" can't be read: "} + error.what() + ".";
    }
}

using Wanted = std::multimap<core::Digest, FileFault>;

// The sizes among which a file is worth reading; nothing where a size is not known.
std::optional<std::set<std::uintmax_t>> sizesOf(const Wanted& wanted) {
    std::set<std::uintmax_t> sizes;
    for (const auto& [digest, fault] : wanted) {
        if (fault.bytes <= 0) {
            return std::nullopt;
        }
        sizes.insert(static_cast<std::uintmax_t>(fault.bytes));
    }
    return sizes;
}

// The digest of a file that may be wanted; nothing where it can't be, or can't be read.
std::optional<core::Digest> digestToTry(const fs::path& file,
                                        const std::optional<std::set<std::uintmax_t>>& sizes) {
    std::error_code error;
    const auto size = fs::file_size(file, error);
    if (error || (sizes && !sizes->contains(size))) {
        return std::nullopt;
    }
    try {
        return digestOfFile(file);
    } catch (const core::StoreError&) {
        return std::nullopt;
    }
}

void putBack(Wanted& wanted, const core::Digest& digest, const fs::path& file,
             FolderFileStore& files, core::MendReport& report) {
    const auto [first, last] = wanted.equal_range(digest);
    for (auto at = first; at != last; ++at) {
        if (!files.putCopy(at->second.shelf, digest, file,
                           fs::path(at->second.fileName).extension().string())) {
            return;
        }
    }
    for (auto at = first; at != last; ++at) {
        report.mended.push_back(std::move(at->second.finding));
    }
    wanted.erase(first, last);
}

} // namespace

std::vector<FileFault> faultyFiles(Connection& connection, const FolderFileStore& files,
                                   RecordKind kind, const std::function<void()>& looked) {
    std::vector<FileFault> faults;
    Query query(connection, "SELECT t.\"id\", t.digest, t.file_name, t.bytes, job.number FROM " +
                                sqlName(core::nameOf(kind)) +
                                " t LEFT JOIN job ON job.id = t.job ORDER BY t.digest");
    std::optional<core::Digest> last;
    std::string fault;
    while (query.step()) {
        looked();
        const auto id = core::Uuid::fromText(query.text(0));
        const auto digest = core::Digest::fromHex(query.text(1));
        if (!digest || digest != last) {
            fault = digest ? faultOf(files, shelfOf(kind), *digest) : " is missing.";
            last = digest;
        }
        if (!fault.empty()) {
            const std::string job = query.isNull(4) ? "" : " of job " + query.text(4);
            faults.push_back(
                {{partName(kind), id ? std::optional{core::RecordRef{kind, *id}} : std::nullopt,
                  "The " + std::string{core::nounOf(kind)} + " \"" + query.text(2) + "\"" + job +
                      fault},
                 shelfOf(kind),
                 digest,
                 query.text(2),
                 query.number(3)});
        }
    }
    return faults;
}

core::MendReport mendFaults(std::vector<FileFault> faults, FolderFileStore& files,
                            const fs::path& from, const core::Progress& progress) {
    core::MendReport report;
    Wanted wanted;
    for (FileFault& fault : faults) {
        if (fault.digest) {
            wanted.emplace(*fault.digest, std::move(fault));
        } else {
            report.left.push_back(std::move(fault.finding));
        }
    }
    const auto sizes = sizesOf(wanted);
    const auto count = static_cast<std::int64_t>(wanted.size());
    std::error_code error;
    fs::recursive_directory_iterator at(from, fs::directory_options::skip_permission_denied, error);
    if (error) {
        throw core::StoreError(core::StoreError::Code::missing,
                               from.string() + " can't be read: " + error.message());
    }
    for (; at != fs::recursive_directory_iterator() && !wanted.empty(); at.increment(error)) {
        if (error || !at->is_regular_file(error)) {
            continue;
        }
        ++report.filesLookedAt;
        if (!progress(count - static_cast<std::int64_t>(wanted.size()), count)) {
            report.wasStopped = true;
            break;
        }
        const auto digest = digestToTry(at->path(), sizes);
        if (digest && wanted.contains(*digest)) {
            putBack(wanted, *digest, at->path(), files, report);
        }
    }
    for (auto& [digest, fault] : wanted) {
        report.left.push_back(std::move(fault.finding));
    }
    return report;
}

} // namespace headcap::db
