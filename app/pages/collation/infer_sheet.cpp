#include "app/pages/collation/infer_sheet.h"

#include <algorithm>

#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"
#include "core/collation/walk.h"

namespace headcap::app {

InferSheet::InferSheet(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_place(new Label(Face::title)),
      m_formula(new Label(Face::book)), m_said(new Label(Face::small, Ink::quiet)),
      m_take(new QPushButton(tr("Take this as the make-up"))),
      m_leave(new QPushButton(tr("Break off"))) {
    layOut();
    connect(m_take, &QPushButton::clicked, this, &InferSheet::takeFormula);
    connect(m_leave, &QPushButton::clicked, this, &InferSheet::leave);
}

void InferSheet::layOut() {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kSpace);
    grid->setVerticalSpacing(kGrid);
    grid->addWidget(m_place, 0, 0, 1, 5);
    const QStringList headings{tr("Signature"), tr("Recto"), tr("Verso"), tr("First words"),
                               tr("Catchword at its foot")};
    for (int i = 0; i < headings.size(); ++i) {
        auto* field = new QLineEdit;
        m_fields[static_cast<std::size_t>(i)] = field;
        field->setAccessibleName(headings[i]);
        field->setMinimumWidth(56);
        field->installEventFilter(this);
        connect(field, &QLineEdit::returnPressed, this, &InferSheet::takeLeaf);
        grid->addWidget(new Label(Face::small, Ink::quiet, headings[i]), 1, i);
        grid->addWidget(field, 2, i);
        grid->setColumnStretch(i, i < words ? 2 : 3);
    }
    auto* hint =
        new Label(Face::small, Ink::quiet,
                  tr("As printed; what is not there stays empty. Enter takes the leaf and "
                     "goes to the next, Esc breaks off, Ctrl+Z takes the last leaf back."));
    hint->setRunning();
    m_formula->setWordWrap(true);
    m_said->setRunning();
    grid->addWidget(hint, 3, 0, 1, 5);
    grid->setRowMinimumHeight(4, kGap);
    grid->addWidget(m_formula, 5, 0, 1, 5);
    grid->addWidget(m_said, 6, 0, 1, 5);
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace);
    row->addWidget(m_take);
    row->addWidget(m_leave);
    row->addStretch(1);
    grid->addLayout(row, 7, 0, 1, 5);
}

QString InferSheet::said() const {
    return m_said->text();
}

void InferSheet::show(const core::JobFile& file, const std::optional<core::Id<core::Item>>& part,
                      const core::Collation& collation) {
    if (!m_file || m_file->job.id != file.job.id || m_part != part) {
        m_walk.reset();
    }
    m_file = file;
    m_part = part;
    m_collation = collation;
    infer();
}

void InferSheet::infer() {
    const auto walk = std::ranges::find_if(
        m_file->walks, [&](const core::Walk& one) { return m_walk && one.id == *m_walk; });
    if (walk == m_file->walks.end()) {
        m_walk.reset();
        m_entries.clear();
        return;
    }
    m_entries = core::entriesOf(*walk, m_file->walkEntries);
    m_inferred = core::inferFrom(m_entries);
    const core::LeafDiagnosis& found = m_inferred.diagnosis;
    m_place->setText(tr("Leaf %1").arg(m_entries.size() + 1));
    m_formula->setText(found.formula.empty() ? tr("No gathering yet") : fromCore(found.formula));
    QStringList lines;
    if (!found.gatherings.empty()) {
        lines << tr("%1 of %2 gatherings are sure.")
                     .arg(m_inferred.gatheringsSure)
                     .arg(found.gatherings.size());
    }
    for (const std::string& doubt : m_inferred.doubts) {
        lines << tr("Not sure: %1").arg(fromCore(doubt));
    }
    for (const core::LeafFinding& finding : found.findings) {
        lines << fromCore(finding.sentence);
    }
    m_said->setText(lines.join(QLatin1Char('\n')));
    m_take->setEnabled(!found.formula.empty());
}

const core::Walk* InferSheet::open() const {
    const core::Walk* found = nullptr;
    for (const core::Walk& walk : m_file->walks) {
        const bool isOurs = walk.part == m_part && walk.who == m_session.person() &&
                            !walk.finishedAt && walk.kind == core::WalkKind::inferring;
        found = isOurs ? &walk : found;
    }
    return found;
}

bool InferSheet::go() {
    if (const core::Walk* walk = open()) {
        m_walk = walk->id;
        infer();
    } else {
        const core::Walk begun =
            beginWalk(m_file->job.id, m_part, *m_collation, core::WalkKind::inferring, pen());
        core::Change change{.sentence = toCore(tr("Marks and numbers begun to be typed"))};
        change.add(begun);
        m_walk = begun.id;
        if (!m_session.apply(std::move(change))) {
            m_walk.reset();
        }
    }
    m_fields[mark]->setFocus(Qt::OtherFocusReason);
    return isTyping();
}

void InferSheet::takeLeaf() {
    const auto walk = std::ranges::find_if(
        m_file->walks, [&](const core::Walk& one) { return m_walk && one.id == *m_walk; });
    if (walk == m_file->walks.end()) {
        return;
    }
    const auto text = [&](Field field) { return toCore(m_fields[field]->text().trimmed()); };
    const core::LeafReading reading{.signature = text(mark),
                                    .recto = text(recto),
                                    .verso = text(verso),
                                    .catchword = text(catchword),
                                    .firstWords = text(words)};
    core::Change change{.sentence = toCore(tr("Leaf %1 read").arg(m_entries.size() + 1))};
    change.add(nextLeafRead(*walk, m_entries.size(), reading, pen()));
    if (m_session.apply(std::move(change))) {
        for (QLineEdit* field : m_fields) {
            field->clear();
        }
        m_fields[mark]->setFocus(Qt::OtherFocusReason);
    }
}

void InferSheet::takeFormula() {
    core::Collation collation = *m_collation;
    collation.formula = m_inferred.diagnosis.formula;
    collation.extent = m_inferred.diagnosis.extent;
    core::Walk walk = *std::ranges::find(m_file->walks, *m_walk, &core::Walk::id);
    walk.finishedAt = m_session.clock().now();
    walk.formula = collation.formula;
    walk.extent = collation.extent;
    core::Change change{.sentence = toCore(tr("Make-up inferred from marks and numbers"))};
    change.update(walk, m_file->revisionOf(core::refOf(walk.id)));
    const bool isKept = std::ranges::any_of(
        m_file->collations, [&](const core::Collation& one) { return one.id == collation.id; });
    if (isKept) {
        change.update(collation, m_file->revisionOf(core::refOf(collation.id)));
    } else {
        change.add(collation);
    }
    if (m_session.apply(std::move(change))) {
        leave();
    }
}

void InferSheet::leave() {
    m_walk.reset();
    Q_EMIT left();
}

core::WalkPen InferSheet::pen() {
    return {.ids = m_session.ids(), .now = m_session.clock().now(), .who = m_session.person()};
}

bool InferSheet::eventFilter(QObject* watched, QEvent* event) {
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            leave();
        }
        return true;
    }
    // With nothing typed, undo and redo are the window's: they take the last leaf back and forth.
    const auto* key =
        event->type() == QEvent::ShortcutOverride ? static_cast<QKeyEvent*>(event) : nullptr;
    const bool isUndo =
        key != nullptr && (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo));
    if (isUndo && std::ranges::all_of(
                      m_fields, [](const QLineEdit* field) { return field->text().isEmpty(); })) {
        event->ignore();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace headcap::app
