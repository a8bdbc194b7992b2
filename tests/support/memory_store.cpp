#include "tests/support/memory_store.h"

#include <algorithm>
#include <fstream>
#include <mutex>
#include <span>

#include "core/values/fold.h"

namespace headcap::tests {
namespace {

// As the real one, it answers any thread.
std::recursive_mutex& asking() {
    static std::recursive_mutex mutex;
    return mutex;
}

} // namespace

MemoryStore::MemoryStore() = default;
MemoryStore::~MemoryStore() = default;

std::optional<core::Found> MemoryStore::find(const core::RecordRef& ref) const {
    const std::scoped_lock lock{asking()};
    failIfBroken();
    const auto at = m_records.find(ref);
    return at == m_records.end() ? std::nullopt : std::optional{at->second};
}

std::vector<core::Found> MemoryStore::all(core::RecordKind kind) const {
    const std::scoped_lock lock{asking()};
    failIfBroken();
    std::vector<core::Found> found;
    for (const auto& [ref, one] : m_records) {
        if (ref.kind == kind) {
            found.push_back(one);
        }
    }
    return found;
}

std::vector<core::Found> MemoryStore::allWith(core::RecordKind kind, std::string_view column,
                                              const core::ColumnValue& value) const {
    std::vector<core::Found> found = all(kind);
    std::erase_if(found,
                  [&](const core::Found& one) { return columnOf(one.record, column) != value; });
    return found;
}

std::vector<core::Found> MemoryStore::allBetween(core::RecordKind kind, std::string_view column,
                                                 std::string_view from, std::string_view to) const {
    std::vector<core::Found> found = all(kind);
    const auto textOf = [&](const core::Found& one) {
        const auto value = columnOf(one.record, column);
        const auto* text = std::get_if<std::string>(&value);
        return text == nullptr ? std::string{} : *text;
    };
    std::erase_if(found, [&](const core::Found& one) {
        const std::string text = textOf(one);
        return text.empty() || text < from || text >= to;
    });
    std::ranges::stable_sort(found, {}, textOf);
    return found;
}

std::vector<core::Found> MemoryStore::newestWith(core::RecordKind kind, std::string_view column,
                                                 const core::ColumnValue& value,
                                                 std::size_t most) const {
    std::vector<core::Found> found = allWith(kind, column, value);
    std::ranges::reverse(found);
    found.erase(found.begin() + static_cast<std::ptrdiff_t>(std::min(most, found.size())),
                found.end());
    return found;
}

std::optional<std::string> MemoryStore::greatest(core::RecordKind kind, std::string_view column,
                                                 std::string_view prefix) const {
    std::optional<std::string> best;
    for (const core::Found& one : all(kind)) {
        const auto value = columnOf(one.record, column);
        const auto* text = std::get_if<std::string>(&value);
        if (text != nullptr && text->starts_with(prefix) && (!best || *best < *text)) {
            best = *text;
        }
    }
    return best;
}

std::vector<std::string> MemoryStore::lately(core::RecordKind kind, std::string_view column,
                                             std::size_t records) const {
    std::vector<core::Found> found = all(kind);
    std::ranges::reverse(found);
    found.erase(found.begin() + static_cast<std::ptrdiff_t>(std::min(records, found.size())),
                found.end());
    std::vector<std::string> texts;
    for (const core::Found& one : found) {
        const auto value = columnOf(one.record, column);
        const auto* text = std::get_if<std::string>(&value);
        if (text != nullptr && !text->empty() && std::ranges::find(texts, *text) == texts.end()) {
            texts.push_back(*text);
        }
    }
    return texts;
}

tl::expected<core::Revision, core::Refusal> MemoryStore::apply(const core::Change& change) {
    const std::scoped_lock lock{asking()};
    failIfBroken();
    if (failNext) {
        const auto code = *failNext;
        failNext.reset();
        throw core::StoreError{code, "as the test asked"};
    }
    for (const core::Write& write : change.writes) {
        if (auto refusal = refusalOf(write, change)) {
            return tl::unexpected(std::move(*refusal));
        }
    }
    core::JournalEntry entry;
    entry.who = change.who;
    entry.sentence = change.sentence;
    for (const core::Write& write : change.writes) {
        const core::RecordRef ref = core::refOf(write.record);
        core::JournalRecord record{ref};
        if (const auto before = find(ref)) {
            record.before = before->record;
        }
        if (write.what != core::Write::What::remove) {
            record.after = write.record;
        }
        entry.records.push_back(std::move(record));
    }
    write(std::move(entry));
    return core::Revision{m_sequence};
}

std::int64_t MemoryStore::dataVersion() const {
    const std::scoped_lock lock{asking()};
    failIfBroken();
    return m_sequence;
}

std::vector<core::JobLine> MemoryStore::inTheHouse() const {
    std::vector<core::JobLine> lines;
    for (const core::JobLine& line : everyJob()) {
        if (line.state != core::JobState::returned && line.state != core::JobState::declined &&
            line.state != core::JobState::withdrawn) {
            lines.push_back(line);
        }
    }
    return lines;
}

std::vector<core::JobLine> MemoryStore::page(std::size_t offset, std::size_t limit) const {
    std::vector<core::JobLine> lines = everyJob();
    std::reverse(lines.begin(), lines.end());
    lines.erase(lines.begin(),
                lines.begin() + static_cast<std::ptrdiff_t>(std::min(offset, lines.size())));
    if (lines.size() > limit) {
        lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(limit), lines.end());
    }
    return lines;
}

