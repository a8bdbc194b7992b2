// Reads a formula into its terms. Internal to the formula reader: formula.h is what others use.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/collation/glyphs.h"
#include "core/collation/terms.h"

namespace headcap::core {

[[nodiscard]] inline bool says(std::string_view text, std::string_view words) {
    return text.find(words) != std::string_view::npos;
}

class TermReader {
public:
    explicit TermReader(std::string_view formula);
    Terms read();

private:
    enum class Sign : unsigned char { none, cancelled, replaced, added, identical };

    // Items: term_reader.cpp.
    void label();
    void items();
    void item();
    void plus();
    bool looseCount();
    void part();
    void push(Term term);
    void repeatPart();
    bool partLabel();
    bool bookLabel();
    std::optional<Term> run();
    std::optional<Term> quoted();
    void romanLeaf(Term& term);
    [[nodiscard]] bool numberIsSignature() const;
    std::optional<Signature> signatureHere();
    void rangeEnd(Term& term);
    void unreadable();

    // Square brackets, and which bracket closes which: bracket_reader.cpp.
    void pairBrackets();
    [[nodiscard]] std::size_t closing(std::size_t from) const;
    bool bracketItem();
    void group(std::size_t length);

    // Leaf counts: count_reader.cpp.
    bool count(Term& term);
    bool raisedCount(Term& term);
    bool bracedCount(Term& term);
    bool leafNumbers(Term& term, GlyphLevel level);
    [[nodiscard]] bool opensSeries() const;
    void checkCounts(Term& term);
    bool dottedNumerals(Term& term);

    // Changes in parentheses: change_reader.cpp; what is added: added_reader.cpp.
    void parenthesis(Term& host);
    void changes(Term& host);
    void clause(Term& host, std::optional<LeafTarget>& removed);
    LeafChange takenOut(Sign sign, std::vector<LeafTarget> targets, std::size_t at);
    void wordsAlone(std::size_t at);
    void added(Term& host, std::optional<LeafTarget> after);
    void addedByNumber(LeafChange& change, int number);
    std::vector<Term> addedTerms();
    Sign takeSign();
    void skipLeafCount();
    std::vector<LeafTarget> leafList(bool raisedIsLeaf);
    bool leafTargets(std::vector<LeafTarget>& out, bool raisedIsLeaf);
    bool statedOfLeaves(Term& host, std::vector<LeafTarget> targets, std::size_t at);
    [[nodiscard]] std::size_t clauseEnd() const;
    std::string clauseText();

    // Prose around the formula: prose_reader.cpp.
    bool prose(bool afterPoint);
    bool statement();
    bool preliminaries();
    bool pagesStated();
    bool blanksStated();
    bool multiplication();
    [[nodiscard]] bool wordsAhead() const;
    [[nodiscard]] std::size_t proseEnd() const;
    void noteBlanks(std::string_view text);
    void insertionPlace(std::string_view text);
    void setAside(std::string text);
    bool scriptNote(std::string_view text);

    [[nodiscard]] std::string textOf(std::size_t from, std::size_t to) const;
    void problem(std::size_t at, std::string message);

    std::string_view m_text;
    std::vector<Glyph> m_glyphs;
    std::vector<std::size_t> m_partners; // of brackets
    GlyphCursor m_cursor;
    std::size_t m_lastBlankWord = 0; // where "blank" stands last
    std::size_t m_noWordsUntil = 0;  // up to here no word of ordinary language stands
    Terms m_out;
    int m_part = 0;
    std::size_t m_partStart = 0;
    int m_alike = 1;                   // volumes the part being read describes
    std::optional<LeafTarget> m_after; // where what follows in prose is inserted
    int m_depth = 0;
    bool m_loweredCounts = false; // A-Z₈: counts stand below the line in this record
    bool m_inferred = false;      // inside a bracketed group
    Alphabet m_alphabet = Alphabet::latin;
};

} // namespace headcap::core
