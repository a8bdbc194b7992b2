#include "app/pages/collation/walker.h"

#include <algorithm>

#include "app/pages/collation/copy_words.h"
#include "app/session/words.h"
#include "core/collation/bound_order.h"
#include "core/collation/copy_records.h"
#include "core/collation/finding_places.h"
#include "core/collation/folds.h"

namespace headcap::app {
Walker::Walker(Session& session, QObject* parent) : QObject(parent), m_session(session) {}

void Walker::show(const core::JobFile& file, const std::optional<core::Id<core::Item>>& part,
                  const core::Collation& collation) {
    if (m_job != file.job.id || m_part != part) {
        m_walk.reset();
    }
    m_job = file.job.id;
    m_part = part;
    m_collation = collation;
    m_file = file;
    m_copy = core::copyOf(file, part, collation);
    const auto walk = std::ranges::find_if(
        m_copy.walks, [&](const core::Walk& one) { return m_walk && one.id == *m_walk; });
    if (walk == m_copy.walks.end()) {
        m_walk.reset(); // its beginning was taken back
        m_entries.clear();
        m_walked = core::walkedBook(collation.formula, collation.extent);
        Q_EMIT moved();
        return;
    }
    const auto before = std::move(m_entries);
    m_entries = core::entriesOf(*walk, file.walkEntries);
    for (const core::WalkEntry& entry : before) {
        if (std::ranges::find(m_entries, entry.id, &core::WalkEntry::id) == m_entries.end()) {
            m_here = static_cast<std::size_t>(entry.position) - 1;
        }
    }
    Q_EMIT moved();
}

const core::Walk* Walker::open() const {
    const core::Walk* found = nullptr;
    for (const core::Walk& walk : m_copy.walks) {
        const bool isOurs = walk.who == m_session.person() && !walk.finishedAt &&
                            walk.kind == core::WalkKind::againstMakeUp;
        found = isOurs && (found == nullptr || found->id < walk.id) ? &walk : found;
    }
    return found;
}

void Walker::begin() {
    if (!canBegin() || !m_collation) {
        return;
    }
    const core::Walk walk =
        beginWalk(*m_job, m_part, *m_collation, core::WalkKind::againstMakeUp, pen());
    core::Change change{.sentence = toCore(tr("Walk through the book begun"))};
    change.add(walk);
    m_walk = walk.id;
    m_here = 0;
    if (!m_session.apply(std::move(change))) {
        m_walk.reset();
    }
    Q_EMIT moved();
}

void Walker::takeUp() {
    const core::Walk* walk = open();
    if (walk == nullptr) {
        begin();
        return;
    }
    m_walk = walk->id;
    m_walked = core::walkedBook(walk->formula, walk->extent);
    m_entries = core::entriesOf(*walk, m_copy.entries);
    goTo(state().here);
}

void Walker::leave() {
    m_walk.reset();
    m_entries.clear();
    Q_EMIT moved();
}

core::LeafExpectation Walker::expectation() const {
    return expectationInWalk(m_walked, m_entries, *m_here);
}

std::string Walker::catchwordDue() const {
    return core::catchwordDue(state(), *m_here);
}

core::LeafReading Walker::reading() const {
    const auto now = state();
    const auto* read = m_here ? now.leaves[*m_here].read : nullptr;
    return read == nullptr ? core::LeafReading{} : core::readingOf(*read);
}

std::vector<core::BreakExplanation> Walker::explanations() const {
    return m_here
               ? explainBreak(evidenceAt(m_walked, m_entries, m_copy.findings, *m_here, reading()))
               : std::vector<core::BreakExplanation>{};
}

std::vector<core::CollationFinding> Walker::findingsHere() const {
    std::vector<core::CollationFinding> found;
    std::ranges::copy_if(m_copy.findings, std::back_inserter(found),
                         [&](const core::CollationFinding& finding) {
                             const auto leaves = leavesAt(m_walked.book, finding.place);
                             return m_here && std::ranges::binary_search(leaves, *m_here);
                         });
    return found;
}

QStringList Walker::hints() const {
    using Kind = core::CollationKind;
    const auto lost = leavesFound(m_walked.book, m_copy.findings, Kind::lacking);
    auto loose = leavesFound(m_walked.book, m_copy.findings, Kind::loose);
    const auto off = leavesFound(m_walked.book, m_copy.findings, Kind::detached);
    loose.insert(loose.end(), off.begin(), off.end());
    QStringList said;
    for (const core::FoldHint& hint : foldHints(m_walked.book, lost, loose)) {
        if (m_here && (hint.leaf == *m_here || hint.other == *m_here)) {
            said << fromCore(sentenceOf(m_walked.book, hint));
        }
    }
    const auto misbound = leavesFound(m_walked.book, m_copy.findings, Kind::misbound);
    if (m_here && std::ranges::binary_search(misbound, *m_here)) {
        said << fromCore(sentenceOf(m_walked.book, movesFor(m_walked.book, m_copy.findings)));
        said.removeAll({});
    }
    return said;
}

void Walker::asExpected() {
    if (!m_here) {
        return;
    }
    if (state().leaves[*m_here].looked == core::Looked::singly) {
        goOn();
        return;
    }
    const core::Walk& walk = *std::ranges::find(m_copy.walks, *m_walk, &core::Walk::id);
    const auto entry = leafAsExpected(walk, m_walked.book, *m_here, pen());
    if (keep(entry, tr("%1 as expected").arg(fromCore(entry.place)))) {
        goOn();
    }
}

void Walker::restAsExpected() {
    if (!m_here) {
        return;
    }
    // A leaf that has its own entry is not passed over again.
    const std::size_t last = lastOfGathering(m_walked.book, *m_here);
    const bool isSeen = state().leaves[*m_here].looked == core::Looked::singly;
    if (isSeen && *m_here == last) {
        goOn();
        return;
    }
    const core::Walk& walk = *std::ranges::find(m_copy.walks, *m_walk, &core::Walk::id);
    const auto entry = core::restAsExpected(walk, m_walked.book, *m_here + (isSeen ? 1 : 0), pen());
    if (keep(entry, tr("Rest of %1 as expected").arg(fromCore(entry.gathering)))) {
        goTo(nextNotLooked(state(), last));
    }
}

void Walker::back() {
    if (!m_here) {
        goTo(m_walked.book.leaves.size() - 1);
    } else if (*m_here > 0) {
        goTo(*m_here - 1);
    }
}

bool Walker::read(const core::LeafReading& reading) {
    if (!m_here || reading.isEmpty()) {
        return false;
    }
    const bool differs = differenceOf(reading, expectation()).any();
    if (keepRead(reading, differs) && !differs) {
        goOn();
    }
    return differs;
}

void Walker::keepReading(const core::LeafReading& read) {
    if (m_here && read != reading()) {
        keepRead(read, differenceOf(read, expectation()).any());
    }
}

bool Walker::keepRead(const core::LeafReading& reading, bool differs) {
    const core::Walk& walk = *std::ranges::find(m_copy.walks, *m_walk, &core::Walk::id);
    const auto entry = leafRead(walk, m_walked.book, *m_here, reading, !differs, pen());
    return keep(entry, tr("%1 read").arg(fromCore(entry.place)));
}

std::optional<core::Id<core::CollationFinding>> Walker::find(core::CollationKind kind) {
    if (!m_here) {
        return std::nullopt;
    }
    const core::Walk& walk = *std::ranges::find(m_copy.walks, *m_walk, &core::Walk::id);
    const auto made =
        findingAt(walk, m_walked.book, *m_here, kind, expectation(), reading(), pen());
    core::Change change{.sentence =
                            toCore(tr("%1: %2").arg(fromCore(made.finding.place), words(kind)))};
    change.add(made.finding).add(made.entry);
    if (!m_session.apply(std::move(change))) {
        return std::nullopt;
    }
    Q_EMIT moved();
    return made.finding.id;
}

void Walker::note(const core::Id<core::CollationFinding>& finding, const std::string& note) {
    const auto at = std::ranges::find(m_copy.findings, finding, &core::CollationFinding::id);
    if (at == m_copy.findings.end() || at->note == note) {
        return;
    }
    core::CollationFinding changed = *at;
    // Where the leaf stands is what the note of a misbound leaf says first.
    const bool isPlace = changed.kind == core::CollationKind::misbound && changed.found.empty();
    (isPlace ? changed.found : changed.note) = note;
    core::Change change{.sentence = toCore(tr("%1 noted").arg(fromCore(changed.place)))};
    change.update(changed, m_file->revisionOf(core::refOf(changed.id)));
    m_session.apply(std::move(change));
}

bool Walker::keepsTypedStatement() const {
    return m_collation && !m_collation->statement.empty() &&
           m_collation->statement != statementOf(m_copy);
}

core::Collation Walker::concluded() const {
    core::Collation collation = withStatement(*m_collation, m_copy, m_session.clock());
    if (keepsTypedStatement()) {
        collation.statement = m_collation->statement;
    }
    collation.method = core::methodBeside(m_collation->method, collation.method);
    collation.finishedOn = m_session.clock().today();
    collation.who = m_session.person();
    return collation;
}

void Walker::finish() {
    if (!m_walk) {
        return;
    }
    core::Walk walk = *std::ranges::find(m_copy.walks, *m_walk, &core::Walk::id);
    walk.finishedAt = m_session.clock().now();
    core::Change change{.sentence = toCore(tr("Walk through the book finished"))};
    change.update(walk, m_file->revisionOf(core::refOf(walk.id)));
    change.update(concluded(), m_file->revisionOf(core::refOf(m_collation->id)));
    if (m_session.apply(std::move(change))) {
        leave();
    }
}

core::WalkPen Walker::pen() {
    return {.ids = m_session.ids(), .now = m_session.clock().now(), .who = m_session.person()};
}

void Walker::goTo(std::optional<std::size_t> leaf) {
    m_here = leaf;
    Q_EMIT moved();
}

void Walker::goOn() {
    goTo(nextNotLooked(state(), *m_here));
}

bool Walker::keep(core::WalkEntry entry, const QString& sentence) {
    core::Change change{.sentence = toCore(sentence)};
    change.add(std::move(entry));
    return m_session.apply(std::move(change));
}

} // namespace headcap::app
