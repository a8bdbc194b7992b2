#include "db/sqlite/job_index.h"

#include <string>

#include "core/custody/job_states.h"
#include "core/values/contract.h"
#include "db/sqlite/record_sql.h"

namespace headcap::db {
namespace {

// The columns of a JobLine, in the order lineAt reads them.
constexpr int kLineColumns = 6;
const std::string kSelectLine =
    "SELECT job.id, job.number, iif(item.short_title <> '', item.short_title, item.title), "
    "owner.name, job.state, job.due_on";
const std::string kFromJobs =
    " FROM job JOIN item ON item.id = job.item JOIN owner ON owner.id = job.owner";

// "('returned', 'declined', 'withdrawn')", as core has it; in the words and the order of the
// partial index job_in_the_house, or that is of no use.
std::string statesThatHaveLeft() {
    std::string states;
    for (std::size_t i = 0; i < core::EnumNames<core::JobState>::kNames.size(); ++i) {
        if (!core::isInTheHouse(static_cast<core::JobState>(i))) {
            states += (states.empty() ? "('" : ", '") +
                      std::string{core::EnumNames<core::JobState>::kNames[i]} + "'";
        }
    }
    return states + ")";
}

const std::string kHasLeft = "job.state IN " + statesThatHaveLeft();
const std::string kIsInTheHouse = "job.state NOT IN " + statesThatHaveLeft();

core::JobState stateNamed(const std::string& name) {
    const auto& names = core::EnumNames<core::JobState>::kNames;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == name) {
            return static_cast<core::JobState>(i);
        }
    }
    throw core::StoreError(core::StoreError::Code::truncated, "no job can be in the state " + name);
}

core::JobLine lineAt(const Query& query) {
    const auto id = core::Uuid::fromText(query.text(0));
    if (!id) {
        throw core::StoreError(core::StoreError::Code::truncated,
                               "the key of a job can't be read: " + query.text(0));
    }
    core::JobLine line{core::Id<core::Job>{*id}, query.text(1), query.text(2), query.text(3),
                       stateNamed(query.text(4))};
    if (!query.isNull(5)) {
        line.due = core::dayFromIso(query.text(5));
    }
    return line;
}

std::vector<core::JobLine> linesOf(Query& query) {
    std::vector<core::JobLine> lines;
    while (query.step()) {
        lines.push_back(lineAt(query));
    }
    return lines;
}

} // namespace

std::vector<core::JobLine> SqliteJobIndex::inTheHouse() const {
    const auto reader = m_readers.lend();
    Query query(*reader,
                kSelectLine + kFromJobs + " WHERE " + kIsInTheHouse + " ORDER BY job.number");
    return linesOf(query);
}

std::vector<core::JobLine> SqliteJobIndex::page(std::size_t offset, std::size_t limit) const {
    const auto reader = m_readers.lend();
    // The keys alone are skipped over; they ascend with the time of their making.
    Query query(*reader, kSelectLine + kFromJobs +
                             " WHERE job.id IN (SELECT id FROM job ORDER BY id DESC LIMIT ? "
                             "OFFSET ?) ORDER BY job.id DESC");
    query.with(static_cast<std::int64_t>(limit)).with(static_cast<std::int64_t>(offset));
    return linesOf(query);
}

std::size_t SqliteJobIndex::count() const {
    const auto reader = m_readers.lend();
    Query query(*reader, "SELECT count(*) FROM job");
    query.step();
    return static_cast<std::size_t>(query.number(0));
}

std::optional<core::JobLine> SqliteJobIndex::numbered(std::string_view number) const {
    const auto reader = m_readers.lend();
    Query query(*reader, kSelectLine + kFromJobs + " WHERE job.number = ?");
    query.with(number);
    return query.step() ? std::optional{lineAt(query)} : std::nullopt;
}

std::vector<std::pair<core::JobLine, core::FollowUp>>
SqliteJobIndex::dueFollowUps(core::Day by) const {
    const auto reader = m_readers.lend();
    Query query(*reader, kSelectLine + ", " + columnList(core::RecordKind::followUp, "follow_up") +
                             kFromJobs +
                             " JOIN follow_up ON follow_up.job = job.id WHERE "
                             "follow_up.done_on IS NULL AND follow_up.due_on <= ? AND " +
                             kHasLeft + " ORDER BY follow_up.due_on, follow_up.id");
    query.with(core::isoText(by));
    std::vector<std::pair<core::JobLine, core::FollowUp>> due;
    while (query.step()) {
        due.emplace_back(lineAt(query), std::get<core::FollowUp>(recordAt(
                                            query, core::RecordKind::followUp, kLineColumns)));
    }
    return due;
}

} // namespace headcap::db
