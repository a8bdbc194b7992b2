// What a report must disclose, gathered subject by subject. Inside of the check of disclosures.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/report/disclosure_check.h"

namespace headcap::core::report {

// Without the blanks at its ends.
[[nodiscard]] std::string trimmed(const std::string& text);
// Of no lot: nothing.
[[nodiscard]] std::string lotNumber(const JobFile& file, const std::optional<Id<Lot>>& id);

class Wanted {
public:
    template <class Record>
    void say(std::string_view section, const Record& record,
             std::initializer_list<std::string> texts = {}) {
        const RecordRef ref = refOf(record.id);
        m_all.push_back({std::string{section}, ref, {}, {}});
        for (const std::string& text : texts) {
            if (const std::string words = trimmed(text); !words.empty()) {
                m_all.push_back({std::string{section}, ref, {}, words});
            }
        }
    }
    // Where there is something to say.
    template <class Record>
    void fact(std::string_view section, const Record& record, std::string_view label,
              const std::string& text) {
        if (const std::string words = trimmed(text); !words.empty()) {
            m_all.push_back({std::string{section}, refOf(record.id), std::string{label}, words});
        }
    }
    // Said in any case, be it that it is not recorded.
    template <class Record>
    void always(std::string_view section, const Record& record, std::string_view label) {
        m_all.push_back({std::string{section}, refOf(record.id), std::string{label}, {}});
    }
    [[nodiscard]] std::vector<Disclosure> take() { return std::move(m_all); }

private:
    std::vector<Disclosure> m_all;
};

// The book, its condition, its collation.
void wantBook(Wanted& wanted, const JobFile& file);
// What was proposed, approved, done and told, with every material and removal.
void wantTreatment(Wanted& wanted, const JobFile& file);
// Leaves supplied.
void wantLeaves(Wanted& wanted, const JobFile& file);

} // namespace headcap::core::report
