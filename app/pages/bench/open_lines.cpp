#include "app/pages/bench/open_lines.h"

#include <algorithm>

#include <QGridLayout>
#include <QMenu>
#include <QPushButton>
#include <QTimer>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/pages/bench/work_button.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/treatment/clocks.h"
#include "core/treatment/totals.h"
#include "core/treatment/work_at_hand.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr std::size_t kShown = 5; // beside the first button; where there are more, one is a list
constexpr int kColumns = 3;
constexpr int kTickMs = 5'000;
constexpr const char* kWork = "work"; // the line of a button, or its clock where it is of no line

QString needsOf(const core::ProposalLine& line) {
    QStringList said;
    if (line.minutes > core::Minutes{0}) {
        said << fromCore(core::toText(line.minutes));
    }
    said << fromCore(line.materials) << fromCore(line.description);
    return dotted(said);
}

} // namespace

OpenLines::OpenLines(const core::Clock& clock, QWidget* parent)
    : QWidget(parent), m_clock(clock), m_add(new WorkButton), m_grid(new QGridLayout(this)) {
    m_add->setToolTip(tr("Logs a step with all its fields (%1)").arg(keyText(ActionId::addRecord)));
    connect(m_add, &QPushButton::clicked, this, &OpenLines::addAsked);
    m_grid->setContentsMargins(0, 0, 0, kGap);
    m_grid->setSpacing(kGap);
    for (int i = 0; i < kColumns; ++i) {
        m_grid->setColumnStretch(i, 1);
    }
    m_grid->addWidget(m_add, 0, 0);
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &OpenLines::tick);
    timer->start(kTickMs);
    setWriting(false);
}

void OpenLines::setWriting(bool isWriting) {
    const QString words = isWriting ? tr("Go on with the step") : tr("Log a step");
    m_add->setAccessibleName(words);
    qobject_cast<WorkButton*>(m_add)->show(
        words, isWriting ? tr("begun, not logged yet") : tr("with all its fields"),
        WorkButton::Mark::none);
}

void OpenLines::clear() {
    for (QWidget* widget : m_placed) {
        m_grid->removeWidget(widget);
        widget->hide();
        widget->deleteLater(); // one of them may be the one that was touched
    }
    m_placed.clear();
    m_buttons.clear();
}

void OpenLines::place(QWidget* widget) {
    const auto at = static_cast<int>(m_placed.size()) + 1;
    m_grid->addWidget(widget, at / kColumns, at % kColumns);
    widget->setVisible(true); // at once, so that it can take the focus
    m_placed.push_back(widget);
}

WorkButton* OpenLines::addButton() {
    auto* button = new WorkButton;
    m_buttons.push_back(button);
    place(button);
    return button;
}

void OpenLines::show(const core::JobFile& file) {
    const QString held = heldWork();
    m_file = file;
    clear();
    const std::size_t lines = core::approvedLines(*m_file).size();
    const core::WorksAtHand works =
        m_isFolded ? core::workAtHand(*m_file)
                   : core::worksAtHand(*m_file, lines > kShown ? kShown - 1 : kShown);
    for (const core::WorkAtHand& work : works.shown) {
        if (work.clock != nullptr) {
            addClock(*work.clock);
        } else {
            addLine(*work.line);
        }
    }
    if (works.rest.size() == 1) {
        addLine(*works.rest.front());
    } else if (!works.rest.empty()) {
        addRest(works.rest);
    }
    tick();
    if (!held.isEmpty()) {
        hold(held);
    }
}

// The work whose button has the focus: what is pressed stays under the hand when the buttons are
// made anew.
QString OpenLines::heldWork() const {
    for (const WorkButton* button : m_buttons) {
        if (button->hasFocus()) {
            return button->property(kWork).toString();
        }
    }
    return {};
}

