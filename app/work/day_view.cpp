#include "app/work/day_view.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/form/ruled_table.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/scrolled_page.h"
#include "app/session/actions.h"
#include "app/stock/fit_height.h"
#include "app/stock/plain_form.h"
#include "app/work/day_rows.h"
#include "app/work/sheet_paper.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr int kDayMark = 88;       // one grid for all lists of the day
constexpr int kMostHeight = 4'000; // the page scrolls, the tables do not

void put(RuledTable& table, std::vector<TableRow> rows) {
    table.setVisible(!rows.empty());
    table.show(std::move(rows));
}

} // namespace

DayView::DayView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_day(new Label(Face::slip)),
      m_sum(new Label(Face::smallStrong)),
      m_before(quietButton(tr("‹ Day before"), tipOf(ActionId::dayBefore))),
      m_today(quietButton(tr("Today"), tipOf(ActionId::today))),
      m_after(quietButton(tr("Day after ›"), tipOf(ActionId::dayAfter))),
      m_copy(quietButton(tr("Copy as text"), tipOf(ActionId::copyAsText))),
      m_log(new RuledTable(tr("Steps of the day"),
                           {.mark = kDayMark, .right = 88, .title = 5, .middle = {5, 3}})),
      m_sums(new RuledTable(tr("By person and by job"),
                            {.mark = kDayMark, .right = 88, .title = 5, .middle = {5, 3}})),
      m_settingHeading(new Label(Face::heading, Ink::ink, tr("Setting"))),
      m_settings(new RuledTable(tr("Setting"),
                                {.mark = kDayMark, .right = 88, .title = 5, .middle = {5, 3}})),
      m_period(new PlainForm),
      m_hours(new RuledTable(tr("Hours by person"),
                             {.mark = kDayMark, .right = 88, .title = 5, .middle = {5, 3}})),
      m_nothing(new Label(Face::body, Ink::quiet)), m_aside(session, this) {
    m_from = &m_period->line(tr("From"), tr("1 Mar; empty: the Monday of this week"));
    m_to = &m_period->line(tr("To"), tr("31 Mar; empty: the day shown"));
    m_asked = session.clock().today();
    layOut();
    connectAll();
}

void DayView::layOut() {
    auto* down =
        scrolledPage(this, title(), tr("What was done in every job, by whom and how long."), 1280);
    m_day->setAccessibleName(tr("The day shown"));
    auto* head = new QHBoxLayout;
    head->setSpacing(kGap);
    head->addWidget(m_day);
    head->addSpacing(kSpace);
    head->addWidget(m_sum, 1);
    for (QPushButton* button : {m_before, m_today, m_after, m_copy}) {
        head->addWidget(button);
    }
    down->addSpacing(kSpace);
    down->addLayout(head);
    down->addWidget(new HairRule);
    down->addSpacing(kGap);
    down->addWidget(m_log);
    m_nothing->setRunning();
    down->addWidget(m_nothing);
    down->addSpacing(kSpace);
    down->addWidget(m_sums);
    down->addSpacing(kSection);
    down->addWidget(m_settingHeading);
    down->addWidget(m_settings);
    addHeading(*down, tr("Hours by person"));
    down->addWidget(m_period);
    down->addSpacing(kGap);
    down->addWidget(m_hours);
    down->addStretch(1);
}

void DayView::connectAll() {
    const auto move = [this](int days) { showDay(core::dayAfter(m_asked, days)); };
    const auto on = [this](ActionId id, QPushButton* button, auto work) {
        connect(app::addAction(this, id), &QAction::triggered, this, work);
        connect(button, &QPushButton::clicked, this, work);
    };
    on(ActionId::dayBefore, m_before, [move] { move(-1); });
    on(ActionId::dayAfter, m_after, [move] { move(1); });
    on(ActionId::today, m_today, [this] { showDay(m_session.clock().today()); });
    on(ActionId::copyAsText, m_copy, [this] { copy(); });
    for (RuledTable* table : {m_log, m_settings}) {
        connect(table, &RuledTable::opened, this, [this, table] { openCurrent(*table); });
        connect(table, &QListView::clicked, this, [this, table] { openCurrent(*table); });
    }
    for (FieldRow* row : {m_from, m_to}) {
        connect(row, &FieldRow::edited, this, &DayView::refresh);
    }
}

DayView::Asked DayView::asked() const {
    const ReadingContext context{.today = m_session.clock().today()};
    const auto from = valueOf<core::Day>(*m_from, context).value_or(core::weekBegin(m_asked));
    const auto to = valueOf<core::Day>(*m_to, context).value_or(m_asked);
    return {m_asked, from, std::max(from, to)};
}

