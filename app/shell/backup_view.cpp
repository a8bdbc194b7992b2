#include "app/shell/backup_view.h"

#include <memory>

#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/backup_words.h"
#include "app/shell/work_strip.h"

namespace headcap::app {
namespace {

constexpr qsizetype kMostLines = 200;

QPushButton* quiet(const QString& words, const QString& tip) {
    auto* button = new QPushButton(words);
    button->setProperty(kQuietButton, true);
    button->setToolTip(tip);
    return button;
}

Label* running(Ink ink, const QString& text = {}) {
    auto* label = new Label(Face::body, ink, text);
    label->setRunning();
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

} // namespace

BackupView::BackupView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_keeping(core::safeKeepingOf(session.stores().upkeep)),
      m_outside(running(Ink::ink)), m_folder(running(Ink::ink)), m_inside(running(Ink::ink)),
      m_found(running(Ink::ink)), m_backUp(new QPushButton(tr("Back up now"))),
      m_choose(quiet(tr("Choose the folder …"), tr("On another disk, or another machine's"))),
      m_restore(quiet(tr("Restore a backup …"), tr("Into a new or empty folder"))),
      m_check(quiet(tr("Check everything"),
                    tr("Database, search, journal, every record, every file, the ledger"))),
      m_mend(quiet(tr("Look for missing files …"),
                   tr("In a backup or any folder; they are known by what they hold"))) {
    m_outside->setAccessibleName(tr("Last backup outside"));
    m_folder->setAccessibleName(tr("Folder of the backups"));
    m_inside->setAccessibleName(tr("Last copy inside"));
    m_found->setAccessibleName(tr("What was found"));
    m_backUp->setToolTip(tr("Copies what the folder lacks, while everybody works on"));
    auto* sheet = new QWidget;
    sheet->setMaximumWidth(1120);
    auto* down = new QVBoxLayout(sheet);
    layOut(*down);
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(sheet);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    connectParts();
}

QBoxLayout* BackupView::section(QBoxLayout& down, const QString& heading,
                                std::initializer_list<QPushButton*> buttons) {
    auto* head = new QHBoxLayout;
    head->addWidget(new Label(Face::heading, Ink::ink, heading), 1);
    for (QPushButton* button : buttons) {
        head->addWidget(button);
    }
    down.addSpacing(kSection);
    down.addLayout(head);
    down.addWidget(new HairRule);
    down.addSpacing(kGap);
    return &down;
}

void BackupView::layOut(QBoxLayout& down) {
    down.setContentsMargins(15 * kGrid, 8 * kGrid, 15 * kGrid, kSection);
    down.setSpacing(kGrid);
    down.addWidget(new Label(Face::title, Ink::ink, title()));
    down.addWidget(
        new Label(Face::small, Ink::quiet, tr("What lies on another disk outlives this one.")));
    section(down, tr("Outside this workshop"), {m_choose, m_backUp});
    down.addWidget(m_outside);
    down.addWidget(m_folder);
    down.addWidget(
        running(Ink::quiet, tr("Everything: records, photographs, attachments and issued reports. "
                               "Only what the folder lacks is copied, and each file is checked.")));
    down.addWidget(new WorkStrip(m_work));
    section(down, tr("Inside this workshop"), {});
    down.addWidget(m_inside);
    down.addWidget(
        running(Ink::quiet, tr("When the workshop is opened and the newest copy of its records is "
                               "over a day old, another is made; the newest ten are kept. A "
                               "lost disk takes them with it.")));
    section(down, tr("Check and mend"), {m_mend, m_check});
    down.addWidget(m_found);
    down.addWidget(running(Ink::quiet, tr("Reads everything and changes nothing. A database that "
                                          "is damaged is saved by “headcap salvage”, into a new "
                                          "workshop.")));
    section(down, tr("Restore"), {m_restore});
    down.addWidget(running(Ink::quiet, tr("A backup becomes a workshop in a new or empty folder. "
                                          "This one stays as it is.")));
    down.addStretch(1);
    m_restore->setVisible(m_keeping != nullptr);
    m_mend->setVisible(m_keeping != nullptr);
    m_found->hide();
}

void BackupView::connectParts() {
    connect(m_backUp, &QPushButton::clicked, this, &BackupView::backUp);
    connect(m_choose, &QPushButton::clicked, this, &BackupView::chooseFolder);
    connect(m_restore, &QPushButton::clicked, this, &BackupView::restore);
    connect(m_check, &QPushButton::clicked, this, &BackupView::check);
    connect(m_mend, &QPushButton::clicked, this, &BackupView::mend);
    connect(&m_work, &LongWork::finished, this, [this](const Notice& notice) {
        for (QPushButton* button : {m_backUp, m_choose, m_restore, m_check, m_mend}) {
            button->setEnabled(true);
        }
        m_backUp->setFocus();
        if (!notice.sentence.isEmpty()) {
            m_session.say(notice);
        }
        refresh();
    });
}

bool BackupView::enter(const Destination&) {
    refresh();
    m_backUp->setFocus();
    return true;
}

void BackupView::refresh() {
    m_session.guarded([this] {
        const auto& upkeep = m_session.stores().upkeep;
        const QString due = backupDueWords(m_session.stores(), m_session.clock());
        m_outside->setText(
            tr("Last backup: %1")
                .arg(lastBackupWords(upkeep.lastOutsideBackup(), m_session.clock())));
        m_outside->setInk(due.isEmpty() ? Ink::ink : Ink::open);
        const auto inside = m_keeping != nullptr ? m_keeping->lastInsideBackup() : std::nullopt;
        m_inside->setText(tr("Last copy: %1").arg(lastBackupWords(inside, m_session.clock())));
        m_folder->setText(folder().isEmpty() ? tr("No folder has been chosen yet.")
                                             : tr("Into %1").arg(folder()));
    });
}

void BackupView::showFound(const QStringList& lines) {
    QStringList shown = lines.mid(0, kMostLines);
    if (lines.size() > kMostLines) {
        shown << tr("… and %1 more.").arg(lines.size() - kMostLines);
    }
    m_found->setText(shown.join(u'\n'));
    m_found->setVisible(!lines.isEmpty());
}

void BackupView::begin(const QString& what, const QString& failed, const LongWork::Work& work) {
    if (m_work.start(what, failed, work)) {
        for (QPushButton* button : {m_backUp, m_choose, m_restore, m_check, m_mend}) {
            button->setEnabled(false);
        }
    }
}

QString BackupView::folder() const {
    if (!m_chosen.isEmpty() || m_keeping == nullptr) {
        return m_chosen;
    }
    const auto last = m_keeping->outsideFolder();
    return last ? fromCore(last->string()) : QString{};
}

void BackupView::chooseFolder() {
    if (const auto chosen =
            m_session.prompts().folder(tr("A folder for backups, on another disk"))) {
        m_chosen = *chosen;
        refresh();
    }
}

void BackupView::backUp() {
    if (folder().isEmpty()) {
        chooseFolder();
    }
    if (folder().isEmpty()) {
        return;
    }
    begin(tr("Backing up"), tr("The backup was not made"),
          [this, &upkeep = m_session.stores().upkeep,
           to = toCore(folder())](const core::Progress& progress) {
              const auto report = upkeep.backup(to, progress);
              return Notice{Notice::Kind::done, m_work.wasStopped()
                                                    ? tr("Stopped. What was copied stays, and the "
                                                         "backup made before holds.")
                                                    : sentence(report)};
          });
}

void BackupView::restore() {
    const auto from = m_session.prompts().folder(tr("The folder of the backup"));
    const auto to = from ? m_session.prompts().folder(tr("A new or empty folder for the workshop"))
                         : std::nullopt;
    if (!to) {
        return;
    }
    const QString done =
        tr("Restored to %1. %2 opens it.")
            .arg(*to, QStringLiteral("“%1” (%2)")
                          .arg(wordsOf(ActionId::otherWorkshop), keyText(ActionId::otherWorkshop)));
    begin(tr("Restoring"), tr("The backup was not restored whole"),
          [keeping = m_keeping, backup = toCore(*from), folder = toCore(*to), done,
           stopped = tr("Stopped; nothing was restored.")](const core::Progress& progress) {
              const bool isThere = keeping->restore(backup, folder, progress);
              return Notice{Notice::Kind::done, isThere ? done : stopped};
          });
}

void BackupView::check() {
    const auto found = std::make_shared<QStringList>();
    begin(tr("Checking"), tr("The workshop could not be checked"),
          [&upkeep = m_session.stores().upkeep, found](const core::Progress& progress) {
              *found = linesOf(upkeep.verify(progress));
              return Notice{};
          });
    connect(
        &m_work, &LongWork::finished, this, [this, found] { showFound(*found); },
        Qt::SingleShotConnection);
}

void BackupView::mend() {
    const auto folder =
        m_session.prompts().folder(tr("Where the missing files may be: a backup, a camera's card"));
    if (!folder) {
        return;
    }
    const auto found = std::make_shared<QStringList>();
    begin(tr("Looking"), tr("The files could not be looked for"),
          [keeping = m_keeping, found, from = toCore(*folder)](const core::Progress& progress) {
              *found = linesOf(keeping->mendFiles(from, progress));
              return Notice{};
          });
    connect(
        &m_work, &LongWork::finished, this, [this, found] { showFound(*found); },
        Qt::SingleShotConnection);
}

} // namespace headcap::app