void OpenLines::hold(const QString& work) {
    for (WorkButton* button : m_buttons) {
        if (button->property(kWork).toString() == work) {
            button->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
    m_add->setFocus(Qt::OtherFocusReason);
}

void OpenLines::setFolded(bool isFolded) {
    if (m_isFolded == isFolded) {
        return;
    }
    m_isFolded = isFolded;
    if (m_file) {
        show(core::JobFile{*m_file});
    }
}

void OpenLines::addClock(const core::BenchClock& clock) {
    WorkButton* button = addButton();
    button->setProperty("clock", fromCore(clock.id.text()));
    button->setProperty(kWork, fromCore(clock.line ? clock.line->text() : clock.id.text()));
    connect(button, &QPushButton::clicked, this, [this, clock] {
        if (clock.stoppedAt) {
            Q_EMIT logAsked(clock);
        } else {
            Q_EMIT stopAsked(clock);
        }
    });
}

void OpenLines::addLine(const core::ProposalLine& line) {
    WorkButton* button = addButton();
    button->setProperty(kWork, fromCore(line.id.text()));
    const QString title = fromCore(core::lineTitle(line, m_file->techniques));
    const core::LineWork work = core::workedOn(*m_file, line);
    const QString needs = work.steps == 0 ? needsOf(line)
                                          : tr("%1 of about %2")
                                                .arg(fromCore(core::toText(work.minutes)),
                                                     fromCore(core::toText(line.minutes)));
    button->show(title, needs, WorkButton::Mark::starts);
    button->setAccessibleName(tr("Start the clock: %1").arg(title));
    button->setAccessibleDescription(needs);
    button->setToolTip(tr("Starts the clock of “%1”. %2").arg(title, needs).trimmed());
    connect(button, &QPushButton::clicked, this, [this, line] { Q_EMIT startAsked(line); });
}

void OpenLines::addRest(const std::vector<const core::ProposalLine*>& rest) {
    auto* button = new QPushButton(tr("%1 more lines").arg(rest.size()));
    button->setMinimumHeight(m_add->sizeHint().height());
    button->setToolTip(tr("Approved lines: one touch starts the clock"));
    auto* menu = new QMenu(button);
    menu->setFont(faceFont(Face::bench));
    for (const core::ProposalLine* line : rest) {
        connect(menu->addAction(fromCore(core::lineTitle(*line, m_file->techniques))),
                &QAction::triggered, this, [this, line = *line] { Q_EMIT startAsked(line); });
    }
    button->setMenu(menu);
    place(button);
}

bool OpenLines::goTo(const core::Uuid& clock) {
    for (WorkButton* button : m_buttons) {
        if (button->property("clock").toString() == fromCore(clock.text())) {
            button->setFocus(Qt::OtherFocusReason);
            return true;
        }
    }
    return false;
}

void OpenLines::tick() {
    if (!m_file) {
        return;
    }
    const core::Instant now = m_clock.now();
    for (WorkButton* button : m_buttons) {
        const QString key = button->property("clock").toString();
        const auto found = std::ranges::find_if(m_file->clocks, [&](const core::BenchClock& one) {
            return fromCore(one.id.text()) == key;
        });
        if (found == m_file->clocks.end()) {
            continue;
        }
        const QString title = fromCore(core::clockTitle(*found, m_file->techniques));
        const QString ran = fromCore(core::toText(core::ranFor(*found, now)));
        const core::Person* who = m_file->person(found->who);
        const QString by = who == nullptr ? QString{} : fromCore(who->initials);
        if (found->stoppedAt) {
            button->show(title, tr("%1 measured, not logged").arg(ran), WorkButton::Mark::toLog);
            button->setAccessibleName(tr("Log %1: %2").arg(ran, title));
            button->setToolTip(tr("Logs the step with its %1").arg(ran));
            continue;
        }
        const QString since = tr("since %1").arg(clockTime(found->startedAt));
        button->show(title,
                     core::isForgotten(*found, now) ? tr("%1: forgotten?").arg(ran)
                                                    : dotted({ran, since, by}),
                     WorkButton::Mark::stops);
        button->setAccessibleName(tr("Stop the clock: %1, %2").arg(title, ran));
        button->setToolTip(tr("Stops the clock, and logs the step"));
    }
}

} // namespace headcap::app
