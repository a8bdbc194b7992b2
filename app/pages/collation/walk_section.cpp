#include "app/pages/collation/walk_section.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/collation/infer_sheet.h"
#include "app/pages/collation/walk_keys.h"
#include "app/pages/collation/walk_sheet.h"
#include "app/pages/collation/walk_words.h"
#include "app/session/words.h"
#include "core/collation/folds.h"
#include "core/collation/walk_differences.h"

namespace headcap::app {

WalkSection::WalkSection(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_walker(session), m_rest(new QWidget),
      m_said(new Label(Face::body, Ink::quiet)), m_open(new Label(Face::body, Ink::open)),
      m_go(new QPushButton), m_goInferring(new QPushButton(tr("Type what the leaves bear"))),
      m_sheet(new WalkSheet(m_walker)), m_infer(new InferSheet(session)) {
    m_said->setRunning();
    m_open->setRunning();
    m_go->setToolTip(tr("Begins a walk through the book, or takes it up again (%1)")
                         .arg(QLatin1String(kBeginWalkKey)));
    auto* rest = new QVBoxLayout(m_rest);
    rest->setContentsMargins(0, 0, 0, 0);
    rest->setSpacing(kSpace);
    rest->addWidget(m_said);
    rest->addWidget(m_open);
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kSpace);
    ways->addWidget(m_go);
    ways->addWidget(m_goInferring);
    ways->addStretch(1);
    rest->addLayout(ways);
    m_goInferring->setToolTip(tr("For a book without a published formula: marks and numbers as "
                                 "they come; the gatherings are inferred"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addWidget(m_rest);
    down->addWidget(m_sheet);
    down->addWidget(m_infer);
    m_sheet->hide();
    m_infer->hide();
    connect(m_go, &QPushButton::clicked, this, &WalkSection::go);
    connect(m_goInferring, &QPushButton::clicked, this, &WalkSection::goInferring);
    connect(m_infer, &InferSheet::left, this, &WalkSection::refresh);
    connect(&m_walker, &Walker::moved, this, &WalkSection::refresh);
}

void WalkSection::show(const core::JobFile& file, const std::optional<core::Id<core::Item>>& part,
                       const core::Collation& collation) {
    m_infer->show(file, part, collation);
    m_walker.show(file, part, collation);
}

void WalkSection::goInferring() {
    if (!m_walker.isWalking() && m_infer->go()) {
        refresh();
        m_infer->show();
        m_infer->go(); // the fields are seen now, and take the keys
    }
}

void WalkSection::go() {
    if (m_infer->isTyping() || !m_walker.canBegin()) {
        goInferring();
        return;
    }
    if (!m_walker.isWalking()) {
        m_walker.takeUp();
    }
    if (m_walker.isWalking()) {
        m_sheet->setFocus(Qt::OtherFocusReason);
    }
}

void WalkSection::refresh() {
    const bool isWalking = m_walker.isWalking() || m_infer->isTyping();
    const core::Walk* open = m_walker.open();
    m_go->setText(open != nullptr ? tr("Go on with the walk") : tr("Go through the book"));
    m_go->setEnabled(m_walker.canBegin());
    m_said->setText(walksSaid());
    m_open->setText(openSaid());
    m_open->setVisible(!m_open->text().isEmpty());
    m_rest->setVisible(!isWalking);
    m_sheet->setVisible(m_walker.isWalking());
    m_infer->setVisible(m_infer->isTyping());
    m_goInferring->setVisible(!m_walker.canBegin());
    m_go->setVisible(m_walker.canBegin());
    if (isWalking != m_isWalking) {
        m_isWalking = isWalking;
        if (!isWalking) {
            (m_walker.canBegin() ? m_go : m_goInferring)->setFocus(Qt::OtherFocusReason);
        }
        Q_EMIT walking(isWalking);
    }
}

// Where two people's walks do not agree; that nobody is said to be at work.
QString WalkSection::openSaid() const {
    QStringList lines;
    for (const std::string& difference : walkDifferences(m_walker.copy())) {
        lines << tr("%1 Look at the leaf again, and let the list of findings say what holds.")
                     .arg(fromCore(difference));
    }
    if (!m_session.person()) {
        lines << tr("Nobody is said to be at work: say who first (Ctrl+U), so that what is found "
                    "bears a name.");
    }
    return lines.join(QLatin1Char('\n'));
}

QString WalkSection::walksSaid() const {
    QStringList lines;
    for (const core::Walk& walk : m_walker.walks()) {
        if (walk.kind != core::WalkKind::againstMakeUp) {
            continue;
        }
        const core::WalkedBook walked = core::walkedBook(walk.formula, walk.extent);
        const auto entries = core::entriesOf(walk, m_walker.copy().entries);
        lines << walkWords(walk, stateOf(walked.book, entries), walked.book, m_walker.copy().people,
                           m_session.clock().dayOf(walk.startedAt), m_session.clock().today());
    }
    if (!lines.isEmpty()) {
        return lines.join(QLatin1Char('\n'));
    }
    if (m_walker.canBegin() && m_walker.isCollated()) {
        return tr("It was collated without this sheet. It can be gone through again here: one key "
                  "a leaf, one for the rest of a gathering, one a kind of finding.");
    }
    return m_walker.canBegin()
               ? tr("Nobody has gone through this copy yet. With the book in hand: one key a leaf, "
                    "one for the rest of a gathering, one a kind of finding. It can be broken off "
                    "at any leaf.")
               : tr("With a formula the book can be gone through leaf by leaf. Where nobody has "
                    "published one, type the signature marks and numbers as they come: the "
                    "gatherings are inferred.");
}

} // namespace headcap::app
