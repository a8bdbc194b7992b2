// The work of a day over all jobs: every step by its time, sums by person and by job, what sets,
// and the hours of a period by person. A day back and forth by keys; printed, or copied as text.
#pragma once

#include <optional>

#include "app/session/session.h"
#include "app/shell/view.h"
#include "core/report/day_sheet.h"

class QPushButton;

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;
class RuledTable;

class DayView : public View {
    Q_OBJECT
public:
    explicit DayView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    bool print() override;
    [[nodiscard]] QString title() const override { return tr("The day’s work"); }

    void showDay(core::Day day);
    [[nodiscard]] core::Day day() const { return m_shown.day; }
    [[nodiscard]] RuledTable& log() { return *m_log; }
    [[nodiscard]] RuledTable& hours() { return *m_hours; }
    // As it is copied: a line a step.
    [[nodiscard]] QString asText() const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void fit();
    void connectAll();
    void read();
    void showRows();
    void openCurrent(const RuledTable& table);
    void copy();
    [[nodiscard]] core::Document document() const;

    Session& m_session;
    core::DayOfWork m_shown{};
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
};

} // namespace headcap::app