std::size_t MemoryStore::count() const {
    return everyJob().size();
}

std::optional<core::JobLine> MemoryStore::numbered(std::string_view number) const {
    for (const core::JobLine& line : everyJob()) {
        if (line.number == number) {
            return line;
        }
    }
    return std::nullopt;
}

std::vector<std::pair<core::JobLine, core::FollowUp>>
MemoryStore::dueFollowUps(core::Day by) const {
    std::vector<std::pair<core::JobLine, core::FollowUp>> due;
    for (const core::JobLine& line : everyJob()) {
        for (const auto& one : core::allWith(*this, &core::FollowUp::job, line.id)) {
            if (line.state == core::JobState::returned && !one.record.doneOn && one.record.dueOn &&
                *one.record.dueOn <= by) {
                due.emplace_back(line, one.record);
            }
        }
    }
    return due;
}

std::vector<core::JournalEntry> MemoryStore::historyOf(const core::RecordRef& ref) const {
    std::vector<core::JournalEntry> found;
    for (auto at = m_journal.rbegin(); at != m_journal.rend(); ++at) {
        if (std::any_of(at->records.begin(), at->records.end(),
                        [&](const auto& r) { return r.ref == ref; })) {
            found.push_back(*at);
        }
    }
    return found;
}

std::vector<core::JournalEntry> MemoryStore::latest(std::size_t limit) const {
    std::vector<core::JournalEntry> found(m_journal.rbegin(), m_journal.rend());
    found.resize(std::min(limit, found.size()));
    return found;
}

core::Digest MemoryStore::head() const {
    const std::scoped_lock lock{asking()};
    const std::string last = std::to_string(m_sequence);
    return core::sha256(std::as_bytes(std::span{last}));
}

std::optional<core::JournalEntry>
MemoryStore::undoable(std::optional<core::Id<core::Person>>) const {
    return entryAt(m_done);
}

std::optional<core::JournalEntry>
MemoryStore::redoable(std::optional<core::Id<core::Person>>) const {
    return entryAt(m_undone);
}

tl::expected<core::JournalEntry, core::Refusal>
MemoryStore::undo(std::optional<core::Id<core::Person>>) {
    return reverse(m_done, m_undone, core::EntryKind::undo);
}

tl::expected<core::JournalEntry, core::Refusal>
MemoryStore::redo(std::optional<core::Id<core::Person>>) {
    return reverse(m_undone, m_done, core::EntryKind::redo);
}

void MemoryStore::changeElsewhere(core::AnyRecord record) {
    const std::scoped_lock lock{asking()};
    const core::RecordRef ref = core::refOf(record);
    ++m_sequence;
    m_records.insert_or_assign(ref, core::Found{std::move(record), {m_sequence}});
}

std::size_t MemoryStore::changes() const {
    return m_journal.size();
}

