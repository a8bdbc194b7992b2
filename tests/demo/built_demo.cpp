#include "tests/demo/built_demo.h"

#include <stdexcept>

#include "core/report/issuing.h"
#include "demo-data/build_demo.h"

namespace headcap::demo {
namespace {

// As the program does it, but with a page of its own instead of a real report.
void issuePlainly(const core::Stores& stores, const core::Clock& clock,
                  const core::Id<core::Job>& job, const core::Id<core::Person>& who) {
    const std::string text = "a report";
    const auto bytes = std::as_bytes(std::span{text});
    core::IdSource ids{clock, 1800 + stores.records.all(core::RecordKind::issuedReport).size()};
    const core::IssuedReport report{
        .id = ids.next<core::IssuedReport>(),
        .job = job,
        .issuedAt = clock.now(),
        .who = who,
        .digest = stores.files.put(core::FileStore::Shelf::report, bytes, ".pdf"),
        .fileName = "report.pdf",
        .bytes = static_cast<std::int64_t>(bytes.size()),
        .journalHead = stores.journal.head().hex()};
    const auto file = core::loadJobFile(stores.records, job);
    if (!file || !stores.records.apply(core::issueChange(*file, report, ids))) {
        throw std::runtime_error("the report could not be kept");
    }
}

} // namespace

core::Instant noonOf(int year, unsigned month, unsigned day) {
    return std::chrono::sys_days{core::Day{std::chrono::year{year}, std::chrono::month{month},
                                           std::chrono::day{day}}} +
           std::chrono::hours{12};
}

BuiltDemo::BuiltDemo(core::Instant now) : m_clock(now, core::Minutes{345}) {
    m_workshops = std::make_unique<db::SqliteWorkshops>(m_clock);
    const auto folder = m_folder.path() / "demo";
    m_firstJob = buildDemo(*m_workshops, m_clock, folder,
                           {.photographScale = 0.04, .issueReport = issuePlainly});
    m_workshop = m_workshops->open(folder);
}

std::vector<core::AnyRecord> BuiltDemo::records() const {
    std::vector<core::AnyRecord> all;
    for (std::size_t kind = 0; kind < core::kRecordKindCount; ++kind) {
        for (core::Found& one : stores().records.all(static_cast<core::RecordKind>(kind))) {
            all.push_back(std::move(one.record));
        }
    }
    return all;
}

core::Id<core::Job> BuiltDemo::job(const std::string& shortTitle) const {
    std::optional<core::Id<core::Job>> found;
    for (const auto& job : core::all<core::Job>(stores().records)) {
        const auto item = core::find(stores().records, job.record.item);
        if (item && item->record.shortTitle == shortTitle) {
            found = job.record.id; // the latest of its jobs
        }
    }
    if (!found) {
        throw std::runtime_error("the demo has no job on " + shortTitle);
    }
    return *found;
}

const BuiltDemo& theDemo() {
    static const BuiltDemo demo{noonOf(2031, 3, 12)};
    return demo;
}

} // namespace headcap::demo
