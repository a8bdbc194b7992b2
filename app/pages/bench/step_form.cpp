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
StepForm::StepForm(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_heading(new Label(Face::slip)),
      m_advice(new Label(Face::small, Ink::quiet)), m_scroll(new QScrollArea),
      m_reason(new FieldRow(tr("Corrected because"), new QLineEdit, nullptr)),
      m_fields(new StepFields(session, this)), m_uses(new UsesEditor(session)),
      m_checks(new CheckRows), m_log(new QPushButton(tr("Log it"))),
      m_drop(quietButton(tr("Drop it"), tr("Nothing of it is logged"))),
      m_dropClock(quietButton(tr("Drop the minutes too"),
                              tr("The clock was started by mistake: nothing was worked"))),
      m_setAnew(new QTimer(this)) {
    layOut();
    connectParts();
}

void StepForm::show(const StepDraft& draft, const core::JobFile& file) {
    m_techniques = file.techniques;
    m_fields->show(draft.logged.step, file);
    m_uses->show(draft.logged.step, draft.logged.uses, file);
    if (!draft.isCorrection() && draft.logged.uses.empty()) {
        m_uses->offerBlank();
    }
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
    m_setAnew->start();
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