const core::JournalEntry& MemoryStore::last() const {
    return m_journal.back();
}

void MemoryStore::failIfBroken() const {
    if (broken) {
        throw core::StoreError{*broken, "as the test asked"};
    }
}

core::ColumnValue MemoryStore::columnOf(const core::AnyRecord& record, std::string_view name) {
    const auto& columns = core::columnsOf(core::kindOf(record));
    const auto values = core::valuesOf(record);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].name == name) {
            return values[i];
        }
    }
    return {};
}

std::optional<core::Refusal> MemoryStore::refusalOf(const core::Write& write,
                                                    const core::Change& change) const {
    using Code = core::Refusal::Code;
    const core::RecordRef ref = core::refOf(write.record);
    const auto there = m_records.find(ref);
    if (write.what == core::Write::What::add) {
        if (there != m_records.end()) {
            return core::Refusal{Code::keyTaken, ref, {}};
        }
    } else {
        if (there == m_records.end()) {
            return core::Refusal{Code::missing, ref, {}};
        }
        if (there->second.revision != write.read) {
            return core::Refusal{Code::changedSince, ref, {}};
        }
    }
    if (write.what == core::Write::What::remove) {
        if (core::permanenceOf(ref.kind) == core::Permanence::permanent) {
            return core::Refusal{Code::neverDeleted, ref, {}};
        }
        for (const auto& [other, one] : m_records) {
            const auto named = core::referencesOf(asChanged(other, one.record, change));
            const bool goesToo = std::ranges::any_of(change.writes, [&it = other](const auto& w) {
                return w.what == core::Write::What::remove && core::refOf(w.record) == it;
            });
            if (!goesToo && std::find(named.begin(), named.end(), ref) != named.end()) {
                return core::Refusal{Code::stillNamed, ref, "another record"};
            }
        }
    } else {
        for (const core::RecordRef& named : core::referencesOf(write.record)) {
            const bool comesToo =
                std::any_of(change.writes.begin(), change.writes.end(),
                            [&](const auto& w) { return core::refOf(w.record) == named; });
            if (!comesToo && !m_records.contains(named)) {
                return core::Refusal{Code::namesNothing, ref, {}};
            }
        }
    }
    return std::nullopt;
}

const core::AnyRecord& MemoryStore::asChanged(const core::RecordRef& ref,
                                              const core::AnyRecord& kept,
                                              const core::Change& change) {
    for (const core::Write& write : change.writes) {
        if (write.what == core::Write::What::update && core::refOf(write.record) == ref) {
            return write.record;
        }
    }
    return kept;
}

void MemoryStore::write(core::JournalEntry entry) {
    const std::scoped_lock lock{asking()};
    entry.sequence = ++m_sequence;
    for (const core::JournalRecord& record : entry.records) {
        if (record.after) {
            m_records.insert_or_assign(record.ref, core::Found{*record.after, {m_sequence}});
        } else {
            m_records.erase(record.ref);
        }
    }
    if (entry.kind == core::EntryKind::change) {
        m_done.push_back(entry.sequence);
        m_undone.clear();
    }
    m_journal.push_back(std::move(entry));
}

std::optional<core::JournalEntry>
MemoryStore::entryAt(const std::vector<std::int64_t>& stack) const {
    if (stack.empty()) {
        return std::nullopt;
    }
    return *std::find_if(m_journal.begin(), m_journal.end(),
                         [&](const auto& e) { return e.sequence == stack.back(); });
}

tl::expected<core::JournalEntry, core::Refusal>
MemoryStore::reverse(std::vector<std::int64_t>& from, std::vector<std::int64_t>& to,
                     core::EntryKind kind) {
    const auto entry = entryAt(from);
    if (!entry) {
        return tl::unexpected(core::Refusal{core::Refusal::Code::nothingToUndo, {}, {}});
    }
    from.pop_back();
    to.push_back(entry->sequence);
    core::JournalEntry made;
    made.kind = kind;
    made.sentence = entry->sentence;
    made.reverses = entry->sequence;
    for (auto record : entry->records) {
        if (kind == core::EntryKind::undo) {
            std::swap(record.before, record.after);
        }
        made.records.push_back(std::move(record));
    }
    write(made);
    return made;
}

