#include "core/catchwords/comparison.h"

#include <algorithm>
#include <cstdlib>
#include <optional>

#include "core/catchwords/abbreviation_signs.h"
#include "core/catchwords/alignment.h"
#include "core/catchwords/catchword_forms.h"
#include "core/catchwords/letter_forms.h"
#include "core/catchwords/letters.h"

namespace headcap::core {
namespace {

constexpr std::size_t kMostCatchwords = 6;
constexpr std::size_t kMostTextWords = 24;
constexpr std::size_t kLinesOfHeading = 4;

using Verdict = CatchwordVerdict;
using Reason = CatchwordReason;

// How much of a difference a word of so many letters bears and is still the same word.
int slipsBorne(std::size_t letters) {
    if (letters >= 9)
        return kOneLetter + 50;
    if (letters >= 5)
        return kOneLetter;
    return letters == 4 ? 40 : letters == 3 ? 25 : 0;
}

bool hasFigure(std::u32string_view text) {
    return std::ranges::any_of(text, isFigure);
}

std::u32string_view plainFrom(const LetterText& text, std::size_t word) {
    return std::u32string_view(text.plain).substr(text.words[word].begin);
}

bool hasSign(std::u32string_view text) {
    return std::ranges::any_of(text, isAbbreviationSign);
}

class Comparer {
public:
    explicit Comparer(const CatchwordReading& reading)
        : m_reading(reading), m_word(readLetters(reading.catchword, kMostCatchwords)),
          m_text(readLetters(reading.nextFirstWords, kMostTextWords)) {}

    CatchwordComparison compare() {
        if (m_word.words.empty())
            return compareSigns();
        if (m_text.words.empty())
            return {Verdict::doubtful, Reason::noText};
        if (beginsUnspelt(m_reading.nextFirstWords) && looksLikeFormula(m_reading.catchword))
            return {Verdict::variant, Reason::formulaNotSpelt};
        m_best = {Verdict::different, Reason::otherWord};
        offer(compareFrom(0, 0));
        if (m_best.verdict == Verdict::same)
            return m_best;
        passOverNumbers();
        passOverRunningHead();
        passOverHeading();
        completeDividedWord();
        dropFirstSyllable();
        supplyInitial();
        compareFirstWordOnly();
        if (m_best.verdict == Verdict::different && isNoteMark(m_reading.catchword))
            return {Verdict::doubtful, Reason::wordOfNote};
        return m_best;
    }

private:
    void offer(std::optional<CatchwordComparison> found) {
        if (found && found->verdict < m_best.verdict)
            m_best = *found;
    }

    void offerAs(std::optional<CatchwordComparison> found, Reason reason) {
        if (found && found->verdict <= Verdict::variant)
            offer(CatchwordComparison{Verdict::variant, reason});
    }

    // Ornaments and paragraph signs alone: equal if the same signs begin the page.
    [[nodiscard]] CatchwordComparison compareSigns() const {
        if (!m_word.signsOnly)
            return {Verdict::doubtful, Reason::noCatchword};
        if (m_reading.nextFirstWords.starts_with(m_reading.catchword))
            return {Verdict::same, Reason::equal};
        if (beginsUnspelt(m_reading.nextFirstWords))
            return {Verdict::variant, Reason::formulaNotSpelt};
        return {Verdict::doubtful, Reason::tooShort};
    }

    // The catchword from its word `first` on against the page from its word `at` on.
    [[nodiscard]] std::optional<CatchwordComparison> compareFrom(std::size_t first,
                                                                 std::size_t at) const {
        if (first >= m_word.words.size() || at >= m_text.words.size())
            return std::nullopt;
        const auto word = plainFrom(m_word, first);
        const auto text = plainFrom(m_text, at);
        if (text.starts_with(word) && !hasSign(word)) {
            if (const auto found = comparePart(word, m_text.words[at].begin + word.size()))
                return found;
        }
        return hasFigure(word) ? std::nullopt : compareLoosely(first, at);
    }

