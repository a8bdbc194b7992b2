// One verification under way: what it has found, how far it is, and its parts.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/record/stores.h"
#include "db/sqlite/connection.h"

namespace headcap::db {

class VerifyRun {
public:
    struct Stopped {}; // thrown out of a part where the person stops it

    VerifyRun(const core::Progress& progress, std::int64_t expected)
        : m_progress(progress), m_expected(expected) {}

    // A part that fails says so, and the others go on.
    template <class Work>
    void part(const std::string& what, Work work) {
        m_count = 0;
        try {
            work();
        } catch (const core::StoreError& error) {
            find(what, std::nullopt,
                 "The check could not go on: " + std::string{error.what()} + ".");
        }
        m_report.checked.emplace_back(what, m_count);
    }
    void find(const std::string& what, std::optional<core::RecordRef> record,
              std::string sentence) {
        m_report.findings.push_back({what, record, std::move(sentence)});
    }
    void add(core::VerifyFinding finding) { m_report.findings.push_back(std::move(finding)); }
    void checkedOne() {
        constexpr std::int64_t kAskEvery = 512;
        ++m_count;
        if (++m_done % kAskEvery == 0 && !m_progress(m_done, std::max(m_done, m_expected))) {
            throw Stopped{};
        }
    }
    void countAs(std::int64_t checked) { m_count = checked; }
    [[nodiscard]] core::VerifyReport takeReport() { return std::move(m_report); }

private:
    const core::Progress& m_progress;
    std::int64_t m_expected;
    core::VerifyReport m_report{};
    std::int64_t m_count = 0; // of the part under way
    std::int64_t m_done = 0;
};

// Of the kind that a table or column names: "a finding"; of a name that is none, "a record".
[[nodiscard]] std::string oneOf(std::string_view kindName);

void verifyJournal(Connection& connection, VerifyRun& run);
// What the last entry of each record says, against the record.
void verifyRecords(Connection& connection, VerifyRun& run);
void verifySearchTexts(Connection& connection, VerifyRun& run);
// The ledger's own laws, and the sums kept of it.
void verifyLedger(Connection& connection, VerifyRun& run);

} // namespace headcap::db