std::vector<core::JobLine> MemoryStore::everyJob() const {
    std::vector<core::JobLine> lines;
    for (const auto& job : core::all<core::Job>(*this)) {
        const auto item = core::find(*this, job.record.item);
        const auto owner = core::find(*this, job.record.owner);
        lines.push_back(
            {job.record.id, job.record.number, item ? core::headingOf(item->record) : std::string{},
             owner ? owner->record.name : std::string{}, job.record.state, job.record.dueOn});
    }
    std::sort(lines.begin(), lines.end(),
              [](const auto& a, const auto& b) { return a.number < b.number; });
    return lines;
}

core::SearchAnswer MemorySearch::find(std::string_view words, std::size_t limit) const {
    core::SearchAnswer answer;
    const std::string asked = core::foldForSearch(words);
    for (std::size_t kind = 0; kind < core::kRecordKindCount; ++kind) {
        for (const core::Found& one : m_store.all(static_cast<core::RecordKind>(kind))) {
            const std::string text = core::searchTextOf(one.record);
            if (asked.empty() || !holdsAll(core::foldForSearch(text), asked)) {
                continue;
            }
            ++answer.total;
            if (answer.hits.size() < limit) {
                answer.hits.push_back(hit(one.record, text));
            }
        }
    }
    return answer;
}

std::vector<core::RecordRef> MemorySearch::findOf(core::RecordKind kind, std::string_view words,
                                                  std::size_t limit) const {
    std::vector<core::RecordRef> refs;
    const std::string asked = core::foldForSearch(words);
    for (const core::Found& one : m_store.all(kind)) {
        if (!asked.empty() && refs.size() < limit &&
            holdsAll(core::foldForSearch(core::searchTextOf(one.record)), asked)) {
            refs.push_back(core::refOf(one.record));
        }
    }
    return refs;
}

bool MemorySearch::holdsAll(const std::string& text, const std::string& words) {
    std::size_t at = 0;
    while (at < words.size()) {
        const std::size_t end = std::min(words.find(' ', at), words.size());
        if (text.find(words.substr(at, end - at)) == std::string::npos) {
            return false;
        }
        at = end + 1;
    }
    return true;
}

core::SearchHit MemorySearch::hit(const core::AnyRecord& record, const std::string& text) const {
    core::SearchHit made{core::refOf(record)};
    made.text = text;
    made.job = core::jobOf(record);
    if (made.job) {
        if (const auto job = core::find(m_store, *made.job)) {
            made.jobNumber = job->record.number;
            if (const auto item = core::find(m_store, job->record.item)) {
                made.item = core::headingOf(item->record);
            }
        }
    }
    return made;
}

core::Digest MemoryFiles::put(Shelf, std::span<const std::byte> bytes, std::string_view) {
    const core::Digest digest = core::sha256(bytes);
    std::ofstream{pathOf(Shelf::photograph, digest), std::ios::binary}.write(
        reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
    m_kept.insert(digest);
    return digest;
}

std::filesystem::path MemoryFiles::pathOf(Shelf, const core::Digest& digest) const {
    return m_folder / digest.hex();
}

bool MemoryFiles::has(Shelf, const core::Digest& digest) const {
    return m_kept.contains(digest);
}

std::filesystem::path MemoryFiles::cacheFolder() const {
    return m_folder;
}

core::VerifyReport MemoryUpkeep::verify(const core::Progress&) const {
    return {};
}

core::BackupReport MemoryUpkeep::backup(const std::filesystem::path& folder,
                                        const core::Progress& progress) {
    return onBackup ? onBackup(folder, progress) : core::BackupReport{.folder = folder};
}

void MemoryUpkeep::rebuildSearch() {}

core::MendReport MemoryUpkeep::mendFiles(const std::filesystem::path&, const core::Progress&) {
    return {};
}

bool MemoryUpkeep::restore(const std::filesystem::path& backup, const std::filesystem::path& folder,
                           const core::Progress& progress) {
    return !onRestore || onRestore(backup, folder, progress);
}

const core::AnyRecord& MemoryStore::kept(const core::RecordRef& ref) const {
    return m_records.at(ref).record;
}

} // namespace headcap::tests