    [[nodiscard]] std::optional<CatchwordComparison> comparePart(std::u32string_view word,
                                                                 std::size_t end) const {
        const bool whole = std::ranges::any_of(
            m_text.words, [&](const LetterWord& other) { return other.end == end; });
        if (whole)
            return CatchwordComparison{Verdict::same, Reason::equal};
        const bool splitsFigure = end < m_text.plain.size() && isFigure(m_text.plain[end]);
        if (isFigure(word.back()) && (splitsFigure || word.size() < 3))
            return std::nullopt;
        if (m_word.words.back().dividedAtEnd || word.size() >= 3)
            return CatchwordComparison{Verdict::same, Reason::partOfWord};
        return CatchwordComparison{Verdict::doubtful, Reason::tooShort};
    }

    [[nodiscard]] std::optional<CatchwordComparison> compareLoosely(std::size_t first,
                                                                    std::size_t at) const {
        const auto word = std::u32string_view(m_word.loose).substr(m_word.looseBegin[first]);
        const std::size_t begin = m_text.looseBegin[at];
        const PrefixAlignment alignment(word, std::u32string_view(m_text.loose).substr(begin));
        int whole = 2 * kOneLetter + 1;
        for (const std::size_t end : m_text.looseEnd) {
            if (end > begin)
                whole = std::min(whole, alignment.costAt(end - begin));
        }
        const std::size_t letters = plainFrom(m_word, first).size();
        const bool divided = m_word.words.back().dividedAtEnd;
        // Part of a word tells less than a whole one: it bears a slip only where it is long.
        const int part = alignment.leastCost();
        const bool partWillDo = part < kOneLetter ? divided || letters >= 5 : letters >= 6;
        const int cost = partWillDo ? std::min(whole, part) : whole;
        const int borne = slipsBorne(letters);
        if (cost <= borne) {
            const Reason reason = alignment.usedAbbreviation() ? Reason::abbreviation
                                  : cost >= kOneLetter         ? Reason::letterSlip
                                                               : Reason::spelling;
            return CatchwordComparison{Verdict::variant, reason};
        }
        if (letters >= 4 && cost <= borne + kOneLetter / 2)
            return CatchwordComparison{Verdict::doubtful, Reason::moreThanOneSlip};
        return std::nullopt;
    }

    void passOverNumbers() {
        const std::size_t inWord = leadingNumerals(m_word);
        const std::size_t inText = leadingNumerals(m_text);
        if (inWord > 0)
            offerAs(compareFrom(inWord, 0), Reason::numberPassedOver);
        if (inWord > 0 && inText > 0 && isNextFigure())
            offerAs(compareFrom(inWord, inText), Reason::numberPassedOver);
        if (inText > 0 && m_word.plain.size() >= 4)
            offerAs(compareFrom(0, inText), Reason::numberPassedOver);
    }

    // 121. Der, 120. Der: the compositor was one out.
    [[nodiscard]] bool isNextFigure() const {
        const auto word = figureOf(m_word);
        const auto text = figureOf(m_text);
        return word && text && std::abs(*word - *text) == 1;
    }

