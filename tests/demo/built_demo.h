// The demo workshop as built on a day, with small photographs, kept for all tests of a program.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/record/workshops.h"
#include "db/workshop.h"
#include "tests/db/workshop_fixture.h"
#include "tests/support/fixed_clock.h"

namespace headcap::demo {

class BuiltDemo {
public:
    explicit BuiltDemo(core::Instant now);

    [[nodiscard]] core::Stores stores() const { return m_workshop->stores(); }
    [[nodiscard]] const core::Clock& clock() const { return m_clock; }
    [[nodiscard]] const std::string& firstJob() const { return m_firstJob; }
    // Every record, kind after kind, in the order of their making.
    [[nodiscard]] std::vector<core::AnyRecord> records() const;
    [[nodiscard]] core::Id<core::Job> job(const std::string& shortTitle) const;

private:
    core::tests::FixedClock m_clock;
    test::TempFolder m_folder;
    std::unique_ptr<db::SqliteWorkshops> m_workshops;
    std::string m_firstJob;
    std::unique_ptr<core::OpenWorkshop> m_workshop;
};

// Built once, on 12 March 2031.
[[nodiscard]] const BuiltDemo& theDemo();

[[nodiscard]] core::Instant noonOf(int year, unsigned month, unsigned day);

} // namespace headcap::demo
