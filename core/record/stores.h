// What keeps a workshop, as the rest of the program sees it: interfaces that take and give values.
// All may be called from any thread; one thread inside writes. An expected "no" is a Refusal;
// storage that failed throws StoreError.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <tl/expected.hpp>

#include "core/record/change.h"
#include "core/values/digest.h"

namespace headcap::core {

class StoreError : public std::runtime_error {
public:
    enum class Code {
        missing,      // there is no workshop there
        notAWorkshop, // a file, but not one of ours
        truncated,    // cut short or damaged
        newerProgram, // made by a newer program
        readOnly,
        busy, // another window has been writing for too long
        diskFull,
        ioFailed,
        outcomeUnknown, // COMMIT failed to reach the disk: reopen and look
        networkFolder,  // a file system on which SQLite can't be trusted
        migrationFailed,
        fileMissing, // a photograph, attachment or report is not where it should be
        fileAltered, // or is not what was kept
        internal,
    };
    StoreError(Code code, const std::string& detail) : runtime_error(detail), m_code(code) {}
    [[nodiscard]] Code code() const { return m_code; }

private:
    Code m_code;
};

struct Found {
    AnyRecord record;
    Revision revision;
};

class RecordStore {
public:
    virtual ~RecordStore() = default;

    [[nodiscard]] virtual std::optional<Found> find(const RecordRef& ref) const = 0;
    // All records of a kind, or those with this value in this column; in order of their keys,
    // which is the order of their making.
    [[nodiscard]] virtual std::vector<Found> all(RecordKind kind) const = 0;
    [[nodiscard]] virtual std::vector<Found> allWith(RecordKind kind, std::string_view column,
                                                     const ColumnValue& value) const = 0;
    // Those whose text in this column is no less than `from` and less than `to`, in its order:
    // the steps of a day, by their instants.
    [[nodiscard]] virtual std::vector<Found> allBetween(RecordKind kind, std::string_view column,
                                                        std::string_view from,
                                                        std::string_view to) const = 0;
    // The newest of those with this value, so many at most, newest first.
    [[nodiscard]] virtual std::vector<Found> newestWith(RecordKind kind, std::string_view column,
                                                        const ColumnValue& value,
                                                        std::size_t most) const = 0;
    // The greatest text in a column that begins so: the last number of a year.
    [[nodiscard]] virtual std::optional<std::string>
    greatest(RecordKind kind, std::string_view column, std::string_view prefix) const = 0;

    // The texts in a column of the newest records of a kind, of so many records; each text once,
    // the newest first. What a field was lately filled with.
    [[nodiscard]] virtual std::vector<std::string> lately(RecordKind kind, std::string_view column,
                                                          std::size_t records) const = 0;

    [[nodiscard]] virtual tl::expected<Revision, Refusal> apply(const Change& change) = 0;

    // Differs whenever anybody, another program too, has changed the workshop since.
    [[nodiscard]] virtual std::int64_t dataVersion() const = 0;
};

// One line of the list of jobs.
struct JobLine {
    Id<Job> id;
    std::string number;
    std::string title; // of the item, short
    std::string owner;
    JobState state;
    std::optional<Day> due{};
};

class JobIndex {
public:
    virtual ~JobIndex() = default;
    // The jobs in the house: every one but those returned, declined or withdrawn; by number.
    [[nodiscard]] virtual std::vector<JobLine> inTheHouse() const = 0;
    // All jobs, newest first, a page at a time.
    [[nodiscard]] virtual std::vector<JobLine> page(std::size_t offset,
                                                    std::size_t limit) const = 0;
    [[nodiscard]] virtual std::size_t count() const = 0;
    [[nodiscard]] virtual std::optional<JobLine> numbered(std::string_view number) const = 0;
    // Follow-ups not done and due by this day, of jobs no longer in the house.
    [[nodiscard]] virtual std::vector<std::pair<JobLine, FollowUp>> dueFollowUps(Day by) const = 0;
};

struct JournalRecord {
    RecordRef ref;
    std::optional<AnyRecord> before{}; // nothing: it was added
    std::optional<AnyRecord> after{};  // nothing: it was removed
};

enum class EntryKind { change, undo, redo, migration };

struct JournalEntry {
    std::int64_t sequence = 0;
    Instant at;
    std::optional<Id<Person>> who{};
    EntryKind kind = EntryKind::change;
    std::string sentence{};
    std::vector<JournalRecord> records{};
    std::optional<std::int64_t> reverses{}; // the entry an undo or redo takes back
    int schemaVersion = 0;
    Digest hash{};
};

class Journal {
public:
    virtual ~Journal() = default;
    // The history of a record, or of everything, newest first.
    [[nodiscard]] virtual std::vector<JournalEntry> historyOf(const RecordRef& ref) const = 0;
    [[nodiscard]] virtual std::vector<JournalEntry> latest(std::size_t limit) const = 0;
    [[nodiscard]] virtual Digest head() const = 0;

