#include "core/collation/break_explanations.h"

#include <algorithm>
#include <cstdlib>

#include <fmt/format.h>

#include "core/values/english.h"

namespace headcap::core {
namespace {

// A number is a printer's word alone; text, mark and fold are the book's own.
constexpr int kNumbers = 1;
constexpr int kBook = 2;

class Weighing {
public:
    Weighing(BreakCause cause, std::string what) : m_what(std::move(what)) { m_out.cause = cause; }

    Weighing& yes(int weight, std::string clause) {
        m_out.weight += weight;
        m_out.supporting.push_back(std::move(clause));
        return *this;
    }
    Weighing& no(int weight, std::string clause) {
        m_out.weight -= weight;
        m_out.opposing.push_back(std::move(clause));
        return *this;
    }
    // For, where it is so; against, where it is known not to be so.
    Weighing& when(std::optional<bool> known, int weight, const std::string& so,
                   const std::string& notSo) {
        return !known ? *this : *known ? yes(weight, so) : no(weight, notSo);
    }
    BreakExplanation done() {
        m_out.sentence = m_what + ": " + listed(m_out.supporting);
        if (!m_out.opposing.empty()) {
            m_out.sentence += "; against it, " + listed(m_out.opposing);
        }
        m_out.sentence += ".";
        return std::move(m_out);
    }

private:
    std::string m_what;
    BreakExplanation m_out;
};

class Explainer {
public:
    explicit Explainer(const BreakEvidence& at) : m_at(at) {}

    std::vector<BreakExplanation> explain() {
        if (isInOrder()) {
            return {};
        }
        misnumbering();
        lacking();
        lackingNotNumbered();
        fromAnotherCopy();
        misbound();
        duplicate();
        missigned();
        wrongCatchword();
        cancel();
        std::erase_if(m_found, [](const BreakExplanation& one) { return one.weight <= 0; });
        std::ranges::stable_sort(m_found, std::ranges::greater{}, &BreakExplanation::weight);
        return std::move(m_found);
    }

private:
    [[nodiscard]] bool isInOrder() const {
        return m_at.numbersAhead.value_or(0) == 0 && m_at.textRunsOn.value_or(true) &&
               m_at.signaturesAhead.value_or(0) == 0 && m_at.foldShort.value_or(0) == 0 &&
               !m_at.isRepeated && m_at.belongsAfter.empty();
    }
    [[nodiscard]] bool numbersJump() const { return m_at.numbersAhead.value_or(0) != 0; }
    [[nodiscard]] std::optional<bool> numbersRunOn() const {
        return m_at.numbersAhead ? std::optional{*m_at.numbersAhead == 0} : std::nullopt;
    }
    [[nodiscard]] std::optional<bool> textBreaks() const {
        return m_at.textRunsOn ? std::optional{!*m_at.textRunsOn} : std::nullopt;
    }
    [[nodiscard]] std::optional<bool> inOrder() const {
        return m_at.signaturesAhead ? std::optional{*m_at.signaturesAhead == 0} : std::nullopt;
    }
    [[nodiscard]] std::optional<bool> isShort() const {
        return m_at.foldShort ? std::optional{*m_at.foldShort > 0} : std::nullopt;
    }
    [[nodiscard]] std::optional<bool> isWhole() const {
        return m_at.foldShort ? std::optional{*m_at.foldShort == 0} : std::nullopt;
    }
    [[nodiscard]] std::string place() const {
        return m_at.before.empty() ? "before " + m_at.after
                                   : fmt::format("between {} and {}", m_at.before, m_at.after);
    }
    [[nodiscard]] static std::string leaves(int count) {
        return count == 1 ? std::string("a leaf") : fmt::format("{} leaves", count);
    }
    [[nodiscard]] std::string jumpClause() const {
        const int jump = *m_at.numbersAhead;
        return fmt::format("the numbers {} by {}", jump > 0 ? "jump" : "go back",
                           leaves(std::abs(jump)));
    }
    void keep(Weighing& weighing) { m_found.push_back(weighing.done()); }

    void misnumbering() {
        if (!numbersJump()) {
            return;
        }
        Weighing w(
            BreakCause::misnumbering,
            fmt::format("The printer misnumbered from {} on, and nothing is lost", m_at.after));
        w.yes(kNumbers, jumpClause())
            .when(m_at.textRunsOn, kBook, "the text runs on", "the text breaks")
            .when(inOrder(), kBook, "the signatures are in order", "the signatures break")
            .when(isWhole(), kBook, "the fold is whole", "the fold is short");
        keep(w);
    }

