// All that a logged step says, to be read: it is never edited. Checks that are still open can be
// answered. Strike asks for a reason on its own line; Correct is left to the page.
#pragma once

#include <functional>

#include <QWidget>

#include "core/record/job_file.h"

class QGridLayout;
class QLineEdit;
class QPushButton;
class QScrollArea;

namespace headcap::app {

class CheckRows;
class Label;

class StepDetails : public QWidget {
    Q_OBJECT
public:
    explicit StepDetails(QWidget* parent = nullptr);
    void show(const core::JobFile& file, const core::Step& step, const core::Clock& clock);
    using QWidget::show;
    [[nodiscard]] const std::optional<core::Id<core::Step>>& step() const { return m_step; }
    void askReason();
    void focusFirst();
    [[nodiscard]] CheckRows& checks() { return *m_checks; }
    [[nodiscard]] QLineEdit& reason() { return *m_reason; }
    [[nodiscard]] QPushButton& correct() { return *m_correct; }
    [[nodiscard]] QPushButton& strike() { return *m_strike; }

Q_SIGNALS:
    void correctAsked();
    void strikeAsked(const QString& why);
    void checkMade(const QString& what);
    void checkRefused(const QString& what, const QString& whyNot);
    void leftBack(); // Esc

protected:
    bool event(QEvent* event) override;

private:
    void addFact(const QString& label, const QString& words);
    void addFacts(const core::JobFile& file, const core::Step& step, const core::Clock& clock);
    void addUses(const core::JobFile& file, const core::Step& step);
    void addChecks(const core::JobFile& file, const core::Step& step);

    std::optional<core::Id<core::Step>> m_step;
    Label* m_title;
    Label* m_struck;
    QScrollArea* m_scroll;
    CheckRows* m_checks = nullptr;
    QGridLayout* m_facts = nullptr;
    QPushButton* m_correct;
    QPushButton* m_strike;
    QWidget* m_reasonRow;
    QLineEdit* m_reason;
};

} // namespace headcap::app
