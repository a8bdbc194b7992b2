// How the demo's data are read: what people write, defaults, names, and errors that say where.
#include <gtest/gtest.h>

#include "demo-data/loader/data_error.h"
#include "demo-data/loader/teller.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/memory_store.h"

namespace headcap::demo {
namespace {

using namespace core;

class NoFiles final : public KeptFiles {
public:
    KeptFile picture(const std::string&, const std::string& name) override {
        throw DataError{"no picture " + name};
    }
    KeptFile paper(const std::string&, const std::string& name) override {
        throw DataError{"no paper " + name};
    }
};

// Nepal's time, 5 h 45 min before UTC's.
const Instant kNow =
    std::chrono::sys_days{Day{std::chrono::year{2031}, std::chrono::March, std::chrono::day{12}}} +
    std::chrono::hours{8};
const core::tests::FixedClock kClock{kNow, Minutes{345}};

struct Told {
    headcap::tests::MemoryStore store;
    KnownNames names;
};

std::unique_ptr<Told> tell(std::string_view people, std::string_view job) {
    static constexpr std::string_view kDefaults = R"({
      "person": {"active": true}, "owner": {"kind": "private"}, "item": {"nature": "volume"},
      "job": {"state": "received", "received_on": "{day}", "earlier_records": "asked"},
      "step": {"job": "{job}", "at": "{when}", "who": "{who}", "kind": "treatment", "reversibility": "yes"},
      "material_use": {"job": "{job}", "grain_at_spine": "not_said"}, "state_change": {"job": "{job}", "at": "{when}", "who": "{who}"},
      "material": {"kind": "paper", "unit": "g", "reversibility": "yes"},
      "lot": {"origin": "bought", "grain": "none"}, "ledger_entry": {"at": "{when}", "kind": "received"}})";
    auto told = std::make_unique<Told>();
    const DemoDays days{kClock};
    const std::vector<EmbeddedFile> files{
        {"defaults.json", kDefaults}, {"people.json", people}, {"atlas.json", job}};
    const Story story{files, days};
    StoryClock clock{kClock};
    NoFiles none;
    Teller teller{story, days, clock, told->store, none};
    for (const Group& group : story.groups()) {
        teller.tell(group);
    }
    told->names = teller.names();
    return told;
}

constexpr std::string_view kPeople =
    R"({"story": [{"when": "day -9 08:00", "say": "People", "add": {
  "person": [{"key": "@orrin", "name": "Orrin"}], "owner": [{"key": "@pilots", "name": "Pilots"}],
  "material": [{"key": "@m", "name": "Paste"}],
  "lot": [{"key": "@paste", "number": "{yy}-001", "material": "@m", "ledger_entry": [{"amount": "10 g"}]}]}}]})";

std::string jobFile(const std::string& step) {
    return R"({"job": "@job", "story": [
      {"when": "day -3 09:10", "who": "@orrin", "say": "Received {@job}", "add": {
        "item": [{"key": "@item", "owner": "@pilots", "title": "Atlas", "height": "31.2 cm", "date": "ca. 1723"}],
        "job": [{"key": "@job", "number": "{year}-007", "item": "@item", "owner": "@pilots", "value": "1250.50"}]}},
      {"when": "day -2 10:00", "who": "@orrin", "say": "Step", "moves": {"to": "at_the_bench", "why": "begun"},
       "add": {"step": [)" +
           step + "]}}]}";
}

template <class Record>
Record only(const RecordStore& store) {
    const auto records = all<Record>(store);
    EXPECT_EQ(records.size(), 1U);
    return records.front().record;
}

std::string errorOf(const std::string& step) {
    try {
        tell(kPeople, jobFile(step));
    } catch (const DataError& error) {
        return error.what();
    }
    return "no error";
}

TEST(DemoData, readsWhatPeopleWrite) {
    const auto told =
        tell(kPeople, jobFile(R"({"minutes": "3 h 20 min", "sets_until": "day -1 07:15"})"));
    const auto item = only<Item>(told->store);
    EXPECT_EQ(item.height, Length::millimetres(312));
    EXPECT_EQ(item.date->edtf, "1723~");
    const auto job = only<Job>(told->store);
    EXPECT_EQ(job.value, (Money{125'050, "EUR"}));
    EXPECT_EQ(job.number, "2031-007");
    EXPECT_EQ(isoText(job.receivedOn), "2031-03-09");
    const auto step = only<Step>(told->store);
    EXPECT_EQ(step.minutes, Minutes{200});
    EXPECT_EQ(isoText(step.at), "2031-03-10T04:15:00.000Z") << "10:00 where UTC has 04:15";
    EXPECT_EQ(isoText(*step.setsUntil), "2031-03-11T01:30:00.000Z");
}

TEST(DemoData, fillsInJobMomentAndHand) {
    const auto told = tell(kPeople, jobFile("{}"));
    const auto step = only<Step>(told->store);
    EXPECT_EQ(step.job, only<Job>(told->store).id);
    EXPECT_EQ(step.who, only<Person>(told->store).id);
    EXPECT_EQ(only<Lot>(told->store).number, "31-001");
}

TEST(DemoData, booksWhatAStepTakesFromItsLot) {
    const auto told =
        tell(kPeople, jobFile(R"({"material_use": [{"lot": "@paste", "amount": "2.5 g"}]})"));
    const auto use = only<MaterialUse>(told->store);
    EXPECT_EQ(use.step, only<Step>(told->store).id);
    const auto ledger = all<LedgerEntry>(told->store);
    ASSERT_EQ(ledger.size(), 2U);
    EXPECT_EQ(ledger.back().record.use, use.id);
    EXPECT_EQ(ledger.back().record.amount, (Amount{-2'500'000, Unit::gram}));
}

TEST(DemoData, movesTheJobAndRecordsTheMove) {
    const auto told = tell(kPeople, jobFile("{}"));
    EXPECT_EQ(only<Job>(told->store).state, JobState::atTheBench);
    const auto change = only<StateChange>(told->store);
    EXPECT_EQ(change.fromState, JobState::received);
    EXPECT_EQ(change.toState, JobState::atTheBench);
    EXPECT_EQ(change.why, "begun");
}

TEST(DemoData, saysWhichFileRecordAndFieldIsWrong) {
    EXPECT_EQ(errorOf(R"({"key": "@down", "minutes": "3 hh"})"),
              "atlas.json, day -2 10:00: step @down, field minutes: \"3 hh\" can't be read");
    EXPECT_EQ(errorOf(R"({"key": "@down", "technic": "sewing"})"),
              "atlas.json, day -2 10:00: step @down has no field technic");
    EXPECT_EQ(errorOf(R"({"key": "@down", "who": "@nobody"})"),
              "atlas.json, day -2 10:00: step @down, field who: no record is named @nobody yet");
    EXPECT_EQ(errorOf(R"({"key": "@down", "who": "@pilots"})"),
              "atlas.json, day -2 10:00: step @down, field who: \"@pilots\" names a record of kind "
              "owner");
    EXPECT_EQ(errorOf(R"({"key": "@down", "kind": "miracle"})"),
              "atlas.json, day -2 10:00: step @down: kind is missing or not one of its words");
}

TEST(DemoData, noDayAndNoJsonAreErrors) {
    EXPECT_THROW(tell(kPeople, R"({"job": "@job", "story": [{"when": "yesterday", "say": "x"}]})"),
                 DataError);
    EXPECT_THROW(tell(kPeople, "{"), DataError);
}

} // namespace
} // namespace headcap::demo
