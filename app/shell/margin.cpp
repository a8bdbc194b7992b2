#include "app/shell/margin.h"

#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/style.h"
#include "app/session/actions.h"
#include "app/session/dates.h"
#include "app/session/words.h"
#include "app/shell/margin_note.h"
#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/record/acts_in_job.h"
#include "core/treatment/clocks.h"
#include "core/treatment/setting_times.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr int kOpenWidth = 300;
constexpr int kStripWidth = 52;
constexpr std::size_t kChangesShown = 3;
constexpr std::size_t kChangesLookedAt = 30; // in all jobs
constexpr int kTickMs = 20'000;

} // namespace

Margin::Margin(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_fold(new QPushButton(QStringLiteral("»"), this)),
      m_strip(new QPushButton(this)), m_scroll(new QScrollArea(this)) {
    for (QPushButton* button : {m_fold, m_strip}) {
        button->setProperty(kQuietButton, true);
        button->setToolTip(tipOf(ActionId::foldMargin));
        connect(button, &QPushButton::clicked, this, &Margin::foldAsked);
    }
    m_fold->setAccessibleName(tr("Fold the margin"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(kSpace, kGap, kGap, 0);
    down->setSpacing(0);
    down->addWidget(m_fold, 0, Qt::AlignRight);
    down->addWidget(m_strip, 0, Qt::AlignHCenter);
    down->addWidget(m_scroll, 1);
    down->addStretch();
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &Margin::tick);
    timer->start(kTickMs);
    setFolded(false);
}

void Margin::setFolded(bool isFolded) {
    m_isFolded = isFolded;
    m_fold->setVisible(!isFolded);
    m_scroll->setVisible(!isFolded);
    m_strip->setVisible(isFolded);
    layout()->setContentsMargins(isFolded ? kGrid : kSpace, kGap, isFolded ? kGrid : kGap, 0);
    setFixedWidth(isFolded ? kStripWidth : kOpenWidth);
}

void Margin::show(const core::JobFile& file, std::span<const core::AuditPoint> points,
                  core::Page page) {
    m_bars.clear();
    m_notes = new QWidget;
    m_down = new QVBoxLayout(m_notes);
    m_down->setContentsMargins(0, 0, kGrid, kSpace);
    m_down->setSpacing(kGrid);
    addPoints(points, page);
    if (page != core::Page::bench) { // which shows them itself, larger
        addSettings(file);
        addClocks(file);
    }
    addHazards(file);
    addLastChanges(file);
    m_down->addStretch(1);
    m_scroll->setWidget(m_notes); // the old one goes
    tick();

    const auto open = static_cast<int>(points.size());
    m_strip->setText(open > 0 ? tr("«\n%1\nopen").arg(open) : QStringLiteral("«"));
    m_strip->setAccessibleName(tr("Margin: %1 open").arg(open));
}

void Margin::addHeading(const QString& words) {
    if (m_down->count() > 0) {
        m_down->addSpacing(kSpace);
    }
    auto* heading = new Label(Face::heading, Ink::ink, words);
    heading->setContentsMargins(kGap, 0, 0, 0);
    m_down->addWidget(heading);
}

void Margin::addSettings(const core::JobFile& file) {
    for (const core::SettingTime& time : core::settingTimes(file, m_session.clock().now())) {
        if (m_bars.empty()) {
            addHeading(tr("Setting"));
        }
        const core::Day day = m_session.clock().dayOf(time.until);
        const core::Day today = m_session.clock().today();
        auto* bar = new SettingBar(
            time, time.isOver() ? tr("it has set") : tr("until %1").arg(clockTime(time.until)),
            day == today ? QString{} : weekday(day));
        m_bars.push_back(bar);
        m_down->addWidget(bar);
    }
}

void Margin::addClocks(const core::JobFile& file) {
    const core::Instant now = m_session.clock().now();
    bool isFirst = true;
    const auto add = [&](const core::BenchClock& clock, const QString& words) {
        if (isFirst) {
            addHeading(tr("Clocks"));
            isFirst = false;
        }
        auto* note =
            new MarginNote(fromCore(core::clockTitle(clock, file.techniques)), words, Ink::accent);
        connect(note, &MarginNote::chosen, this, [this, ref = core::refOf(clock.id)] {
            Q_EMIT pointChosen(ref, core::Page::bench);
        });
        m_down->addWidget(note);
    };
    for (const core::BenchClock* clock : core::runningClocks(file)) {
        add(*clock, tr("runs since %1").arg(clockTime(clock->startedAt)));
    }
    for (const core::BenchClock* clock : core::clocksToLog(file)) {
        add(*clock,
            tr("%1 measured, not logged").arg(fromCore(core::toText(core::ranFor(*clock, now)))));
    }
}

void Margin::addHazards(const core::JobFile& file) {
    bool isFirst = true;
    for (const core::Hazard& hazard : file.hazards) {
        if (!core::stillWarns(hazard)) {
            continue;
        }
        if (isFirst) {
            addHeading(tr("Hazards"));
            isFirst = false;
        }
        const core::HazardKind* kind = core::hazardNamed(hazard.term);
        QStringList below{fromCore(hazard.place)};
        if (kind != nullptr) {
            below << fromCore(kind->caution);
        }
        below.removeAll({});
        auto* note = new MarginNote(tr("%1: %2").arg(fromCore(core::hazardName(hazard.term)),
                                                     fromCore(core::standingOf(hazard))),
                                    below.join(QStringLiteral(". ")), Ink::open);
        connect(note, &MarginNote::chosen, this, [this, ref = core::refOf(hazard.id)] {
            Q_EMIT pointChosen(ref, core::Page::book);
        });
        m_down->addWidget(note);
    }
}

void Margin::addLastChanges(const core::JobFile& file) {
    std::vector<core::JournalEntry> acts;
    m_session.guarded([&] {
        acts =
            core::actsIn(file, m_session.stores().journal.latest(kChangesLookedAt), kChangesShown);
    });
    if (acts.empty()) {
        return;
    }
    addHeading(tr("Last changes"));
    for (const core::JournalEntry& act : acts) {
        auto* line = new Label(Face::small, Ink::quiet, fromCore(act.sentence));
        line->setWordWrap(true);
        line->setContentsMargins(kGap, 0, 0, 0);
        m_down->addWidget(line);
    }
    // Offered here for what is said here; the key takes back what was done last, wherever it was.
    const QString undoable = m_session.undoable();
    if (undoable == fromCore(acts.front().sentence)) {
        auto* undo = quietButton(tr("Undo"),
                                 tr("Takes back “%1” (%2)").arg(undoable, keyText(ActionId::undo)));
        undo->setAccessibleName(tr("Undo: %1").arg(undoable));
        connect(undo, &QPushButton::clicked, &m_session, &Session::undo, Qt::QueuedConnection);
        m_down->addWidget(undo, 0, Qt::AlignLeft);
    }
}

void Margin::tick() {
    const core::Instant now = m_session.clock().now();
    for (SettingBar* bar : m_bars) {
        bar->setNow(now);
    }
}

void Margin::focusFirst() {
    if (m_isFolded) {
        m_strip->setFocus(Qt::ShortcutFocusReason);
        return;
    }
    const auto notes = m_notes->findChildren<MarginNote*>();
    if (!notes.isEmpty()) {
        notes.front()->setFocus(Qt::TabFocusReason);
    } else {
        m_fold->setFocus(Qt::TabFocusReason);
    }
}

void Margin::paintEvent(QPaintEvent*) {
    QPainter{this}.fillRect(QRect(0, 0, 1, height()), coloursFor(palette()).rule);
}

} // namespace headcap::app
