#include "core/record/acts_in_job.h"

#include <algorithm>
#include <set>
#include <string>

namespace headcap::core {
namespace {

// The job or its book, or a record that names either.
bool isOf(const JobFile& file, const JournalRecord& touched) {
    const auto& record = touched.after ? touched.after : touched.before;
    if (!record) {
        return false;
    }
    const std::string job = file.job.id.text();
    const std::string item = file.item.id.text();
    return std::ranges::any_of(valuesOf(*record), [&](const ColumnValue& value) {
        const auto* text = std::get_if<std::string>(&value);
        return text != nullptr && (*text == job || *text == item);
    });
}

} // namespace

std::vector<JournalEntry> actsIn(const JobFile& file, std::vector<JournalEntry> newest,
                                 std::size_t most) {
    std::set<std::int64_t> takenBack;
    std::erase_if(newest, [&](const JournalEntry& entry) {
        const bool isGone = takenBack.contains(entry.sequence);
        if (entry.reverses) {
            takenBack.insert(*entry.reverses);
        }
        return isGone || entry.kind == EntryKind::migration ||
               std::ranges::none_of(
                   entry.records, [&](const JournalRecord& record) { return isOf(file, record); });
    });
    newest.erase(newest.begin() + static_cast<std::ptrdiff_t>(std::min(most, newest.size())),
                 newest.end());
    return newest;
}

std::optional<Id<Job>> onlyJobOf(const JournalEntry& act) {
    std::optional<Id<Job>> only;
    for (const JournalRecord& touched : act.records) {
        const auto& record = touched.after ? touched.after : touched.before;
        const auto job = record ? jobOf(*record) : std::nullopt;
        if (job && only && *job != *only) {
            return std::nullopt;
        }
        only = job ? job : only;
    }
    return only;
}

} // namespace headcap::core
