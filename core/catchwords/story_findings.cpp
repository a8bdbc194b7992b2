#include "core/catchwords/story_findings.h"

#include <cstdlib>
#include <optional>

#include <fmt/format.h>

#include "core/catchwords/story_evidence.h"
#include "core/catchwords/story_names.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

class FindingReader {
public:
    FindingReader(const BoundBook& book, const LeafOrder& order, const BookHabits& habits,
                  const std::vector<StoryLeaf>& story)
        : m_book(book), m_story(story), m_says(book, order, habits, story), m_names(book, story) {}

    std::vector<LeafFinding> read() {
        for (std::size_t at = 0; at < m_story.size(); ++at) {
            const Arrival& arrival = m_story[at].arrival;
            if (arrival.lacking() > 0)
                lacking(at);
            else
                breaks(at);
            if (arrival.numberJump != 0 && !arrival.numbersRestart && !m_says.isJumpOfBare(at))
                jump(at);
            misprints(at);
            if (arrival.missigned)
                missigned(at);
        }
        return std::move(m_findings);
    }

private:
    void add(LeafFindingKind kind, std::size_t afterRow, std::size_t beforeRow, int leaves,
             bool sure, std::string sentence) {
        m_findings.push_back({kind, static_cast<int>(afterRow), static_cast<int>(beforeRow), leaves,
                              sure, std::move(sentence)});
    }
    // Between the leaf and the one before it.
    void addBefore(std::size_t at, LeafFindingKind kind, int leaves, bool sure,
                   std::string sentence) {
        add(kind, m_names.lastRowBefore(at), m_names.firstRow(at), leaves, sure,
            std::move(sentence));
    }
    [[nodiscard]] std::string rowBefore(std::size_t at) const {
        return m_names.rowName(m_names.lastRowBefore(at));
    }
    [[nodiscard]] const BoundLeaf& bound(std::size_t at) const { return m_names.bound(at); }

    void lacking(std::size_t at) {
        if (m_says.isUnprovenLoss(at)) {
            catchwordAlone(at);
            return;
        }
        const int count = m_story[at].arrival.lacking();
        const Says text = m_says.textBreaks(at);
        const Says numbers = m_says.numbersSkip(at);
        const Says fold = m_says.foldShort(at);
        std::vector<std::string> evidence;
        int against = 0;
        for (const Says says : {text, numbers, fold})
            against += says == Says::no ? 1 : 0;
        if (text == Says::yes)
            evidence.push_back(m_names.catchwordFails(at));
        if (numbers == Says::yes)
            evidence.push_back(
                fmt::format("the numbers pass over {}", m_names.numbersBefore(at, count)));
        if (fold == Says::yes)
            evidence.push_back("the fold is short by as much");
        const bool sure = evidence.size() >= 2 && against == 0;
        std::string sentence = fmt::format(
            "{} {} after {}: {}", count == 1 ? "A leaf is lacking" : "Leaves are lacking",
            m_names.lackingNames(at), rowBefore(at),
            evidence.empty() ? "the order breaks off" : joined(evidence));
        if (text == Says::no)
            sentence += ", though the text seems to run on";
        if (numbers == Says::no)
            sentence += ", though the numbers run on: not numbered, or from another copy";
        if (text == Says::nothing)
            sentence += "; no catchword tells";
        sentence += conjugateSentence(at);
        addBefore(at, LeafFindingKind::leafLacking, count, sure, sentence + ".");
    }

    // When one half of a fold is lost, the other is loose or held by paste alone.
    [[nodiscard]] std::string conjugateSentence(std::size_t at) const {
        const Arrival& arrival = m_story[at].arrival;
        const bool ofFormer = arrival.lackingBefore == 1;
        if (arrival.lacking() != 1 || (ofFormer && at == 0))
            return {};
        const StoryLeaf& neighbour = ofFormer ? m_story[at - 1] : m_story[at];
        const auto length = m_says.closedLength(ofFormer ? at - 1 : at);
        if (!neighbour.gathering || !length || *length % 2 != 0)
            return {};
        const int lost = ofFormer ? *length : neighbour.position - 1;
        return fmt::format("; its conjugate is {}",
                           leafName(neighbour, neighbour.position - (*length + 1 - lost)));
    }

    // A printer's catchword goes wrong now and then: alone it proves no loss.
    void catchwordAlone(std::size_t at) {
        if (m_says.isOdd(at)) {
            addBefore(at, LeafFindingKind::leafLacking, 1, false,
                      fmt::format("A leaf seems to be lacking after {}: {}, and the gathering has "
                                  "{} leaves, an odd number; no numbers tell.",
                                  rowBefore(at), m_names.catchwordFails(at),
                                  m_says.boundLength(at - 1)));
            return;
        }
        addBefore(
            at, LeafFindingKind::unexplained, 0, false,
            fmt::format("After {} {}; neither numbers nor fold tell whether a leaf is lacking.",
                        rowBefore(at), m_names.catchwordFails(at)));
    }