    static std::optional<int> figureOf(const LetterText& text) {
        int value = 0;
        for (std::size_t at = text.words[0].begin; at < text.words[0].end; ++at) {
            if (!isFigure(text.plain[at]) || value > 100'000)
                return std::nullopt;
            value = value * 10 + static_cast<int>(text.plain[at] - '0');
        }
        return value;
    }

    static std::size_t leadingNumerals(const LetterText& text) {
        const auto first =
            std::ranges::find_if(text.words, [](const LetterWord& word) { return !word.numeral; });
        return static_cast<std::size_t>(first - text.words.begin());
    }

    void passOverRunningHead() {
        const LetterText head = readLetters(m_reading.nextRunningHead, kMostTextWords);
        if (head.plain.size() < 4 || !std::u32string_view(m_text.plain).starts_with(head.plain))
            return;
        for (std::size_t at = 1; at < m_text.words.size(); ++at) {
            if (m_text.words[at].begin == head.plain.size())
                offerAs(compareFrom(0, at), Reason::afterHeading);
        }
    }

    // Behind a heading or note only a word long enough to tell counts.
    void passOverHeading() {
        const std::size_t letters = m_word.plain.size();
        std::size_t line = 0;
        for (std::size_t at = 1; at < m_text.words.size() && line < kLinesOfHeading; ++at) {
            const bool startsLine = m_text.words[at].startsLine;
            line += startsLine ? 1 : 0;
            const bool enough = startsLine ? letters >= 5 : letters >= 7 && at < 8;
            if (!enough)
                continue;
            const auto found = compareFrom(0, at);
            if (found && found->verdict == Verdict::same &&
                (found->reason == Reason::equal || letters >= 7))
                offerAs(found, Reason::afterHeading);
        }
    }

    // The page ends "ma-" and its catchword gives the whole word, the next page only the rest;
    // or the other way round.
    void completeDividedWord() {
        const LetterText before = readLetters(m_reading.wordsBefore, kMostTextWords);
        if (before.words.empty() || !before.words.back().dividedAtEnd)
            return;
        const LetterWord& last = before.words.back();
        const auto begun =
            std::u32string_view(before.plain).substr(last.begin, last.end - last.begin);
        const std::u32string_view text = m_text.plain;
        const std::u32string_view word = m_word.plain;
        const bool wordIsWhole = word.starts_with(begun) && word.size() >= begun.size() + 2 &&
                                 text.starts_with(word.substr(begun.size()));
        const bool textIsWhole = text.starts_with(begun) && word.size() >= 2 &&
                                 text.substr(begun.size()).starts_with(word);
        if (wordIsWhole || textIsWhole)
            offer(CatchwordComparison{Verdict::variant, Reason::partOfWord});
    }

    // The catchword repeats a syllable that the line before has already: ge-/geſtimmte/ſtimmte.
    void dropFirstSyllable() {
        const std::u32string_view word = m_word.plain;
        for (std::size_t dropped = 1; dropped <= 3 && word.size() >= dropped + 4; ++dropped) {
            const auto rest = word.substr(dropped);
            const bool divided = m_word.words.back().dividedAtEnd;
            const bool whole = std::ranges::any_of(
                m_text.words, [&](const LetterWord& other) { return other.end == rest.size(); });
            if ((whole || divided) && rest.size() >= 4 + (dropped == 1 ? 2U : 0U) &&
                std::u32string_view(m_text.plain).starts_with(rest))
                offer(CatchwordComparison{Verdict::variant, Reason::partOfWord});
        }
    }

    void supplyInitial() {
        const std::u32string_view word = m_word.plain;
        if (word.size() < 4 || hasFigure(word))
            return;
        const std::u32string_view text = m_text.plain;
        const std::size_t end = word.size() - 1;
        const bool whole = std::ranges::any_of(
            m_text.words, [&](const LetterWord& other) { return other.end == end; });
        if (whole && text.starts_with(word.substr(1)))
            offer(CatchwordComparison{Verdict::variant, Reason::initialApart});
    }

    void compareFirstWordOnly() {
        if (m_word.words.size() < 2)
            return;
        const auto first = plainFrom(m_word, 0).substr(0, m_word.words[0].end);
        if (first.size() >= 3 && std::u32string_view(m_text.plain).starts_with(first) &&
            m_text.words[0].end == first.size())
            offer(CatchwordComparison{Verdict::doubtful, Reason::laterWordsDiffer});
    }

    const CatchwordReading& m_reading;
    LetterText m_word;
    LetterText m_text;
    CatchwordComparison m_best;
};

} // namespace

CatchwordComparison compareCatchword(const CatchwordReading& reading) {
    return Comparer(reading).compare();
}

} // namespace headcap::core
