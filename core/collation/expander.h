// Works the terms of a formula out, one after the other. Internal to the expansion: expansion.h is
// what others use.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/collation/expansion.h"

namespace headcap::core {

inline constexpr int kMostGatherings = 5'000;

class Expander {
public:
    Expander(const Terms& terms, const TermReading& reading) : m_terms(terms), m_reading(reading) {}

    Expansion run();

private:
    // Gatherings and their order: expansion.cpp.
    std::vector<int> countsOf(std::size_t index) const;
    void lay(const Term& term, std::vector<int> counts, std::optional<Inside> inside);
    void single(const Term& term, std::vector<int> leaves, bool singletons, Gathering model);
    void series(const Term& term, std::vector<int> counts, const Gathering& model);
    bool add(Gathering gathering, std::size_t at);
    void order();
    void renumberParts();
    void report(std::size_t at, std::string message);

    // The marks of a term's gatherings: expansion_marks.cpp.
    Signature marked(Signature mark, bool inferred) const;
    std::vector<Signature> marksOf(const Term& term);
    std::vector<Signature> single(const Term& term);
    struct Places {
        int from = 0;
        int to = 0;
    };
    std::optional<Places> placesOf(const Term& term, Signature& last, const std::string& range);
    Alphabet alphabetFor(const Term& term) const;
    static std::string trailingJunk(const Signature& last);
    std::vector<Signature> stated(const Term& term);
    void caseNote(const Term& term, const Signature& last, const std::string& range);

    // What is taken out, put in, lacking or blank: expansion_changes.cpp.
    std::optional<std::size_t> find(const LeafTarget& target) const;
    void apply(const LeafChange& change, std::size_t from);
    void mark(const LeafChange& change, Gathering& gathering, int leaf);
    void absent(const LeafChange& change, const LeafTarget& target);
    static std::string name(const LeafTarget& target);
    void insert(const LeafChange& change, std::size_t from);
    void prose();
    void blankFrom(Gathering& gathering, int leaf, int step, int count);

    const Terms& m_terms;
    const TermReading& m_reading;
    Expansion m_out;
    int m_leaves = 0;
};

} // namespace headcap::core
