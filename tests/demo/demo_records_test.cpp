// The demo's records as a whole: the same at each building, every kind among them, nothing named
// that is not there, nothing overdrawn.
#include <algorithm>
#include <map>
#include <regex>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/custody/next_step.h"
#include "core/custody/next_step_file.h"
#include "core/materials/ledger.h"
#include "core/materials/shelf_life.h"
#include "tests/demo/built_demo.h"

namespace headcap::demo {
namespace {

using namespace core;

// Each record as JSON, its keys and those it names replaced by their place in the order of making.
std::vector<std::string> withoutKeys(const BuiltDemo& demo) {
    std::map<std::string, std::string> places;
    const auto records = demo.records();
    for (const AnyRecord& record : records) {
        const RecordRef ref = refOf(record);
        places.emplace(ref.id.text(),
                       std::string{nameOf(ref.kind)} + " " + std::to_string(places.size()));
    }
    std::vector<std::string> texts;
    for (const AnyRecord& record : records) {
        auto object = toJson(record);
        for (auto& [member, value] : object.items()) {
            if (value.is_string() && places.contains(value.get<std::string>())) {
                value = places.at(value.get<std::string>());
            }
        }
        object.erase("journal_head");
        texts.push_back(object.dump());
    }
    return texts;
}

// What does not change with the day of building: no times, no numbers of jobs and lots, and no
// files, for photographs carry their time.
std::vector<std::string> withoutTimes(const BuiltDemo& demo) {
    static const std::regex times{
        R"re(\d{4}-\d\d-\d\d(T[\d:.]+Z)?|"(digest|bytes)":("[0-9a-f]+"|\d+))re"};
    static const std::regex numbers{R"(\b(\d{4}|\d\d)-\d{3}\b)"};
    auto texts = withoutKeys(demo);
    for (std::string& text : texts) {
        text = std::regex_replace(std::regex_replace(text, times, "-"), numbers, "-");
    }
    return texts;
}

// Whatever state the job were in: the worklist reads less than the whole file and says the same.
TEST(Demo, theNextStepIsThatOfTheWholeFile) {
    const RecordStore& store = theDemo().stores().records;
    const SystemClock clock;
    const auto said = [&](const JobFile& file) {
        const NextStep next = nextStep(file, clock);
        return std::tuple{next.group, next.sentence, next.page, next.setsUntil.has_value()};
    };
    int compared = 0;
    for (const auto& job : all<Job>(store)) {
        auto whole = *loadJobFile(store, job.record.id);
        auto lean = *fileForNextStep(store, job.record.id, loadTechniques(store));
        for (std::size_t i = 0; i < EnumNames<JobState>::kNames.size(); ++i) {
            const auto state = static_cast<JobState>(i);
            const bool isReadWhole = state == JobState::passed || state == JobState::reported;
            if (isReadWhole && job.record.state != state) {
                continue; // for the audit and for the release list
            }
            whole.job.state = lean.job.state = state;
            EXPECT_EQ(said(lean), said(whole)) << job.record.number;
            ++compared;
        }
    }
    EXPECT_GT(compared, 50);
}

TEST(Demo, isTheSameWhenBuiltAgain) {
    const BuiltDemo again{noonOf(2031, 3, 12)};
    EXPECT_EQ(withoutKeys(theDemo()), withoutKeys(again));
}

TEST(Demo, differsOnAnotherDayInTimesAlone) {
    const BuiltDemo later{noonOf(2032, 1, 9)};
    EXPECT_EQ(withoutTimes(theDemo()), withoutTimes(later));
    EXPECT_NE(withoutKeys(theDemo()), withoutKeys(later));
}

TEST(Demo, holdsEveryKindOfRecord) {
    std::set<RecordKind> kinds;
    for (const AnyRecord& record : theDemo().records()) {
        kinds.insert(kindOf(record));
    }
    for (std::size_t kind = 0; kind < kRecordKindCount; ++kind) {
        EXPECT_TRUE(kinds.contains(static_cast<RecordKind>(kind)))
            << nameOf(static_cast<RecordKind>(kind));
    }
}

TEST(Demo, hasJobsInEveryStateButWithdrawn) {
    std::set<JobState> states;
    for (const auto& job : all<Job>(theDemo().stores().records)) {
        states.insert(job.record.state);
    }
    for (std::size_t state = 0; state < EnumNames<JobState>::kNames.size(); ++state) {
        if (static_cast<JobState>(state) != JobState::withdrawn) {
            EXPECT_TRUE(states.contains(static_cast<JobState>(state)))
                << EnumNames<JobState>::kNames[state];
        }
    }
}

TEST(Demo, numbersJobsAndLotsInTheOrderOfTime) {
    std::vector<std::pair<Day, std::string>> jobs;
    for (const auto& job : all<Job>(theDemo().stores().records)) {
        jobs.emplace_back(job.record.receivedOn, job.record.number);
        EXPECT_EQ(job.record.number.substr(0, 4), isoText(job.record.receivedOn).substr(0, 4));
    }
    std::ranges::sort(jobs);
    EXPECT_TRUE(std::ranges::is_sorted(jobs, {}, [](const auto& one) { return one.second; }));
    std::set<std::string> lots;
    for (const auto& lot : all<Lot>(theDemo().stores().records)) {
        EXPECT_TRUE(lots.insert(lot.record.number).second) << lot.record.number;
    }
    EXPECT_GE(lots.size(), 15U);
}

TEST(Demo, namesOnlyRecordsThatAreThere) {
    const auto& store = theDemo().stores().records;
    for (const AnyRecord& record : theDemo().records()) {
        for (const RecordRef& ref : referencesOf(record)) {
            EXPECT_TRUE(store.find(ref)) << toJson(record).dump();
        }
        if (const auto* attachment = std::get_if<Attachment>(&record)) {
            EXPECT_TRUE(store.find(attachment->subject)) << attachment->fileName;
        }
    }
}

TEST(Demo, keepsEveryFileItsRecordsName) {
    const FileStore& files = theDemo().stores().files;
    for (const AnyRecord& record : theDemo().records()) {
        if (const auto* photograph = std::get_if<Photograph>(&record)) {
            EXPECT_TRUE(files.has(FileStore::Shelf::photograph, photograph->digest))
                << photograph->fileName;
        } else if (const auto* attachment = std::get_if<Attachment>(&record)) {
            EXPECT_TRUE(files.has(FileStore::Shelf::attachment, attachment->digest))
                << attachment->fileName;
        }
    }
    const auto report = theDemo().stores().upkeep.verify([](auto, auto) { return true; });
    for (const VerifyFinding& finding : report.findings) {
        ADD_FAILURE() << finding.what << ": " << finding.sentence;
    }
}

TEST(Demo, ledgerBalancesAndEveryUseIsBooked) {
    const auto& store = theDemo().stores().records;
    const Shelf shelf = loadShelf(store);
    bool overdue = false;
    for (const Lot& lot : shelf.lots) {
        const auto balance = shelf.balanceOf(lot.id);
        ASSERT_TRUE(balance) << "lot " << lot.number << " holds amounts of two units";
        EXPECT_GE(balance->count, 0) << "lot " << lot.number;
        if (lot.finished) {
            EXPECT_EQ(balance->count, 0) << "lot " << lot.number << " is finished";
        }
        overdue = overdue || (!lot.finished && ageOf(lot, shelf.material(lot.material),
                                                     theDemo().clock().today()) == LotAge::overdue);
    }
    EXPECT_TRUE(overdue) << "one lot is past its date";
    for (const auto& use : all<MaterialUse>(store)) {
        const auto booked =
            std::ranges::count(shelf.ledger, std::optional{use.record.id}, &LedgerEntry::use);
        EXPECT_EQ(booked, use.record.lot && use.record.amount ? 1 : 0);
    }
}

TEST(Demo, journalTellsWhoDidWhat) {
    const auto entries = theDemo().stores().journal.latest(1000);
    EXPECT_GT(entries.size(), 80U);
    for (const JournalEntry& entry : entries) {
        EXPECT_FALSE(entry.sentence.empty());
    }
}

} // namespace
} // namespace headcap::demo