    // Nothing lacks by the account, yet text or marks break.
    void breaks(std::size_t at) {
        if (at == 0)
            return;
        if (const int passed = m_says.passedOverByMarks(at); passed > 0) {
            passedOver(at, passed);
            return;
        }
        if (m_says.textBreaks(at) != Says::yes || m_says.wasMoved(at))
            return;
        const auto& before = m_story[at - 1].gathering;
        const auto& after = m_story[at].gathering;
        const bool outOfOrder = m_story[at].arrival.turn == Turn::newSeries && before && after &&
                                before->series == after->series;
        if (outOfOrder)
            orderBroken(at);
        else if (m_says.isBridgedByBare(at))
            bridgedByBare(at);
        else if (!m_says.isHeldTogether(at))
            catchwordAlone(at);
        else if (m_says.isReadAcross(at))
            brokenAlone(at);
    }

    void orderBroken(std::size_t at) {
        addBefore(at, LeafFindingKind::unexplained, 0, false,
                  fmt::format("After {} the signatures break off ({} is followed by {}) and {}.",
                              rowBefore(at), leafName(m_story[at - 1]), leafName(m_story[at]),
                              m_names.catchwordFails(at)));
    }

    void passedOver(std::size_t at, int leaves) {
        addBefore(at, LeafFindingKind::leafLacking, leaves, false,
                  fmt::format("After {} {} lacking, or a mark is misprinted: “{}” is followed by "
                              "“{}”, and neither catchword nor number tells.",
                              rowBefore(at), leaves == 1 ? "a leaf is" : "two leaves are",
                              m_names.markOf(at - 1), m_names.markOf(at)));
    }

    void bridgedByBare(std::size_t at) {
        addBefore(
            at, LeafFindingKind::leafLacking, 1, false,
            fmt::format("A leaf seems to be lacking after {}: {}, and the numbers run on only "
                        "if an unprinted leaf between is counted, as plates are not.",
                        rowBefore(at), m_names.catchwordFails(at)));
    }

    void brokenAlone(std::size_t at) {
        addBefore(
            at, LeafFindingKind::unexplained, 0, false,
            fmt::format("After {} the text does not run on, though numbers or fold are whole: "
                        "a leaf never numbered or signed is lacking, or one is from another "
                        "copy.",
                        rowBefore(at)));
    }

    void jump(std::size_t at) {
        const Arrival& arrival = m_story[at].arrival;
        const auto& numbers = bound(at).numbers;
        std::size_t row = m_names.firstRow(at);
        if ((arrival.jumpWithinLeaf || !numbers[0]) && bound(at).verso)
            row = *bound(at).verso + 1;
        const bool runsOn = arrival.jumpWithinLeaf || m_says.textBreaks(at) == Says::no;
        std::vector<std::string> evidence;
        if (runsOn)
            evidence.push_back("the text runs on");
        if (m_story[at].gathering && !arrival.missigned && arrival.turn != Turn::newSeries)
            evidence.push_back("the signatures are in order");
        const int size = std::abs(arrival.numberJump);
        const int unit = m_names.unit();
        add(LeafFindingKind::misnumbered, row - 1, row, (size + unit - 1) / unit, runsOn,
            fmt::format("From {} on the numbers are {} by {}{}: the printer's misnumbering, "
                        "nothing is lost.",
                        m_names.rowName(row), arrival.numberJump > 0 ? "too high" : "too low", size,
                        evidence.empty() ? std::string()
                                         : fmt::format(", but {}", joined(evidence))));
    }

    void misprints(std::size_t at) {
        const StoryLeaf& leaf = m_story[at];
        for (std::size_t page = 0; page < 2; ++page) {
            const auto& row = page == 0 ? bound(at).recto : bound(at).verso;
            if (!leaf.arrival.misprinted[page] || !row || bound(at).numbers[page]->supplied)
                continue;
            const int right =
                *leaf.expectedNumber + (m_names.unit() == 2 ? static_cast<int>(page) : 0);
            add(LeafFindingKind::misnumbered, *row, *row + 1, 0, true,
                fmt::format("{} is misnumbered {} for {}: the numbers before and after it are "
                            "in order.",
                            capitalised(m_names.rowName(*row + 1)), m_book.pages[*row].number,
                            right));
        }
    }

    void missigned(std::size_t at) {
        const std::size_t row = m_names.firstRow(at);
        add(LeafFindingKind::missigned, row - 1, row, 0, m_says.isVouchedFor(at),
            fmt::format("{} is signed “{}”; by its place it is {}.",
                        capitalised(m_names.rowName(row)), m_names.markOf(at),
                        leafName(m_story[at])));
    }

    const BoundBook& m_book;
    const std::vector<StoryLeaf>& m_story;
    StoryEvidence m_says;
    StoryNames m_names;
    std::vector<LeafFinding> m_findings;
};

} // namespace

std::vector<LeafFinding> findingsOf(const BoundBook& book, const LeafOrder& order,
                                    const BookHabits& habits, const std::vector<StoryLeaf>& story) {
    return FindingReader(book, order, habits, story).read();
}

} // namespace headcap::core
