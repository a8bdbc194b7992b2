// The bench log, by day, and beside it the step chosen or the one that is being written. A logged
// step is never edited: it is struck with a reason, or corrected by a further one. Above, setting
// times and what comes next.
#pragma once

#include <set>

#include "app/pages/bench/step_draft.h"
#include "app/pages/job_page.h"
#include "app/session/aside.h"

class QStackedWidget;

namespace headcap::core {
struct SettingTime;
}

namespace headcap::app {

class Label;
class OpenLines;
class RuledTable;
class SettingStrip;
class StepDetails;
class StepForm;

class BenchPage : public JobPage {
    Q_OBJECT
public:
    explicit BenchPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    // A step that is being written stays, and is kept for the next time.
    bool leave() override;
    bool goTo(const core::RecordRef& ref) override;
    // The log as a sheet.
    bool print() override;
    void enter() override;

    [[nodiscard]] RuledTable& log() { return *m_log; }
    [[nodiscard]] StepDetails& details() { return *m_details; }
    [[nodiscard]] StepForm& form() { return *m_form; }
    [[nodiscard]] OpenLines& lines() { return *m_lines; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void connectParts();
    void addKeys();
    void showLog();
    void showExample();
    void fold();
    void showPanel(QWidget* part);
    void closePanel();
    void openCurrent();
    void startNew();
    void startClock(const core::ProposalLine& line);
    void stopClock(const core::BenchClock& clock);
    void logClock(const core::BenchClock& clock);
    void dropClock(const core::Id<core::BenchClock>& clock);
    void see(const core::SettingTime& time);
    void answer(const QString& what, bool isMade, const QString& whyNot);
    bool keep(core::Change change);
    void startCorrection();
    void show(const StepDraft& draft);
    void strike(const QString& why);
    void take();
    [[nodiscard]] std::optional<core::Id<core::Person>> worker();
    [[nodiscard]] const core::Step* currentStep() const;
    void apply(tl::expected<core::Change, core::StepProblem> change);

    std::optional<core::JobFile> m_file;
    std::set<core::Uuid> m_known; // the steps that have been shown
    SettingStrip* m_setting;
    OpenLines* m_lines;
    RuledTable* m_log;
    Label* m_empty;
    QStackedWidget* m_panel;
    StepDetails* m_details;
    StepForm* m_form;
    Aside* m_aside;
};

} // namespace headcap::app
