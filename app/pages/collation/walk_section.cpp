#include "app/pages/collation/walk_section.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/collation/walk_sheet.h"
#include "app/pages/collation/walk_words.h"
#include "app/session/words.h"
#include "core/collation/folds.h"

namespace headcap::app {

WalkSection::WalkSection(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_walker(session), m_rest(new QWidget),
      m_said(new Label(Face::body, Ink::quiet)), m_go(new QPushButton),
      m_sheet(new WalkSheet(m_walker)) {
    m_said->setRunning();
    m_go->setToolTip(tipOf(ActionId::beginWalk));
    auto* rest = new QVBoxLayout(m_rest);
    rest->setContentsMargins(0, 0, 0, 0);
    rest->setSpacing(kSpace);
    rest->addWidget(m_said);
    rest->addWidget(m_go, 0, Qt::AlignLeft);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addWidget(m_rest);
    down->addWidget(m_sheet);
    m_sheet->hide();
    connect(m_go, &QPushButton::clicked, this, &WalkSection::go);
    connect(&m_walker, &Walker::moved, this, &WalkSection::refresh);
}

void WalkSection::go() {
    if (!m_walker.isWalking()) {
        m_walker.takeUp();
    }
    if (m_walker.isWalking()) {
        m_sheet->setFocus(Qt::OtherFocusReason);
    }
}

void WalkSection::refresh() {
    const bool isWalking = m_walker.isWalking();
    const core::Walk* open = m_walker.open();
    m_go->setText(open != nullptr ? tr("Go on with the walk") : tr("Go through the book"));
    m_go->setEnabled(m_walker.canBegin());
    m_said->setText(walksSaid());
    m_rest->setVisible(!isWalking);
    m_sheet->setVisible(isWalking);
    if (isWalking != m_isWalking) {
        m_isWalking = isWalking;
        if (!isWalking) {
            m_go->setFocus(Qt::OtherFocusReason);
        }
        Q_EMIT walking(isWalking);
    }
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
    return m_walker.canBegin()
               ? tr("Nobody has gone through this copy yet. With the book in hand: one key a leaf, "
                    "one for the rest of a gathering, one a kind of finding. It can be broken off "
                    "at any leaf.")
               : tr("With a formula the book can be gone through leaf by leaf.");
}

} // namespace headcap::app
