// How one comes to a place of the bench page: a step, a clock, the panel beside the log.
#include "app/pages/bench_page.h"

#include <QPushButton>
#include <QStackedWidget>

#include "app/form/ruled_table.h"
#include "app/pages/bench/open_lines.h"
#include "app/pages/bench/setting_strip.h"
#include "app/pages/bench/step_details.h"
#include "app/pages/bench/step_form.h"
#include "app/work/sheet_paper.h"
#include "core/report/log_sheet.h"

namespace headcap::app {
namespace {

// Of the page, for two rows of buttons above the log.
constexpr int kLeastHeight = 660;
constexpr int kLeastWithPanel = 800;
constexpr int kNotice = 80; // the room that one takes

} // namespace

bool BenchPage::goTo(const core::RecordRef& ref) {
    if (!m_file) {
        return false;
    }
    if (ref.kind == core::RecordKind::benchClock || ref.kind == core::RecordKind::setting) {
        return ref.kind == core::RecordKind::setting ? m_setting->focusFirst()
                                                     : m_lines->goTo(ref.id);
    }
    core::Uuid id = ref.id;
    if (ref.kind == core::RecordKind::stepCheck) {
        for (const core::StepCheck& check : m_file->stepChecks) {
            id = check.id.uuid() == ref.id ? check.step.uuid() : id;
        }
    } else if (ref.kind == core::RecordKind::materialUse) {
        for (const core::MaterialUse& use : m_file->uses) {
            id = use.id.uuid() == ref.id ? use.step.uuid() : id;
        }
    } else if (ref.kind != core::RecordKind::step) {
        return false;
    }
    if (m_log->rows().rowOf(id) < 0) {
        return false;
    }
    m_log->select(id);
    openCurrent();
    m_log->setFocus(Qt::OtherFocusReason);
    return true;
}

bool BenchPage::print() {
    if (m_file && !m_file->steps.empty()) {
        printSheet(session(), core::logSheet(*m_file, session().clock()), this);
    }
    return m_file.has_value();
}

void BenchPage::enter() {
    if (m_panel->isVisible() && m_panel->currentWidget() == m_form) {
        m_form->focusFirst();
        reveal(m_panel);
    } else if (m_log->current()) {
        m_log->setFocus(Qt::OtherFocusReason);
    } else {
        m_lines->add().setFocus(Qt::OtherFocusReason);
    }
}

void BenchPage::showPanel(QWidget* part) {
    m_panel->setCurrentWidget(part);
    m_panel->show();
    fold();
    reveal(m_panel);
}

void BenchPage::closePanel() {
    m_panel->hide();
    fold();
    m_lines->setWriting(m_form->isWriting());
    if (m_log->isVisible()) {
        m_log->setFocus(Qt::OtherFocusReason);
    } else {
        m_lines->add().setFocus(Qt::OtherFocusReason);
    }
}

// The log and the step beside it come first where the window is low. A notice that comes and goes
// moves no button.
void BenchPage::fold() {
    const int needed = m_panel->isVisibleTo(this) ? kLeastWithPanel : kLeastHeight;
    m_lines->setFolded(height() < (m_lines->isFolded() ? needed : needed - kNotice));
}

void BenchPage::resizeEvent(QResizeEvent* event) {
    JobPage::resizeEvent(event);
    fold();
}

const core::Step* BenchPage::currentStep() const {
    const auto id = m_log->current();
    return id && m_file ? m_file->step(core::Id<core::Step>{*id}) : nullptr;
}

void BenchPage::openCurrent() {
    const core::Step* step = currentStep();
    if (step == nullptr) {
        m_panel->hide();
        fold();
        return;
    }
    m_details->show(*m_file, *step, session().clock());
    showPanel(m_details);
}

} // namespace headcap::app
