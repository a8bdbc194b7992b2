// A job with a chance record: every kind of thing that a report discloses, some of it incomplete.
#pragma once

#include <cstdint>

#include "tests/support/job_builder.h"

namespace headcap::core::tests {

// Each text field is empty or a word that stands nowhere else.
class RandomJob : public JobBuilder {
public:
    explicit RandomJob(std::uint64_t seed);

private:
    [[nodiscard]] bool maybe(unsigned oneIn = 2);
    [[nodiscard]] std::string words(std::string_view about);
    [[nodiscard]] std::size_t upTo(std::size_t n);
    template <class Enum>
    Enum any();
    template <class Record>
    std::optional<Id<Record>> oneOf(const std::vector<Record>& records);

    void addLots();
    void addSteps();
    void addLeaves();
    void addCollating();
    void addSurvey();
    void addProposals();
    void addRest();

    std::mt19937_64 m_chance;
    int m_words = 0;
};

} // namespace headcap::core::tests
