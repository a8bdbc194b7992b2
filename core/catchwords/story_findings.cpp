#include "core/catchwords/story_findings.h"

#include <algorithm>
#include <cstdlib>
#include <optional>

#include <fmt/format.h>

#include "core/values/english.h"

namespace headcap::core {
namespace {

using Verdict = CatchwordVerdict;

constexpr double kAgainstHabit = 2.5;

enum class Says { nothing, yes, no };

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (std::size_t at = 0; at < parts.size(); ++at) {
        text += at == 0 ? "" : at + 1 == parts.size() ? " and " : ", ";
        text += parts[at];
    }
    return text;
}

class FindingReader {
public:
    FindingReader(const BoundBook& book, const LeafOrder& order, const BookHabits& habits,
                  const std::vector<StoryLeaf>& story)
        : m_book(book), m_order(order), m_habits(habits), m_story(story),
          m_unit(book.numbering == Numbering::leaves ? 1 : 2) {}

    std::vector<LeafFinding> read() {
        for (std::size_t at = 0; at < m_story.size(); ++at) {
            const Arrival& arrival = m_story[at].arrival;
            if (arrival.lacking() > 0)
                lacking(at);
            else
                breaks(at);
            if (arrival.numberJump != 0 && !arrival.numbersRestart)
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

    [[nodiscard]] const BoundLeaf& bound(std::size_t at) const {
        return m_book.leaves[m_story[at].leaf];
    }
    // Rows from 1.
    [[nodiscard]] std::size_t firstRow(std::size_t at) const { return bound(at).firstRow() + 1; }
    [[nodiscard]] std::size_t lastRowBefore(std::size_t at) const {
        if (at == 0)
            return 0;
        const std::size_t last = bound(at - 1).lastRow() + 1;
        return last < firstRow(at) ? last : firstRow(at) - 1;
    }

    [[nodiscard]] std::string rowName(std::size_t row) const {
        return nameOfRow(m_book.pages, row);
    }

    [[nodiscard]] Says catchwordBroken(std::size_t at) const {
        const auto& turn = m_story[at].turn;
        if (!turn || turn->verdict == Verdict::doubtful)
            return Says::nothing;
        return turn->verdict == Verdict::different ? Says::yes : Says::no;
    }

    // A number read on one of the leaves near `at`, as expected there.
    [[nodiscard]] bool numberHolds(std::size_t at) const {
        const auto& numbers = bound(at).numbers;
        const auto& arrival = m_story[at].arrival;
        return (numbers[0] && !arrival.misprinted[0]) || (numbers[1] && !arrival.misprinted[1]);
    }

    [[nodiscard]] Says numbersSkip(std::size_t at) const {
        const Arrival& arrival = m_story[at].arrival;
        if (arrival.numberJump != 0)
            return Says::no;
        constexpr std::size_t kNear = 4;
        bool before = false;
        bool after = false;
        for (std::size_t near = 1; near <= kNear && near <= at; ++near)
            before = before || numberHolds(at - near);
        for (std::size_t near = at; near < m_story.size() && near < at + kNear; ++near) {
            if (near > at && m_story[near].arrival.numberJump != 0)
                break;
            after = after || numberHolds(near);
        }
        return before && after ? Says::yes : Says::nothing;
    }

    // How many leaves the gathering of `at` holds, lacking ones counted, and whether it is closed
    // on both sides by gatherings that follow in order.
    [[nodiscard]] Says foldShort(std::size_t at) const {
        const StoryLeaf& leaf = m_story[at];
        if (!leaf.gathering)
            return Says::nothing;
        if (leaf.arrival.gatheringsLacking > 0)
            return Says::yes;
        if (leaf.arrival.turn == Turn::newSeries)
            return Says::nothing;
        if (leaf.arrival.lackingBefore > 0 && leaf.arrival.lackingAfter == 0)
            return Says::yes; // the fold before was completed to its usual length
        const auto length = closedLength(at);
        if (!length)
            return markSkips(at) ? Says::yes : Says::nothing;
        return m_habits.isUsualFold(*length) ? Says::yes : Says::no;
    }

    // Of the gathering that holds `at`, lacking leaves counted, where the next follows in order.
    [[nodiscard]] std::optional<int> closedLength(std::size_t at) const {
        std::size_t last = at;
        while (last + 1 < m_story.size() && m_story[last + 1].arrival.turn == Turn::sameGathering)
            ++last;
        if (last + 1 >= m_story.size() || m_story[last + 1].arrival.turn != Turn::nextGathering)
            return std::nullopt;
        const Arrival& next = m_story[last + 1].arrival;
        return m_story[last].position + next.countedBefore + next.lackingBefore;
    }

    // When one half of a fold is lost, the other is loose or held by paste alone.
    [[nodiscard]] std::string conjugateSentence(std::size_t at) const {
        const Arrival& arrival = m_story[at].arrival;
        const bool ofFormer = arrival.lackingBefore == 1;
        if (arrival.lacking() != 1 || (ofFormer && at == 0))
            return {};
        const StoryLeaf& neighbour = ofFormer ? m_story[at - 1] : m_story[at];
        const auto length = closedLength(ofFormer ? at - 1 : at);
        if (!neighbour.gathering || !length || *length % 2 != 0)
            return {};
        const int lost = ofFormer ? *length : neighbour.position - 1;
        return fmt::format("; its conjugate is {}",
                           leafName(neighbour, neighbour.position - (*length + 1 - lost)));
    }

    // Marks on both sides in one gathering count on over the place.
    [[nodiscard]] bool markSkips(std::size_t at) const {
        const auto& mark = bound(at).mark;
        return mark && mark->leaf > 1 && mark->leaf == m_story[at].position;
    }

    void lacking(std::size_t at) {
        const StoryLeaf& leaf = m_story[at];
        const int count = leaf.arrival.lacking();
        const Says text = catchwordBroken(at);
        const Says numbers = numbersSkip(at);
        const Says fold = foldShort(at);
        int support = 0;
        int against = 0;
        for (const Says says : {text, numbers, fold}) {
            support += says == Says::yes ? 1 : 0;
            against += says == Says::no ? 1 : 0;
        }
        // Several leaves are not lost on the word of one catchword.
        if (support == 1 && text == Says::yes && (count > 1 || against > 0)) {
            catchwordAlone(at);
            return;
        }
        std::vector<std::string> evidence;
        if (text == Says::yes)
            evidence.push_back(catchwordSentence(at, "does not meet the next page"));
        if (numbers == Says::yes)
            evidence.push_back(fmt::format("the numbers pass over {}", numbersOf(at, count)));
        if (fold == Says::yes)
            evidence.push_back("the fold is short by as much");
        std::string sentence = fmt::format(
            "{} {} after {}: {}", count == 1 ? "A leaf is lacking" : "Leaves are lacking",
            lackingNames(at), rowName(lastRowBefore(at)),
            evidence.empty() ? "the order breaks off" : joined(evidence));
        if (text == Says::no)
            sentence += ", though the text seems to run on";
        if (numbers == Says::no)
            sentence += ", though the numbers run on: not numbered, or from another copy";
        if (text == Says::nothing)
            sentence += "; no catchword tells";
        sentence += conjugateSentence(at);
        add(LeafFindingKind::leafLacking, lastRowBefore(at), firstRow(at), count,
            support >= 2 && against == 0, sentence + ".");
    }

    // The leaf does not follow the one before it as bound: it has a finding of its own already.
    [[nodiscard]] bool wasMoved(std::size_t at) const {
        const auto bare = static_cast<std::size_t>(m_order.unprintedBefore[at]);
        return m_story[at].leaf != m_story[at - 1].leaf + 1 + bare;
    }

    // Numbers or a complete fold vouch for the turn, whatever the catchword says.
    [[nodiscard]] bool isHeldTogether(std::size_t at) const {
        const BoundLeaf& before = bound(at - 1);
        const BoundLeaf& after = bound(at);
        if (before.printsNumber() && after.printsNumber())
            return true;
        const auto length = closedLength(at - 1);
        return length && m_habits.isUsualFold(*length);
    }

    // How many leaves the gathering of `at` has as it is bound, blanks among them; none where it is
    // cut short on the way.
    [[nodiscard]] int boundLength(std::size_t at) const {
        std::size_t last = at;
        while (last + 1 < m_story.size() && m_story[last + 1].arrival.turn == Turn::sameGathering &&
               m_story[last + 1].arrival.lacking() == 0)
            ++last;
        const int counted = last + 1 < m_story.size() ? m_story[last + 1].arrival.countedBefore : 0;
        return m_story[last].position + counted;
    }

    // Folds give leaves two by two: where a turn breaks, an odd number says that one is short.
    [[nodiscard]] bool isOdd(std::size_t at) const {
        return m_habits.hasMarks() && boundLength(at - 1) % 2 != 0 &&
               !m_habits.isUsualFold(boundLength(at - 1));
    }

    // A printer's catchword goes wrong now and then: alone it proves no loss.
    void catchwordAlone(std::size_t at) {
        if (isOdd(at)) {
            add(LeafFindingKind::leafLacking, lastRowBefore(at), firstRow(at), 1, false,
                fmt::format("A leaf seems to be lacking after {}: {}, and the gathering has {} "
                            "leaves, an odd number; no numbers tell.",
                            rowName(lastRowBefore(at)),
                            catchwordSentence(at, "does not meet the next page"),
                            boundLength(at - 1)));
            return;
        }
        add(LeafFindingKind::unexplained, lastRowBefore(at), firstRow(at), 0, false,
            fmt::format("After {} {}; neither numbers nor fold tell whether a leaf is lacking.",
                        rowName(lastRowBefore(at)),
                        catchwordSentence(at, "does not meet the next page")));
    }

    // Somebody read on over the turn, and says that the text breaks: that is no printer's slip.
    [[nodiscard]] bool isReadAcross(std::size_t at) const {
        const auto& runsOn = m_book.pages[bound(at - 1).lastRow()].runsOn;
        return runsOn && !*runsOn;
    }

    void brokenAlone(std::size_t at) {
        add(LeafFindingKind::unexplained, lastRowBefore(at), firstRow(at), 0, false,
            fmt::format("After {} the text does not run on, though numbers or fold are whole: a "
                        "leaf never numbered or signed is lacking, or one is from another copy.",
                        rowName(lastRowBefore(at))));
    }

    [[nodiscard]] std::string numbersOf(std::size_t at, int count) const {
        const int after = *m_story[at].expectedNumber;
        const int first = after - m_unit * count;
        if (m_unit == 1)
            return count == 1 ? fmt::format("f. {}", first)
                              : fmt::format("ff. {}–{}", first, after - 1);
        return fmt::format("pp. {}–{}", first, after - 1);
    }

    [[nodiscard]] std::string lackingNames(std::size_t at) const {
        const StoryLeaf& leaf = m_story[at];
        const Arrival& arrival = leaf.arrival;
        if (!leaf.gathering)
            return fmt::format("({})", arrival.lacking());
        if (arrival.gatheringsLacking > 0)
            return "(a whole gathering)";
        std::vector<std::string> names;
        if (arrival.lackingBefore > 0 && at > 0) {
            const StoryLeaf& before = m_story[at - 1];
            for (int back = 1; back <= arrival.lackingBefore; ++back)
                names.push_back(leafName(before, -back - arrival.countedBefore));
        }
        for (int back = arrival.lackingAfter; back >= 1; --back)
            names.push_back(leafName(leaf, back));
        return fmt::format("({})", joined(names));
    }

    [[nodiscard]] std::string catchwordSentence(std::size_t at, std::string_view verb) const {
        if (at == 0)
            return {};
        const BoundLeaf& before = bound(at - 1);
        for (const auto& row : {before.verso, before.recto}) {
            if (row && !m_book.pages[*row].catchword.empty())
                return fmt::format("the catchword “{}” {}", m_book.pages[*row].catchword, verb);
        }
        return "the text does not run on";
    }

    // Nothing lacks by the account, yet text and fold both break: numbers alone hold it together.
    void breaks(std::size_t at) {
        if (at == 0 || catchwordBroken(at) != Says::yes || wasMoved(at))
            return;
        const Arrival& arrival = m_story[at].arrival;
        const bool outOfOrder = arrival.turn == Turn::newSeries && at > 0 &&
                                m_story[at - 1].gathering && m_story[at].gathering &&
                                m_story[at - 1].gathering->series == m_story[at].gathering->series;
        if (!outOfOrder) {
            if (!isHeldTogether(at))
                catchwordAlone(at);
            else if (isReadAcross(at))
                brokenAlone(at);
            return;
        }
        add(LeafFindingKind::unexplained, lastRowBefore(at), firstRow(at), 0, false,
            fmt::format("After {} the signatures break off ({} is followed by {}) and {}.",
                        rowName(lastRowBefore(at)), leafName(m_story[at - 1]),
                        leafName(m_story[at]),
                        catchwordSentence(at, "does not meet the next page")));
    }

    void jump(std::size_t at) {
        const Arrival& arrival = m_story[at].arrival;
        // Blanks and plates are numbered or not, as the printer pleased.
        const int bare = m_order.unprintedBefore[at];
        const bool asBookDoes =
            m_habits.bareCost(bare, arrival.numberJump > 0 ? bare : 0) < kAgainstHabit;
        if (bare > 0 && arrival.numberJump % m_unit == 0 &&
            std::abs(arrival.numberJump) <= bare * m_unit && asBookDoes)
            return;
        const auto& numbers = bound(at).numbers;
        std::size_t row = firstRow(at);
        if ((arrival.jumpWithinLeaf || !numbers[0]) && bound(at).verso)
            row = *bound(at).verso + 1;
        const Says text = catchwordBroken(at);
        std::vector<std::string> evidence;
        if (arrival.jumpWithinLeaf || text == Says::no)
            evidence.push_back("the text runs on");
        if (m_story[at].gathering && !arrival.missigned && arrival.turn != Turn::newSeries)
            evidence.push_back("the signatures are in order");
        const bool sure = text == Says::no || arrival.jumpWithinLeaf;
        add(LeafFindingKind::misnumbered, row - 1, row,
            (std::abs(arrival.numberJump) + m_unit - 1) / m_unit, sure,
            fmt::format("From {} on the numbers are {} by {}{}: the printer's misnumbering, "
                        "nothing is lost.",
                        rowName(row), arrival.numberJump > 0 ? "too high" : "too low",
                        std::abs(arrival.numberJump),
                        evidence.empty() ? std::string()
                                         : fmt::format(", but {}", joined(evidence))));
    }

    void misprints(std::size_t at) {
        const StoryLeaf& leaf = m_story[at];
        for (std::size_t page = 0; page < 2; ++page) {
            const auto& row = page == 0 ? bound(at).recto : bound(at).verso;
            if (!leaf.arrival.misprinted[page] || !row || bound(at).numbers[page]->supplied)
                continue;
            const int right = *leaf.expectedNumber + (m_unit == 2 ? static_cast<int>(page) : 0);
            add(LeafFindingKind::misnumbered, *row, *row + 1, 0, true,
                fmt::format("{} is misnumbered {} for {}: the numbers before and after it are "
                            "in order.",
                            capitalised(rowName(*row + 1)), m_book.pages[*row].number, right));
        }
    }

    void missigned(std::size_t at) {
        const std::size_t row = firstRow(at);
        add(LeafFindingKind::missigned, row - 1, row, 0, catchwordBroken(at) != Says::yes,
            fmt::format("{} is signed “{}”; by its place it is {}.", capitalised(rowName(row)),
                        bound(at).recto ? m_book.pages[*bound(at).recto].signature : "",
                        leafName(m_story[at])));
    }

    const BoundBook& m_book;
    const LeafOrder& m_order;
    const BookHabits& m_habits;
    const std::vector<StoryLeaf>& m_story;
    int m_unit;
    std::vector<LeafFinding> m_findings;
};

} // namespace

std::string leafName(const StoryLeaf& leaf, int back) {
    if (leaf.position == 0)
        return {};
    if (!leaf.gathering)
        return fmt::format("leaf {} of an unsigned gathering", leaf.position - back);
    return fmt::format("{}{}", signatureOf(*leaf.gathering), leaf.position - back);
}

std::vector<LeafFinding> findingsOf(const BoundBook& book, const LeafOrder& order,
                                    const BookHabits& habits, const std::vector<StoryLeaf>& story) {
    return FindingReader(book, order, habits, story).read();
}

} // namespace headcap::core