DayView::Read DayView::read(const core::RecordStore& records, const core::Clock& clock,
                            const Asked& asked) {
    core::IdSource keys{clock}; // of rows that are no record
    Read read{.day = core::loadDay(records, clock, asked.day, asked.from, asked.to),
              .techniques = core::loadTechniques(records)};
    read.steps = stepRows(read.day, read.techniques);
    read.sums = sumRows(read.day, keys);
    read.settings = settingRows(read.day, clock);
    read.hours = hourRows(read.day, keys);
    return read;
}

// The period may be years: read elsewhere, and shown when it is there.
void DayView::refresh() {
    m_day->setText(fullDay(m_asked));
    m_today->setVisible(m_asked != m_session.clock().today());
    m_aside.ask([&records = m_session.records(), &clock = m_session.clock(),
                 asked = asked()] { return read(records, clock, asked); },
                [this](Read read) { showRead(std::move(read)); });
}

void DayView::showRead(Read read) {
    m_shown = std::move(read.day);
    m_techniques = std::move(read.techniques);
    const core::Minutes minutes = core::minutesOf(m_shown.work);
    m_sum->setText(minutes > core::Minutes{0} ? tr("%1 in all").arg(fromCore(core::toText(minutes)))
                                              : QString{});
    put(*m_log, std::move(read.steps));
    m_nothing->setVisible(m_shown.work.empty());
    m_nothing->setText(m_shown.day == m_session.clock().today()
                           ? tr("Nothing is logged today yet. In a job, %1 goes to the bench "
                                "line: type what was done.")
                                 .arg(keyText(ActionId::toBenchLine))
                           : tr("Nothing was logged on this day."));
    put(*m_sums, std::move(read.sums));
    put(*m_settings, std::move(read.settings));
    m_settingHeading->setVisible(!m_shown.settings.empty());
    put(*m_hours, std::move(read.hours));
    fit();
    takeFocus();
}

void DayView::takeFocus() {
    if (m_isEntering && m_before->hasFocus() && !m_shown.work.empty()) {
        m_log->setFocus(Qt::OtherFocusReason);
    }
    m_isEntering = false;
}

// A row is higher where it is narrow.
void DayView::fit() {
    for (RuledTable* table : {m_log, m_sums, m_settings, m_hours}) {
        fitHeight(*table, kMostHeight);
    }
}

void DayView::resizeEvent(QResizeEvent* event) {
    View::resizeEvent(event);
    QTimer::singleShot(0, this, &DayView::fit);
}

void DayView::showDay(core::Day day) {
    m_asked = day;
    refresh();
}

bool DayView::enter(const Destination&) {
    m_isEntering = true;
    m_before->setFocus(Qt::OtherFocusReason);
    showDay(m_session.clock().today());
    return true;
}

void DayView::openCurrent(const RuledTable& table) {
    const auto id = table.current();
    for (const core::WorkDone& one : m_shown.work) {
        if (id && one.step.id.uuid() == *id) {
            Q_EMIT goAsked({.view = ViewId::job,
                            .job = one.step.job,
                            .page = core::Page::bench,
                            .record = core::refOf(one.step.id)});
            return;
        }
    }
    for (const core::SettingWork& one : m_shown.settings) {
        if (id && one.setting.id.uuid() == *id) {
            Q_EMIT goAsked(
                {.view = ViewId::job, .job = one.setting.job, .page = core::Page::bench});
            return;
        }
    }
}

core::Document DayView::document() {
    std::string workshop;
    m_session.guarded([&] {
        if (isReading()) { // on paper goes what was asked for
            showRead(read(m_session.records(), m_session.clock(), asked()));
        }
        for (const auto& one : core::all<core::Workshop>(m_session.records())) {
            workshop = one.record.name;
        }
    });
    return core::daySheet(m_shown,
                          {.workshop = workshop,
                           .techniques = m_techniques,
                           .clockText = [](core::Instant at) { return toCore(clockTime(at)); }},
                          m_session.clock());
}

QString DayView::asText() {
    return fromCore(core::plainText(document()));
}

void DayView::copy() {
    QGuiApplication::clipboard()->setText(asText());
    m_session.say({Notice::Kind::done, tr("Copied: %1.").arg(fullDay(m_shown.day))});
}

bool DayView::print() {
    printSheet(m_session, document(), this);
    return true;
}

} // namespace headcap::app