    // What undo would take back, and redo bring back, of this person's changes; none where there
    // is nothing.
    [[nodiscard]] virtual std::optional<JournalEntry>
    undoable(std::optional<Id<Person>> who) const = 0;
    [[nodiscard]] virtual std::optional<JournalEntry>
    redoable(std::optional<Id<Person>> who) const = 0;
    [[nodiscard]] virtual tl::expected<JournalEntry, Refusal>
    undo(std::optional<Id<Person>> who) = 0;
    [[nodiscard]] virtual tl::expected<JournalEntry, Refusal>
    redo(std::optional<Id<Person>> who) = 0;
};

// One record found by words.
struct SearchHit {
    RecordRef record;
    std::optional<Id<Job>> job{};
    std::string jobNumber{};
    std::string item{};  // title
    std::string place{}; // leaf, where the record has one
    std::string text{};  // a line of what was found
};

struct SearchAnswer {
    std::vector<SearchHit> hits{}; // newest first
    std::size_t total = 0;         // of all hits; counting stops at totalCapped
    bool totalCapped = false;
};

class SearchIndex {
public:
    virtual ~SearchIndex() = default;
    // Records that hold every word, the last one as a beginning.
    [[nodiscard]] virtual SearchAnswer find(std::string_view words, std::size_t limit) const = 0;
    // Those of one kind, newest first. Where very many records hold the words, only the newest
    // thousands of them are looked through.
    [[nodiscard]] virtual std::vector<RecordRef> findOf(RecordKind kind, std::string_view words,
                                                        std::size_t limit) const = 0;
};

// The files a workshop keeps, each by its SHA-256 and never altered. A file is on the disk, and
// synced, before a record may name it.
class FileStore {
public:
    enum class Shelf { photograph, attachment, report };

    virtual ~FileStore() = default;
    // Keeps the bytes, and gives their digest; keeping the same bytes twice keeps one file.
    virtual Digest put(Shelf shelf, std::span<const std::byte> bytes, std::string_view suffix) = 0;
    // Where they lie, to be read and not written. Throws fileMissing.
    [[nodiscard]] virtual std::filesystem::path pathOf(Shelf shelf, const Digest& digest) const = 0;
    [[nodiscard]] virtual bool has(Shelf shelf, const Digest& digest) const = 0;
    // A place for thumbnails and other things that can be made again.
    [[nodiscard]] virtual std::filesystem::path cacheFolder() const = 0;
};

struct VerifyFinding {
    std::string what; // "database", "search_index", "journal", "photograph", "ledger" …
    std::optional<RecordRef> record{};
    std::string sentence{};
};

struct VerifyReport {
    std::vector<std::pair<std::string, std::int64_t>> checked{}; // what, how many
    std::vector<VerifyFinding> findings{};
    [[nodiscard]] bool isClean() const { return findings.empty(); }
};

// False stops the work; done of total, in steps of the work's own.
using Progress = std::function<bool(std::int64_t done, std::int64_t total)>;

struct BackupReport {
    std::filesystem::path folder{};
    std::int64_t filesCopied = 0;
    std::int64_t filesAlreadyThere = 0;
    std::int64_t bytesCopied = 0;
};

class Upkeep {
public:
    virtual ~Upkeep() = default;
    [[nodiscard]] virtual VerifyReport verify(const Progress& progress) const = 0;
    // Everything, to a folder outside the workshop, only what it lacks; checked by opening it.
    virtual BackupReport backup(const std::filesystem::path& folder, const Progress& progress) = 0;
    [[nodiscard]] virtual std::optional<Instant> lastOutsideBackup() const = 0;
    virtual void rebuildSearch() = 0;
    [[nodiscard]] virtual std::filesystem::path folder() const = 0;
};

// A workshop that is open.
struct Stores {
    RecordStore& records;
    JobIndex& jobs;
    Journal& journal;
    SearchIndex& search;
    FileStore& files;
    Upkeep& upkeep;
};

template <class Record>
struct Stored {
    Record record;
    Revision revision;
};

template <class Record>
[[nodiscard]] std::optional<Stored<Record>> find(const RecordStore& store, const Id<Record>& id) {
    auto found = store.find(refOf(id));
    if (!found) {
        return std::nullopt;
    }
    return Stored<Record>{std::get<Record>(std::move(found->record)), found->revision};
}

template <class Record>
std::vector<Stored<Record>> typed(std::vector<Found> found) {
    std::vector<Stored<Record>> records;
    records.reserve(found.size());
    for (auto& one : found) {
        records.push_back({std::get<Record>(std::move(one.record)), one.revision});
    }
    return records;
}

template <class Record>
[[nodiscard]] std::vector<Stored<Record>> all(const RecordStore& store) {
    return typed<Record>(store.all(kindOf<Record>()));
}

// allWith(store, &Finding::job, id): those whose member names this record.
template <class Record, class T, class Other>
[[nodiscard]] std::vector<Stored<Record>> allWith(const RecordStore& store, T Record::*member,
                                                  const Id<Other>& id) {
    return typed<Record>(store.allWith(kindOf<Record>(), fieldName(member), id.text()));
}

} // namespace headcap::core
