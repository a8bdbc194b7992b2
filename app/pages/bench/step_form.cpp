#include "app/pages/bench/step_form.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/pages/bench/check_rows.h"
#include "app/pages/bench/step_fields.h"
#include "app/pages/bench/step_words.h"
#include "app/pages/bench/uses_editor.h"
#include "app/session/actions.h"
#include "core/treatment/undoing.h"

namespace headcap::app {
namespace {

constexpr int kTickMs = 5'000;

} // namespace

StepForm::StepForm(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_heading(new Label(Face::slip)),
      m_advice(new Label(Face::small, Ink::quiet)), m_scroll(new QScrollArea),
      m_reason(new FieldRow(tr("Corrected because"), new QLineEdit, nullptr)),
      m_fields(new StepFields(session, this)), m_uses(new UsesEditor(session)),
      m_checks(new CheckRows), m_log(new QPushButton(tr("Log it"))),
      m_drop(quietButton(tr("Drop it"), tr("Nothing of it is logged"))),
      m_dropClock(quietButton(tr("Drop the minutes too"),
                              tr("The clock was started by mistake: nothing was worked"))),
      m_more(quietButton({})) {
    layOut();
    connectParts();
}

void StepForm::connectParts() {
    m_more->setAccessibleName(tr("More conditions"));
    connect(m_more, &QPushButton::clicked, m_fields, &StepFields::showAllConditions);
    connect(m_dropClock, &QPushButton::clicked, this, [this] {
        if (m_clock) {
            Q_EMIT dropClockAsked(*m_clock);
        }
    });
    connect(m_fields, &StepFields::hiddenChanged, this, [this](const QStringList& hidden) {
        m_more->setText(tr("More: %1 …").arg(hidden.join(QStringLiteral(", "))));
        m_more->setVisible(!hidden.isEmpty());
    });
    connect(m_log, &QPushButton::clicked, this, &StepForm::logAsked);
    connect(m_drop, &QPushButton::clicked, this, &StepForm::dropAsked);
    connect(m_fields, &StepFields::adviceChanged, this, [this](const QString& words) {
        m_advice->setText(words);
        m_advice->setVisible(!words.isEmpty());
    });
    connect(m_fields, &StepFields::techniqueChanged, this, [this](const std::string& technique) {
        showChecks(technique);
        m_uses->follow(technique);
    });
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, m_fields, &StepFields::tick);
    timer->start(kTickMs);
}

void StepForm::layOut() {
    m_heading->setWordWrap(true);
    m_advice->setWordWrap(true);
    m_log->setDefault(true);
    m_log->setToolTip(tipOf(ActionId::logStep));
    for (QPushButton* button : {m_log, m_drop, m_dropClock, m_more}) {
        button->setMinimumHeight(kBenchControl);
    }
    for (FieldRow* row : m_fields->form().rows()) {
        row->setLeastHeight(kBenchControl);
    }
    m_reason->setLeastHeight(kBenchControl);
    m_reason->setLabelWidth(m_fields->form().widestLabel());
    m_reason->placeholder(tr("what was wrong in it"));

    auto* sheet = new QWidget;
    auto* rows = new QVBoxLayout(sheet);
    rows->setContentsMargins(0, 0, kSpace, 0);
    rows->setSpacing(kGap);
    rows->addWidget(m_reason);
    rows->addWidget(&m_fields->form());
    rows->addWidget(m_more, 0, Qt::AlignLeft);
    rows->addWidget(m_advice);
    rows->addWidget(m_uses);
    rows->addWidget(m_checks);
    rows->addStretch();
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(sheet);

    auto* ways = new QHBoxLayout;
    ways->setSpacing(kGap);
    ways->addWidget(m_log, 2);
    ways->addWidget(m_drop, 1);
    ways->addWidget(m_dropClock, 1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 3 * kGrid, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_heading);
    down->addWidget(m_scroll, 1);
    down->addLayout(ways);
}

void StepForm::show(const StepDraft& draft, const core::JobFile& file) {
    m_techniques = file.techniques;
    m_fields->show(draft.logged.step, file);
    m_uses->show(draft.logged.step, draft.logged.uses, file);
    m_clock = draft.clock;
    m_dropClock->setVisible(m_clock.has_value());
    m_checks->clear();
    if (!draft.isCorrection()) { // which keeps those of the step it corrects
        showChecks(draft.logged.step.technique);
    }
    for (const core::StepCheck& check : draft.checks) {
        for (CheckRow* row : m_checks->rows()) {
            if (row->what() == fromCore(check.what)) {
                row->show(check.done, fromCore(check.whyNot));
            }
        }
    }
    m_reason->accept(fromCore(draft.reason));
    m_reason->setVisible(draft.isCorrection());
    const core::Step* old = file.step(draft.logged.step.corrects);
    m_heading->setText(
        old == nullptr
            ? tr("A step, not logged yet")
            : tr("Instead of the entry of %1").arg(timeAndDay(old->at, m_session.clock())));
    m_scroll->verticalScrollBar()->setValue(0);
}

void StepForm::refresh(const core::JobFile& file) {
    m_techniques = file.techniques;
    m_fields->refresh(file);
    if (isWriting()) {
        m_uses->refresh();
    }
}

void StepForm::showChecks(const std::string& technique) {
    std::vector<QString> checks;
    if (const core::Technique* known = m_techniques.named(technique)) {
        for (const std::string& what : known->checks) {
            checks.push_back(fromCore(what));
        }
    }
    m_checks->show(checks);
}

std::vector<core::StepCheck> StepForm::checksOf(const core::Step& step) const {
    std::vector<core::StepCheck> checks;
    for (const CheckRow* row : m_checks->rows()) {
        if (row->isMade() || row->isRefused()) {
            checks.push_back({.id = m_session.ids().next<core::StepCheck>(),
                              .job = step.job,
                              .step = step.id,
                              .what = toCore(row->what()),
                              .done = row->isMade(),
                              .whyNot = row->isMade() ? std::string{} : toCore(row->whyNot())});
        }
    }
    return checks;
}

void StepForm::drop() {
    m_fields->form().clear();
    m_uses->clear();
    m_checks->clear();
    m_clock.reset();
}

bool StepForm::isWriting() const {
    return m_fields->form().record().has_value();
}

std::optional<StepDraft> StepForm::draft() {
    if (!isWriting()) {
        return std::nullopt;
    }
    QStringList labels;
    StepDraft draft{{m_fields->form().taken(labels), m_uses->taken()},
                    toCore(m_reason->text().trimmed()),
                    m_clock};
    draft.checks = checksOf(draft.logged.step);
    return draft;
}

std::optional<StepDraft> StepForm::finished() {
    if (!isWriting()) {
        return std::nullopt;
    }
    StepDraft made{
        {m_fields->taken(), m_uses->taken()}, toCore(m_reason->text().trimmed()), m_clock};
    made.checks = checksOf(made.logged.step);
    FieldRow* wrong = m_fields->asked(made.logged.step);
    if (made.isCorrection() && made.reason.empty()) {
        m_reason->setError(tr("Why is it corrected?"));
        wrong = m_reason;
    }
    wrong = wrong == nullptr ? m_uses->troubled() : wrong;
    wrong =
        wrong == nullptr
            ? m_fields->askUndoing(core::undoingDoubt(made.logged, m_uses->shelf(), m_techniques))
            : wrong;
    if (wrong != nullptr) {
        goTo(wrong, wrong->control());
        return std::nullopt;
    }
    if (CheckRow* check = m_checks->troubled()) {
        goTo(check, &check->reason());
        return std::nullopt;
    }
    for (core::MaterialUse& use : made.logged.uses) {
        use.place = use.place.empty() ? made.logged.step.place : use.place;
    }
    return made;
}

void StepForm::goTo(QWidget* row, QWidget* control) {
    control->setFocus(Qt::OtherFocusReason);
    QTimer::singleShot(0, row,
                       [scroll = m_scroll, row] { scroll->ensureWidgetVisible(row, 0, kSpace); });
}

void StepForm::focusFirst() {
    if (m_reason->isVisibleTo(this)) {
        m_reason->control()->setFocus(Qt::OtherFocusReason);
    } else {
        m_fields->form().focusFirst();
    }
}

bool StepForm::event(QEvent* event) {
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            Q_EMIT leftBack();
        }
        return true;
    }
    return QWidget::event(event);
}

} // namespace headcap::app
