// A workshop kept in memory, for tests of windows: records, journal with undo and redo, the list
// of jobs, a plain search and files. It keeps the promises the windows rest on (revisions,
// conflicts, references, permanence); the real store has its own tests.
#pragma once

#include <filesystem>
#include <map>
#include <set>

#include "core/record/job_file.h"
#include "core/record/safe_keeping.h"

namespace headcap::tests {

class MemoryStore final : public core::RecordStore, public core::JobIndex, public core::Journal {
public:
    MemoryStore();
    ~MemoryStore() override;

    // RecordStore
    std::optional<core::Found> find(const core::RecordRef& ref) const override;
    std::vector<core::Found> all(core::RecordKind kind) const override;
    std::vector<core::Found> allWith(core::RecordKind kind, std::string_view column,
                                     const core::ColumnValue& value) const override;
    std::vector<core::Found> allBetween(core::RecordKind kind, std::string_view column,
                                        std::string_view from, std::string_view to) const override;
    std::vector<core::Found> newestWith(core::RecordKind kind, std::string_view column,
                                        const core::ColumnValue& value,
                                        std::size_t most) const override;
    std::optional<std::string> greatest(core::RecordKind kind, std::string_view column,
                                        std::string_view prefix) const override;
    std::vector<std::string> lately(core::RecordKind kind, std::string_view column,
                                    std::size_t records) const override;
    tl::expected<core::Revision, core::Refusal> apply(const core::Change& change) override;
    std::int64_t dataVersion() const override;

    // JobIndex
    std::vector<core::JobLine> inTheHouse() const override;
    std::vector<core::JobLine> page(std::size_t offset, std::size_t limit) const override;
    std::size_t count() const override;
    std::optional<core::JobLine> numbered(std::string_view number) const override;
    std::vector<std::pair<core::JobLine, core::FollowUp>> dueFollowUps(core::Day by) const override;

    // Journal
    std::vector<core::JournalEntry> historyOf(const core::RecordRef& ref) const override;
    std::vector<core::JournalEntry> latest(std::size_t limit) const override;
    core::Digest head() const override;
    std::optional<core::JournalEntry>
        undoable(std::optional<core::Id<core::Person>>) const override;
    std::optional<core::JournalEntry>
        redoable(std::optional<core::Id<core::Person>>) const override;
    tl::expected<core::JournalEntry, core::Refusal>
        undo(std::optional<core::Id<core::Person>>) override;
    tl::expected<core::JournalEntry, core::Refusal>
        redo(std::optional<core::Id<core::Person>>) override;

    // What a test may do to it.
    std::optional<core::StoreError::Code> failNext;
    std::optional<core::StoreError::Code> broken;
    // As another program would: the record changes, and nobody here was told.
    void changeElsewhere(core::AnyRecord record);
    template <class Record>
    const core::Id<Record>& put(const Record& record) {
        changeElsewhere(core::AnyRecord{record});
        return std::get<Record>(kept(core::refOf(record.id))).id;
    }
    [[nodiscard]] std::size_t changes() const;
    [[nodiscard]] const core::JournalEntry& last() const;

private:
    void failIfBroken() const;
    [[nodiscard]] const core::AnyRecord& kept(const core::RecordRef& ref) const;

    static core::ColumnValue columnOf(const core::AnyRecord& record, std::string_view name);

    std::optional<core::Refusal> refusalOf(const core::Write& write,
                                           const core::Change& change) const;

    static const core::AnyRecord& asChanged(const core::RecordRef& ref, const core::AnyRecord& kept,
                                            const core::Change& change);

    void write(core::JournalEntry entry);

    std::optional<core::JournalEntry> entryAt(const std::vector<std::int64_t>& stack) const;

    tl::expected<core::JournalEntry, core::Refusal>
    reverse(std::vector<std::int64_t>& from, std::vector<std::int64_t>& to, core::EntryKind kind);

    std::vector<core::JobLine> everyJob() const;

    std::map<core::RecordRef, core::Found> m_records;
    std::vector<core::JournalEntry> m_journal;
    std::vector<std::int64_t> m_done;
    std::vector<std::int64_t> m_undone;
    std::int64_t m_sequence = 0;
};

// Every record that holds all the words.
class MemorySearch final : public core::SearchIndex {
public:
    explicit MemorySearch(const MemoryStore& store) : m_store(store) {}
    core::SearchAnswer find(std::string_view words, std::size_t limit) const override;
    std::vector<core::RecordRef> findOf(core::RecordKind kind, std::string_view words,
                                        std::size_t limit) const override;

private:
    static bool holdsAll(const std::string& text, const std::string& words);

    core::SearchHit hit(const core::AnyRecord& record, const std::string& text) const;

    const MemoryStore& m_store;
};

class MemoryFiles final : public core::FileStore {
public:
    explicit MemoryFiles(std::filesystem::path folder) : m_folder(std::move(folder)) {}
    core::Digest put(Shelf, std::span<const std::byte> bytes, std::string_view) override;
    std::filesystem::path pathOf(Shelf, const core::Digest& digest) const override;
    bool has(Shelf, const core::Digest& digest) const override;
    std::filesystem::path cacheFolder() const override;

private:
    std::filesystem::path m_folder;
    std::set<core::Digest> m_kept;
};

// Backs up and restores as a test says.
class MemoryUpkeep final : public core::Upkeep, public core::SafeKeeping {
public:
    std::optional<core::Instant> outside;
    std::optional<std::filesystem::path> outsideAt;
    std::optional<core::Instant> inside;
    std::optional<core::Instant> first;
    std::filesystem::path at;
    std::function<core::BackupReport(const std::filesystem::path&, const core::Progress&)> onBackup;
    std::function<bool(const std::filesystem::path&, const std::filesystem::path&,
                       const core::Progress&)>
        onRestore;

    core::VerifyReport verify(const core::Progress&) const override;
    core::BackupReport backup(const std::filesystem::path& folder,
                              const core::Progress& progress) override;
    std::optional<core::Instant> lastOutsideBackup() const override { return outside; }
    void rebuildSearch() override;
    std::filesystem::path folder() const override { return at; }
    std::optional<core::Instant> lastInsideBackup() const override { return inside; }
    std::optional<std::filesystem::path> outsideFolder() const override { return outsideAt; }
    std::optional<core::Instant> firstWork() const override { return first; }
    core::MendReport mendFiles(const std::filesystem::path&, const core::Progress&) override;
    bool restore(const std::filesystem::path& backup, const std::filesystem::path& folder,
                 const core::Progress& progress) override;
};

} // namespace headcap::tests