    void lacking() {
        const int ahead = m_at.numbersAhead.value_or(0);
        const int count =
            std::max({ahead, m_at.signaturesAhead.value_or(0), m_at.foldShort.value_or(0), 1});
        const bool isTold =
            ahead > 0 || m_at.foldShort.value_or(0) > 0 || m_at.signaturesAhead.value_or(0) > 0;
        if (!isTold || (m_at.numbersAhead && ahead <= 0)) {
            return;
        }
        std::string what = fmt::format("{} {} lacking {}", capitalised(leaves(count)),
                                       count == 1 ? "is" : "are", place());
        if (!m_at.carries.empty()) {
            what += ", namely " + m_at.carries;
        }
        Weighing w(BreakCause::leafLacking, what);
        if (m_at.numbersAhead) {
            w.yes(kNumbers, jumpClause());
        }
        w.when(textBreaks(), kBook, "the text breaks", "the text runs on")
            .when(isShort(), kBook, "the fold is short", "the fold is whole");
        if (m_at.signaturesAhead && *m_at.signaturesAhead > 0) {
            w.yes(kBook, "the signatures pass over as much");
        }
        keep(w);
    }

    void lackingNotNumbered() {
        if (numbersRunOn() != true || (textBreaks() != true && inOrder() != false)) {
            return;
        }
        Weighing w(BreakCause::lackingNotNumbered,
                   fmt::format("A leaf that was never numbered is lacking {}", place()));
        w.yes(kNumbers, "the numbers run on")
            .when(textBreaks(), kBook, "the text breaks", "the text runs on")
            .when(isShort(), kBook, "the fold is short", "the fold is whole");
        if (inOrder() == false) {
            w.yes(kBook, "the signatures break");
        }
        keep(w);
    }

    void fromAnotherCopy() {
        if (numbersRunOn() != true || textBreaks() != true) {
            return;
        }
        Weighing w(BreakCause::fromAnotherCopy,
                   fmt::format("Leaf {} comes from another copy or edition", m_at.after));
        w.yes(kBook, "the text breaks").yes(kNumbers, "the numbers run on");
        w.when(isWhole(), kNumbers, "the fold is whole", "the fold is short");
        if (inOrder() == false) {
            w.yes(kBook, "the signatures break");
        }
        keep(w);
    }

    void misbound() {
        if (m_at.belongsAfter.empty()) {
            return;
        }
        Weighing w(BreakCause::misbound, fmt::format("Leaf {} is misbound and belongs after {}",
                                                     m_at.after, m_at.belongsAfter));
        w.yes(kBook, "its own number and mark say so")
            .when(textBreaks(), kBook, "the text breaks here", "the text runs on here");
        keep(w);
    }

    void duplicate() {
        if (!m_at.isRepeated) {
            return;
        }
        Weighing w(BreakCause::duplicate, fmt::format("Leaf {} is bound in twice", m_at.after));
        w.yes(kBook, "its number and mark were met before")
            .when(textBreaks(), kBook, "the text breaks", "the text runs on");
        keep(w);
    }

    void missigned() {
        if (inOrder() != false) {
            return;
        }
        Weighing w(BreakCause::missigned, fmt::format("The printer missigned leaf {}", m_at.after));
        w.yes(kNumbers, "the signatures break")
            .when(m_at.textRunsOn, kBook, "the text runs on", "the text breaks")
            .when(numbersRunOn(), kNumbers, "the numbers run on", "the numbers jump")
            .when(isWhole(), kBook, "the fold is whole", "the fold is short");
        keep(w);
    }

    void wrongCatchword() {
        if (textBreaks() != true || numbersRunOn() == false || inOrder() == false) {
            return;
        }
        Weighing w(BreakCause::wrongCatchword,
                   fmt::format("The catchword {} is the printer's slip", place()));
        w.when(numbersRunOn(), kNumbers, "the numbers run on", "the numbers jump")
            .when(inOrder(), kBook, "the signatures are in order", "the signatures break")
            .when(isWhole(), kBook, "the fold is whole", "the fold is short");
        keep(w);
    }

    void cancel() {
        if (isShort() != true) {
            return;
        }
        Weighing w(BreakCause::cancel, fmt::format("The printer took a leaf out {}", place()));
        w.yes(kNumbers, "the fold is short")
            .when(m_at.textRunsOn, kBook, "the text runs on", "the text breaks")
            .when(numbersRunOn(), kNumbers, "the numbers run on", "the numbers jump");
        keep(w);
    }

    const BreakEvidence& m_at;
    std::vector<BreakExplanation> m_found;
};

} // namespace

std::vector<BreakExplanation> explainBreak(const BreakEvidence& at) {
    return Explainer(at).explain();
}

} // namespace headcap::core
