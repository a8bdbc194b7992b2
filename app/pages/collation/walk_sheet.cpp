#include "app/pages/collation/walk_sheet.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/collation/walk_drawing.h"
#include "app/pages/collation/walk_fields.h"
#include "app/pages/collation/walk_words.h"
#include "app/session/words.h"
#include "core/collation/folds.h"

namespace headcap::app {

WalkSheet::WalkSheet(Walker& walker, QWidget* parent)
    : QWidget(parent), m_walker(walker), m_place(new Label(Face::title)),
      m_where(new Label(Face::body, Ink::quiet)), m_drawing(new WalkDrawing),
      m_fields(new WalkFields), m_noteRow(new QWidget),
      m_noteLabel(new Label(Face::small, Ink::quiet)), m_note(new QLineEdit),
      m_said(new Label(Face::small, Ink::open)), m_keys(new WalkKeys),
      m_finish(new QPushButton(tr("Finish, and write the statement (Enter)"))) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The walk"));
    layOut();
    connect(&m_walker, &Walker::moved, this, &WalkSheet::refresh);
    connect(m_keys, &WalkKeys::pressed, this, [this](WalkAction action) {
        setFocus(Qt::OtherFocusReason);
        act(action);
    });
    connect(m_fields, &WalkFields::taken, this, &WalkSheet::takeReading);
    connect(m_fields, &WalkFields::steppedBack, this, [this] { setFocus(Qt::OtherFocusReason); });
    connect(m_fields, &WalkFields::left, this, &WalkSheet::keepTyped);
    connect(m_note, &QLineEdit::returnPressed, this, [this] { takeNote(true); });
    connect(m_finish, &QPushButton::clicked, &m_walker, &Walker::finish);
}

void WalkSheet::layOut() {
    auto* head = new QHBoxLayout;
    head->setSpacing(kSpace);
    head->addWidget(m_place);
    head->addWidget(m_where, 1, Qt::AlignBottom);
    m_where->setWordWrap(true);

    auto* note = new QHBoxLayout(m_noteRow);
    note->setContentsMargins(0, 0, 0, 0);
    note->setSpacing(kSpace);
    note->addWidget(m_noteLabel);
    note->addWidget(m_note, 1);
    m_note->setAccessibleName(tr("Note"));
    m_note->installEventFilter(this);
    m_said->setWordWrap(true);

    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(kSpace, kGap, kSpace, kSpace);
    down->setSpacing(kGap);
    down->addLayout(head);
    down->addWidget(m_drawing);
    down->addWidget(m_fields);
    down->addWidget(m_noteRow);
    down->addWidget(m_said);
    down->addWidget(m_finish, 0, Qt::AlignLeft);
    down->addSpacing(kGap);
    down->addWidget(m_keys);
}

QString WalkSheet::place() const {
    return m_place->text();
}

QString WalkSheet::said() const {
    return m_said->text();
}

void WalkSheet::refresh() {
    if (!m_walker.isWalking()) {
        return;
    }
    const auto here = m_walker.here();
    m_fields->setVisible(here.has_value());
    m_drawing->setVisible(here.has_value());
    m_finish->setVisible(!here);
    if (!here || here != m_shown) {
        m_noted.reset();
    }
    m_noteRow->setVisible(m_noted.has_value());
    if (here) {
        showLeaf(*here);
    } else {
        showEnd();
    }
    m_shown = here;
    keepInSight();
}

// The leaf's name and its drawing stay on the page, whatever takes the keys below them.
void WalkSheet::keepInSight() {
    QWidget* up = parentWidget();
    while (up != nullptr && qobject_cast<QScrollArea*>(up) == nullptr) {
        up = up->parentWidget();
    }
    if (auto* area = qobject_cast<QScrollArea*>(up)) {
        QTimer::singleShot(0, this, [this, area] {
            if (m_walker.isWalking()) {
                area->ensureWidgetVisible(m_noteRow->isVisible() ? m_noteRow : m_fields, 0, kGap);
                area->ensureWidgetVisible(m_place, 0, kGap);
            }
        });
    }
}

void WalkSheet::showLeaf(std::size_t leaf) {
    const core::LeafExpectation expected = m_walker.expectation();
    const core::WalkedBook& walked = m_walker.walked();
    m_place->setText(fromCore(expected.ref));
    m_where->setText(whereWords(expected, leaf, walked.book.leaves.size()));
    auto pictures =
        core::picturesOf(walked.book.makeUp, m_walker.copy().findings, m_walker.copy().facsimiles);
    auto& picture = pictures[walked.book.leaves[leaf].gathering];
    const auto looked = std::ranges::find(picture.leaves, expected.ref, &core::PicturedLeaf::ref);
    const auto index = static_cast<std::size_t>(looked - picture.leaves.begin());
    m_drawing->show(std::move(picture), index);
    m_fields->expect(expected, m_walker.catchwordDue(),
                     leaf > 0 ? fromCore(leafText(walked.book, leaf - 1)) : QString{});
    if (leaf != m_shown) {
        m_fields->setReading(m_walker.reading());
    }
    m_said->setText(remarks().join(QLatin1Char('\n')));
    m_said->setVisible(!m_said->text().isEmpty());
}

void WalkSheet::showEnd() {
    m_place->setText(tr("The book is gone through"));
    m_where->setText({});
    const core::WalkState state = m_walker.state();
    QStringList lines{coverageWords(m_walker.walked().book, state),
                      fromCore(statementOf(m_walker.copy()))};
    if (m_walker.keepsTypedStatement()) {
        lines << tr("What is typed under “This copy” stays; under “What comes of it” this one can "
                    "be taken in its place.");
    }
    m_said->setText(lines.join(QLatin1Char('\n')));
    m_said->setVisible(true);
}

QStringList WalkSheet::remarks() const {
    QStringList lines;
    for (const core::CollationFinding& finding : m_walker.findingsHere()) {
        lines << findingWords(finding);
    }
    for (const core::BreakExplanation& one : m_walker.explanations()) {
        lines << fromCore(one.sentence);
    }
    return lines + m_walker.hints();
}

void WalkSheet::takeReading() {
    m_walker.read(m_fields->reading());
    setFocus(Qt::OtherFocusReason);
}

void WalkSheet::keepTyped() {
    if (m_walker.isWalking() && m_walker.here() == m_shown) {
        m_walker.keepReading(m_fields->reading());
    }
}

void WalkSheet::startNote(const core::Id<core::CollationFinding>& finding,
                          core::CollationKind kind) {
    m_noted = finding;
    m_noteLabel->setText(noteLabel(kind));
    m_note->setPlaceholderText(noteHint(kind));
    m_note->clear();
    m_noteRow->setVisible(true);
    m_note->setFocus(Qt::OtherFocusReason);
    keepInSight();
}

void WalkSheet::takeNote(bool goOn) {
    const auto finding = m_noted;
    const std::string note = toCore(m_note->text().trimmed());
    m_noted.reset();
    m_noteRow->hide();
    setFocus(Qt::OtherFocusReason);
    if (finding && !note.empty()) {
        m_walker.note(*finding, note);
    }
    if (goOn) {
        m_walker.asExpected(); // it has its entry: only goes on
    }
    keepInSight();
}

void WalkSheet::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void WalkSheet::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void WalkSheet::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& colours = coloursFor(palette());
    painter.fillRect(rect(), colours.raised);
    // A stroke at the left says that the keys go here.
    painter.fillRect(QRect{0, 0, 3, height()}, hasFocus() ? colours.accent : colours.rule);
}

} // namespace headcap::app
