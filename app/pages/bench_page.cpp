#include "app/pages/bench_page.h"

#include <QAction>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/form/field_row.h"
#include "app/form/ruled_table.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/bench/open_lines.h"
#include "app/pages/bench/setting_strip.h"
#include "app/pages/bench/step_details.h"
#include "app/pages/bench/step_form.h"
#include "app/pages/bench/step_words.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/materials/ledger_in_brief.h"
#include "core/treatment/example_line.h"
#include "core/treatment/setting_times.h"

namespace headcap::app {
namespace {

// In a window lower than that, the page scrolls.
constexpr int kLeastLog = 300;
constexpr int kLeastPanel = 380;

} // namespace

BenchPage::BenchPage(Session& session, QWidget* parent)
    : JobPage(core::Page::bench, Body::fixed, session, parent),
      m_setting(new SettingStrip(session.clock())), m_lines(new OpenLines(session.clock())),
      m_log(new RuledTable(tr("Bench log"), {.mark = 64, .title = 9, .middle = {4, 7}})),
      m_empty(new Label(Face::body, Ink::quiet)), m_panel(new QStackedWidget),
      m_details(new StepDetails), m_form(new StepForm(session)), m_aside(new Aside(session, this)) {
    layOut();
    connectParts();
    addKeys();
}

void BenchPage::layOut() {
    m_empty->setRunning();
    m_log->setEnteredAtEnd();
    m_panel->addWidget(m_details);
    m_panel->addWidget(m_form);
    m_panel->hide();
    m_log->setMinimumHeight(kLeastLog);
    m_panel->setMinimumHeight(kLeastPanel);
    auto* across = new QHBoxLayout;
    across->setSpacing(6 * kGrid);
    across->addWidget(m_log, 10);
    across->addWidget(m_panel, 9);
    body().addWidget(m_setting);
    body().addWidget(m_lines);
    body().addWidget(m_empty);
    body().addLayout(across, 1);
    body().addStretch();
}

void BenchPage::connectParts() {
    m_log->installEventFilter(this);
    connect(m_lines, &OpenLines::addAsked, this, &BenchPage::startNew);
    connect(m_lines, &OpenLines::startAsked, this, &BenchPage::startClock);
    connect(m_lines, &OpenLines::stopAsked, this, &BenchPage::stopClock);
    connect(m_lines, &OpenLines::logAsked, this, &BenchPage::logClock);
    connect(m_setting, &SettingStrip::seen, this, &BenchPage::see);
    connect(m_details, &StepDetails::checkMade, this,
            [this](const QString& what) { answer(what, true, {}); });
    connect(m_details, &StepDetails::checkRefused, this,
            [this](const QString& what, const QString& whyNot) { answer(what, false, whyNot); });
    connect(m_log, &RuledTable::opened, this, [this] {
        openCurrent();
        m_details->focusFirst();
    });
    connect(m_log, &QListView::clicked, this, &BenchPage::openCurrent);
    connect(m_log, &RuledTable::currentMoved, this, [this] {
        if (m_panel->isVisible() && m_panel->currentWidget() == m_details) {
            openCurrent();
        }
    });
    connect(m_details, &StepDetails::correctAsked, this, &BenchPage::startCorrection);
    connect(m_details, &StepDetails::strikeAsked, this, &BenchPage::strike);
    connect(m_form, &StepForm::logAsked, this, &BenchPage::take);
    connect(m_form, &StepForm::dropAsked, this, [this] {
        m_form->drop();
        keepDraft(session().settings(), m_file->job.id, std::nullopt);
        closePanel();
    });
    connect(m_form, &StepForm::dropClockAsked, this, &BenchPage::dropClock);
    connect(m_details, &StepDetails::leftBack, this, &BenchPage::closePanel);
    connect(m_form, &StepForm::leftBack, this, &BenchPage::closePanel);
}

void BenchPage::addKeys() {
    connect(app::addAction(this, ActionId::addRecord), &QAction::triggered, this,
            &BenchPage::startNew);
    connect(app::addAction(this, ActionId::logStep), &QAction::triggered, this, &BenchPage::take);
    QAction* strikes = app::addAction(m_log, ActionId::removeRecord);
    strikes->setShortcutContext(Qt::WidgetShortcut);
    connect(strikes, &QAction::triggered, this, [this] {
        const core::Step* step = currentStep();
        if (step != nullptr && !step->struckAt) {
            openCurrent();
            m_details->askReason();
        }
    });
}

// The log does not search by what is typed: letters go up, to the line at the foot.
bool BenchPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const QString text = static_cast<QKeyEvent*>(event)->text();
        if (!text.isEmpty() && (text.front().isLetterOrNumber() || text == u'#')) {
            event->accept(); // or else it goes up twice
            QCoreApplication::sendEvent(this, event);
            event->accept();
            return true;
        }
    }
    return JobPage::eventFilter(watched, event);
}

