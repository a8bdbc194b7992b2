// A workshop in a folder of its own, with a person, an owner, an item and a job in it.
#pragma once

#include <filesystem>
#include <memory>
#include <string>

#include <unistd.h>

#include <gtest/gtest.h>

#include "core/record/stores.h"
#include "db/workshop.h"

namespace headcap::test {

// Gone, with what is in it, when it goes.
class TempFolder {
public:
    TempFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "headcap-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) {
            ADD_FAILURE() << "no temporary folder";
        }
        m_path = name;
    }
    ~TempFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

// Moves on by one second each time it is asked.
class TickingClock final : public core::Clock {
public:
    [[nodiscard]] core::Instant now() const override {
        m_now += std::chrono::seconds{1};
        return m_now;
    }
    [[nodiscard]] core::Day today() const override { return dayOf(m_now); }
    [[nodiscard]] core::Day dayOf(core::Instant instant) const override {
        return core::Day{std::chrono::floor<std::chrono::days>(instant)};
    }
    void set(core::Instant instant) { m_now = instant; }

private:
    mutable core::Instant m_now{std::chrono::sys_days{
        core::Day{std::chrono::year{2031}, std::chrono::March, std::chrono::day{5}}}};
};

// Ends the test where a change is refused: it was expected to be made.
inline core::Revision mustApply(core::RecordStore& store, const core::Change& change) {
    const auto made = store.apply(change);
    if (!made) {
        ADD_FAILURE() << change.sentence << " refused: " << static_cast<int>(made.error().code)
                      << " " << made.error().detail;
        return {};
    }
    return *made;
}

class WorkshopFixture : public ::testing::Test {
protected:
    WorkshopFixture() : WorkshopFixture(db::WorkshopSettings{.makesBackups = false}) {}
    explicit WorkshopFixture(db::WorkshopSettings settings)
        : workshops(clock, std::move(settings)), open(workshops.create(folder())) {
        core::Change first{.sentence = "Job received"};
        first.add(person).add(owner).add(item).add(job);
        firstRevision = mustApply(records(), first);
    }

    [[nodiscard]] std::filesystem::path folder() const { return temp.path() / "workshop"; }
    [[nodiscard]] core::Stores stores() { return open->stores(); }
    [[nodiscard]] core::RecordStore& records() { return stores().records; }
    [[nodiscard]] core::Journal& journal() { return stores().journal; }
    void reopen() {
        open.reset();
        open = workshops.open(folder());
    }

    [[nodiscard]] core::Finding aFinding(const std::string& observed) {
        return {.id = ids.next<core::Finding>(), .job = job.id, .observed = observed};
    }
    [[nodiscard]] core::Step aStep(const std::string& description) {
        return {.id = ids.next<core::Step>(),
                .job = job.id,
                .at = clock.now(),
                .who = person.id,
                .description = description,
                .minutes = core::Minutes{20}};
    }

    TempFolder temp;
    TickingClock clock;
    core::IdSource ids{clock, 1612};
    core::Person person{.id = ids.next<core::Person>(), .name = "Una Thole", .initials = "UT"};
    core::Owner owner{.id = ids.next<core::Owner>(), .name = "Kell Chapel"};
    core::Item item{.id = ids.next<core::Item>(),
                    .owner = owner.id,
                    .title = "A Hymnal for the Use of Kell",
                    .shortTitle = "Hymnal"};
    core::Job job{.id = ids.next<core::Job>(),
                  .number = "2031-001",
                  .item = item.id,
                  .owner = owner.id,
                  .receivedOn = clock.today(),
                  .request = "make it usable again"};
    db::SqliteWorkshops workshops;
    std::unique_ptr<core::OpenWorkshop> open;
    core::Revision firstRevision{};
};

} // namespace headcap::test
