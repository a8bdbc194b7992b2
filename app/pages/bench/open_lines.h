// What is worked on and what comes next at the bench, as large buttons: clocks that run, minutes
// measured and not logged yet, and the approved lines with what each needs. One touch starts a
// line's clock, another stops it.
#pragma once

#include <optional>
#include <vector>

#include <QWidget>

#include "core/record/job_file.h"

class QGridLayout;
class QPushButton;

namespace headcap::app {

class WorkButton;

class OpenLines : public QWidget {
    Q_OBJECT
public:
    explicit OpenLines(const core::Clock& clock, QWidget* parent = nullptr);
    void show(const core::JobFile& file);
    using QWidget::show;
    // In one row, where the log has little room: one line, the others in a list.
    void setFolded(bool isFolded);
    [[nodiscard]] bool isFolded() const { return m_isFolded; }
    // A step is being written: the first button goes on with it.
    void setWriting(bool isWriting);
    // To the button of a clock; false where it has none.
    bool goTo(const core::Uuid& clock);
    // As the clock now stands; done by itself every few seconds.
    void tick();
    [[nodiscard]] QPushButton& add() { return *m_add; }
    [[nodiscard]] const std::vector<WorkButton*>& buttons() const { return m_buttons; }

Q_SIGNALS:
    void addAsked();
    void startAsked(const headcap::core::ProposalLine& line);
    void stopAsked(const headcap::core::BenchClock& clock);
    void logAsked(const headcap::core::BenchClock& clock);

private:
    WorkButton* addButton();
    void addClock(const core::BenchClock& clock);
    void addLine(const core::ProposalLine& line);
    void addRest(const std::vector<const core::ProposalLine*>& rest);
    void place(QWidget* widget);
    void clear();
    [[nodiscard]] QString heldWork() const;
    void hold(const QString& work);

    const core::Clock& m_clock;
    std::optional<core::JobFile> m_file;
    QPushButton* m_add;
    QGridLayout* m_grid;
    std::vector<WorkButton*> m_buttons;
    std::vector<QWidget*> m_placed;
    bool m_isFolded = false;
};

} // namespace headcap::app