void BenchPage::load(const core::JobFile& file) {
    const bool isOther = !m_file || m_file->job.id != file.job.id;
    m_file = file;
    if (isOther) {
        m_known.clear();
        m_log->select(std::nullopt);
        m_panel->hide();
        fold();
        m_form->drop();
        const auto kept = keptDraft(session().settings(), file.job.id);
        if (kept && file.step(kept->logged.step.id) == nullptr) {
            m_form->show(*kept, file);
        }
    }
    m_setting->show(file);
    m_lines->show(file);
    m_lines->setWriting(m_form->isWriting());
    m_form->refresh(file);
    showLog();
    if (m_panel->isVisible() && m_panel->currentWidget() == m_details) {
        openCurrent();
    }
}

// What is new since the page was last shown is marked, so that a line taken is seen to be taken.
void BenchPage::showLog() {
    std::optional<core::Uuid> fresh = m_log->fresh();
    const bool isFirst = m_known.empty();
    for (const core::Step& step : m_file->steps) {
        if (m_known.insert(step.id.uuid()).second && !isFirst) {
            fresh = step.id.uuid();
            reveal(m_log);
        }
    }
    m_log->show(logRows(*m_file, session().clock()));
    m_log->setFresh(isFirst ? std::nullopt : fresh);
    m_log->setVisible(!m_file->steps.empty());
    m_empty->setVisible(m_file->steps.empty());
    if (m_file->steps.empty()) {
        showExample();
    }
}

// Of what this job has: its approved lines, its places, the lots on the shelf.
void BenchPage::showExample() {
    const auto say = [this](const std::string& example) {
        m_empty->setText(tr("Nothing has been done yet. Say it in the line at the foot, as one "
                            "says it: “%1”. Or log a step with all its fields.")
                             .arg(fromCore(example)));
    };
    say(core::exampleLine(*m_file, core::Shelf{}));
    m_aside->ask([&store = session().records()] { return core::shelfInBrief(store); },
                 [this, say](const std::shared_ptr<const core::Shelf>& shelf) {
                     if (m_file) {
                         say(core::exampleLine(*m_file, *shelf));
                     }
                 });
}

bool BenchPage::leave() {
    if (m_file) {
        keepDraft(session().settings(), m_file->job.id, m_form->draft());
    }
    return JobPage::leave();
}

void BenchPage::startNew() {
    if (!m_file) {
        return;
    }
    if (m_form->isWriting()) {
        showPanel(m_form);
        m_form->focusFirst();
    } else if (const auto who = worker()) {
        show(newDraft(m_file->job.id, *who, session().clock().now(), session().ids()));
    }
}

void BenchPage::show(const StepDraft& draft) {
    m_form->show(draft, *m_file);
    keepDraft(session().settings(), m_file->job.id, draft);
    m_lines->setWriting(true);
    showPanel(m_form);
    m_form->focusFirst();
}

} // namespace headcap::app
