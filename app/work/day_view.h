// The work of a day over all jobs: every step by its time, sums by person and by job, what sets,
// and the hours of a period by person. A day back and forth by keys; printed, or copied as text.
#pragma once

#include <optional>

#include "app/form/ruled_table.h"
#include "app/session/aside.h"
#include "app/shell/view.h"
#include "core/report/day_sheet.h"

class QPushButton;

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;

class DayView : public View {
    Q_OBJECT
public:
    explicit DayView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    bool print() override;
    [[nodiscard]] QString title() const override { return tr("The day’s work"); }

    void showDay(core::Day day);
    [[nodiscard]] core::Day day() const { return m_asked; }
    [[nodiscard]] bool isReading() const { return m_aside.isReading(); }
    [[nodiscard]] RuledTable& log() { return *m_log; }
    [[nodiscard]] RuledTable& hours() { return *m_hours; }
    // As it is copied: a line a step.
    [[nodiscard]] QString asText();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void fit();
    void connectAll();
    struct Asked {
        core::Day day{}, from{}, to{};
    };
    struct Read {
        core::DayOfWork day{};
        core::TechniquesInForce techniques{};
        std::vector<TableRow> steps{}, sums{}, settings{}, hours{};
    };
    [[nodiscard]] Asked asked() const;
    [[nodiscard]] static Read read(const core::RecordStore& records, const core::Clock& clock,
                                   const Asked& asked);
    void showRead(Read read);
    void takeFocus();
    void openCurrent(const RuledTable& table);
    void copy();
    [[nodiscard]] core::Document document();

    Session& m_session;
    core::Day m_asked{};
    core::DayOfWork m_shown{}; // what was read last
    core::TechniquesInForce m_techniques;
    Label* m_day;
    Label* m_sum;
    QPushButton* m_before;
    QPushButton* m_today;
    QPushButton* m_after;
    QPushButton* m_copy;
    RuledTable* m_log;
    RuledTable* m_sums;
    Label* m_settingHeading;
    RuledTable* m_settings;
    PlainForm* m_period;
    FieldRow* m_from;
    FieldRow* m_to;
    RuledTable* m_hours;
    Label* m_nothing;
    bool m_isEntering = false; // the keys go to the log once it is there
    Aside m_aside;
};

} // namespace headcap::app
