// A step that is being written, whole: a new one, or the correction of one that was logged, with
// its materials. It logs nothing itself: the page asks it for what is in it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QWidget>

#include "app/pages/bench/step_draft.h"
#include "app/session/session.h"

class QPushButton;
class QScrollArea;
class QTimer;
class QVBoxLayout;

namespace headcap::app {

class CheckRows;
class FieldRow;
class Label;
class StepFields;
class UsesEditor;

class StepForm : public QWidget {
    Q_OBJECT
public:
    explicit StepForm(Session& session, QWidget* parent = nullptr);

    void show(const StepDraft& draft, const core::JobFile& file);
    using QWidget::show;
    // The file has changed: lots, lines, people.
    void refresh(const core::JobFile& file);
    void drop();
    [[nodiscard]] bool isWriting() const;
    // As it stands, with what can be read.
    [[nodiscard]] std::optional<StepDraft> draft();
    // Ready to be logged; nothing where something is still asked, and the cursor is there.
    [[nodiscard]] std::optional<StepDraft> finished();
    void focusFirst();
    [[nodiscard]] StepFields& fields() { return *m_fields; }
    [[nodiscard]] UsesEditor& uses() { return *m_uses; }
    [[nodiscard]] CheckRows& checks() { return *m_checks; }
    [[nodiscard]] FieldRow& reason() { return *m_reason; }
    [[nodiscard]] QPushButton& log() { return *m_log; }
    [[nodiscard]] QPushButton& dropIt() { return *m_drop; }
    [[nodiscard]] QPushButton& dropClock() { return *m_dropClock; }

Q_SIGNALS:
    void logAsked();
    void dropAsked();
    // The clock was touched by mistake: neither the step nor its minutes.
    void dropClockAsked(const headcap::core::Id<headcap::core::BenchClock>& clock);
    void leftBack(); // Esc

protected:
    bool event(QEvent* event) override;

private:
    void layOut();
    void connectParts();
    void goTo(QWidget* row, QWidget* control);
    void showChecks(const std::string& technique);
    [[nodiscard]] std::vector<core::StepCheck> checksOf(const core::Step& step) const;

    Session& m_session;
    core::TechniquesInForce m_techniques; // of the workshop
    Label* m_heading;
    Label* m_advice;
    QScrollArea* m_scroll;
    FieldRow* m_reason;
    StepFields* m_fields;
    UsesEditor* m_uses;
    CheckRows* m_checks;
    std::optional<core::Id<core::BenchClock>> m_clock; // whose minutes the step takes
    QPushButton* m_log;
    QPushButton* m_drop;
    QPushButton* m_dropClock;
    QTimer* m_setAnew; // the order of Tab, when rows have come or gone
};

} // namespace headcap::app
