#include "app/keeping/backup_view.h"

#include <QAction>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/keeping/backup_words.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/scrolled_page.h"
#include "app/look/style.h"
#include "app/session/actions.h"

namespace headcap::app {
namespace {

constexpr int kNames = 30 * kGrid;

QPushButton* buttonOf(ActionId id, bool isAsking) {
    auto* button = new QPushButton(isAsking ? wordsOf(id) + QStringLiteral(" …") : wordsOf(id));
    button->setToolTip(tipOf(id));
    return button;
}

Label* running(Ink ink, const QString& words = {}) {
    auto* label = new Label(Face::body, ink, words);
    label->setRunning();
    return label;
}

QGridLayout* factsIn(QVBoxLayout& down) {
    auto* facts = new QGridLayout;
    facts->setHorizontalSpacing(kSpace);
    facts->setVerticalSpacing(kGap);
    facts->setColumnMinimumWidth(0, kNames);
    facts->setColumnStretch(1, 100);
    facts->setColumnStretch(2, 1); // what running text leaves
    down.addLayout(facts);
    return facts;
}

void addFact(QGridLayout& facts, const QString& name, Label* value) {
    const int row = facts.rowCount();
    facts.addWidget(new Label(Face::small, Ink::quiet, name), row, 0, Qt::AlignTop | Qt::AlignLeft);
    value->setAccessibleName(name);
    facts.addWidget(value, row, 1);
    facts.setColumnMinimumWidth(2, 1);
}

} // namespace

BackupView::BackupView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_work(new KeepingWork(session.stores().upkeep, this)),
      m_need(new Label(Face::strong)), m_outside(running(Ink::ink)), m_where(running(Ink::ink)),
      m_place(running(Ink::quiet)), m_inside(running(Ink::ink)),
      m_again(buttonOf(ActionId::backUp, false)),
      m_elsewhere(buttonOf(ActionId::backUpElsewhere, true)),
      m_restore(buttonOf(ActionId::restoreBackup, true)), m_stop(new QPushButton(tr("Stop"))),
      m_openRestored(new QPushButton(tr("Open the restored workshop"))),
      m_progress(new Label(Face::body, Ink::quiet)), m_outcome(running(Ink::settled)) {
    m_looks.setMaxThreadCount(1);
    m_again->setDefault(true);
    m_where->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_stop->setToolTip(tr("Stops it; the backup before stays as it was (Esc)"));
    m_openRestored->setToolTip(tr("Saves, closes this workshop, and opens the restored one"));
    layOut();
    connectParts();
    setRunning(false);
    m_outcome->hide();
    m_openRestored->hide();
}

BackupView::~BackupView() {
    m_looks.waitForDone();
}

void BackupView::layOut() {
    auto* down = scrolledPage(this, title(),
                              tr("What would outlive this disk, and the way back from it."), 1120);
    down->addSpacing(kSpace);
    down->addWidget(m_need);
    down->addSpacing(kGap);
    auto* stopRow = new QHBoxLayout;
    stopRow->setSpacing(kSpace);
    stopRow->addWidget(m_progress);
    stopRow->addWidget(m_stop);
    stopRow->addStretch(1);
    down->addLayout(stopRow);
    down->addWidget(m_outcome);
    down->addSpacing(kGap);
    down->addWidget(m_openRestored, 0, Qt::AlignLeft);
    addOutside(*down);
    addInside(*down);
    addRestore(*down);
    down->addStretch(1);
}

void BackupView::addOutside(QVBoxLayout& down) {
    addHeading(down, tr("Outside this workshop"));
    QGridLayout* facts = factsIn(down);
    addFact(*facts, tr("The last one"), m_outside);
    addFact(*facts, tr("Its folder"), m_where);
    addFact(*facts, tr("Its disk"), m_place);
    down.addSpacing(kSpace);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(kGap);
    buttons->addWidget(m_again);
    buttons->addWidget(m_elsewhere);
    buttons->addStretch(1);
    down.addLayout(buttons);
    down.addSpacing(kSpace);
    down.addWidget(running(
        Ink::quiet,
        tr("Records, photographs, papers and issued reports, only what is lacking "
           "there, each copy compared with what it is of, and a share of the older ones read "
           "again each time; everybody can work on meanwhile. A "
           "folder on another disk; two disks in turn, one of them in another "
           "building, are better. After seven days the worklist says so.")));
}

void BackupView::addInside(QVBoxLayout& down) {
    addHeading(down, tr("Inside this workshop"));
    addFact(*factsIn(down), tr("The last one"), m_inside);
    down.addSpacing(kGap);
    down.addWidget(running(
        Ink::quiet, tr("Made by itself when the workshop is opened and the newest is over a day "
                       "old; the newest ten are kept, in its folder “backups”. They hold the "
                       "records alone, and are lost with the disk.")));
}

void BackupView::addRestore(QVBoxLayout& down) {
    addHeading(down, tr("From a backup"));
    down.addWidget(running(
        Ink::quiet, tr("A new workshop is made in a new or empty folder from a backup outside. "
                       "Neither this workshop nor the backup is changed.")));
    down.addSpacing(kSpace);
    down.addWidget(m_restore, 0, Qt::AlignLeft);
}

void BackupView::connectParts() {
    const auto on = [this](ActionId id, QPushButton* button, auto work) {
        connect(app::addAction(this, id), &QAction::triggered, this, work);
        connect(button, &QPushButton::clicked, this, work);
    };
    on(ActionId::backUp, m_again, [this] { backUpAgain(); });
    on(ActionId::backUpElsewhere, m_elsewhere, [this] { backUpElsewhere(); });
    on(ActionId::restoreBackup, m_restore, [this] { restore(); });
    connect(m_stop, &QPushButton::clicked, m_work, &KeepingWork::stop);
    connect(m_openRestored, &QPushButton::clicked, this,
            [this] { Q_EMIT otherWorkshopAsked(m_restored); });
    connect(m_work, &KeepingWork::finished, this, &BackupView::done);
}

bool BackupView::enter(const Destination&) {
    refresh();
    (m_again->isVisibleTo(this) ? m_again : m_elsewhere)->setFocus(Qt::OtherFocusReason);
    return true;
}

void BackupView::refresh() {
    core::BackupStanding standing;
    const core::Clock& clock = m_session.clock();
    if (!m_session.guarded(
            [&] { standing = core::backupStanding(m_session.stores().upkeep, clock.now()); })) {
        return;
    }
    m_folder = standing.outsideFolder;
    const bool isNeeded = standing.need != core::BackupNeed::none;
    m_need->setInk(isNeeded ? Ink::open : standing.outside ? Ink::settled : Ink::quiet);
    m_need->setText(isNeeded ? needWords(standing, clock.now()) + QLatin1Char('.')
                    : standing.outside
                        ? tr("Backed up outside within the last seven days.")
                        : tr("Nothing here is over a week old yet; a backup can wait till then."));
    m_outside->setText(whenWords(standing.outside, clock, tr("never")));
    m_where->setText(m_folder ? QString::fromStdString(m_folder->string()) : tr("none yet"));
    m_inside->setText(whenWords(standing.inside, clock, tr("none yet")));
    m_again->setVisible(m_folder.has_value());
    m_place->setText(m_folder ? tr("…") : tr("none yet"));
    if (m_folder) {
        lookOutside(*m_folder);
    }
}

// A disk that is gone can keep who asks waiting.
void BackupView::lookOutside(const std::filesystem::path& folder) {
    m_looks.start([this, folder, workshop = m_session.stores().upkeep.folder()] {
        const OutsidePlace place = lookAt(folder, workshop);
        const auto show = [this, folder, place] {
            if (m_folder == folder) {
                m_place->setInk(place.isThere && !place.isSameDisk ? Ink::quiet : Ink::open);
                m_place->setText(placeWords(place));
                // What can't be reached is not what to press.
                m_again->setProperty(kMainButton, place.isThere);
                m_elsewhere->setProperty(kMainButton, !place.isThere);
                m_again->update();
                m_elsewhere->update();
            }
        };
        QMetaObject::invokeMethod(this, show, Qt::QueuedConnection);
    });
}

void BackupView::backUpAgain() {
    if (!m_folder) {
        backUpElsewhere();
    } else if (!m_work->isRunning()) {
        begin(KeepingWork::Kind::backup);
        m_work->backUp(*m_folder);
    }
}

void BackupView::backUpElsewhere() {
    if (m_work->isRunning()) {
        return;
    }
    if (const auto folder =
            m_session.prompts().folder(tr("A folder outside the workshop for its backup"))) {
        begin(KeepingWork::Kind::backup);
        m_work->backUp(folder->toStdString());
    }
}

void BackupView::restore() {
    if (m_work->isRunning()) {
        return;
    }
    const auto backup = m_session.prompts().folder(tr("The folder of the backup"));
    const auto folder =
        backup ? m_session.prompts().folder(tr("A new or empty folder for the restored workshop"))
               : std::nullopt;
    if (folder) {
        begin(KeepingWork::Kind::restore);
        m_work->restore(backup->toStdString(), folder->toStdString());
    }
}

void BackupView::begin(KeepingWork::Kind kind) {
    m_progress->setText(progressWords(kind, 0, 0));
    // One connection a piece of work, which knows what it is of.
    disconnect(m_work, &KeepingWork::progressed, this, nullptr);
    connect(m_work, &KeepingWork::progressed, this, [this, kind](qint64 done, qint64 total) {
        m_progress->setText(progressWords(kind, done, total));
    });
    setRunning(true);
}

void BackupView::done(const KeepingWork::Outcome& outcome) {
    setRunning(false);
    const bool isWell = !outcome.failure && !outcome.wasStopped;
    m_outcome->setInk(isWell ? Ink::settled : outcome.failure ? Ink::must : Ink::open);
    m_outcome->setText(outcomeWords(outcome));
    m_outcome->show();
    if (outcome.kind == KeepingWork::Kind::restore && isWell) {
        m_restored = QString::fromStdString(outcome.folder.string());
        m_openRestored->show();
        m_openRestored->setFocus(Qt::OtherFocusReason);
    }
    refresh();
    if (!isVisible()) {
        m_session.say({isWell ? Notice::Kind::done : Notice::Kind::failed, outcomeWords(outcome)});
    }
}

void BackupView::setRunning(bool isRunning) {
    for (QPushButton* button : {m_again, m_elsewhere, m_restore}) {
        button->setEnabled(!isRunning);
    }
    m_progress->setVisible(isRunning);
    m_stop->setVisible(isRunning);
    if (isRunning) {
        m_outcome->hide();
        m_openRestored->hide();
        m_stop->setFocus(Qt::OtherFocusReason);
    } else if (isVisible()) {
        (m_folder ? m_again : m_elsewhere)->setFocus(Qt::OtherFocusReason);
    }
}

bool BackupView::back() {
    if (!m_work->isRunning()) {
        return false;
    }
    m_work->stop();
    return true;
}

} // namespace headcap::app
