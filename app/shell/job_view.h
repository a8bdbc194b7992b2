// A job: the head, the sewing line at the left, the page in the middle, the margin at the right,
// the bench line at the foot. Loads the job's file once a change and gives it to all of them.
#pragma once

#include <array>
#include <vector>

#include "app/session/session.h"
#include "app/shell/bench_reader.h"
#include "app/shell/view.h"
#include "core/audit/audit_point.h"
#include "core/record/job_file.h"

class QStackedWidget;

namespace headcap::app {

class BenchLine;
class JobHead;
class JobPage;
class Margin;
class SewingLine;
class StateBar;

class JobView : public View {
    Q_OBJECT
public:
    explicit JobView(Session& session, QWidget* parent = nullptr);

    bool enter(const Destination& destination) override;
    [[nodiscard]] bool leave() override;
    void refresh() override;
    bool back() override;
    bool print() override;
    [[nodiscard]] QString title() const override;
    // Between the page and the bench line.
    [[nodiscard]] QBoxLayout* noticePlace() override;

    [[nodiscard]] core::Page page() const { return m_page; }
    [[nodiscard]] const std::optional<core::JobFile>& file() const { return m_file; }
    [[nodiscard]] JobPage* currentPage() const;
    [[nodiscard]] BenchLine& benchLine() { return *m_bench; }
    [[nodiscard]] Margin& margin() { return *m_margin; }
    bool turnTo(core::Page page);
    // To a record, on whichever page has it.
    bool goTo(const core::RecordRef& record, core::Page page);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void layOut();
    void addKeys();
    void connectParts();
    enum class Found { read, gone, notNow }; // of the last a notice has said why
    Found read(const core::Id<core::Job>& job);
    void leaveForGood();
    void showAround();
    void loadPage();
    void foldMargin(bool isFolded);
    [[nodiscard]] JobPage* pageOf(core::Page page);

    Session& m_session;
    BenchReader m_reader;
    JobHead* m_head;
    StateBar* m_state;
    SewingLine* m_thread;
    QStackedWidget* m_pages;
    QBoxLayout* m_middle = nullptr;
    Margin* m_margin;
    BenchLine* m_bench;
    std::array<JobPage*, 8> m_made{};
    std::array<bool, 8> m_isStale{};
    std::optional<core::JobFile> m_file;
    std::vector<core::AuditPoint> m_points;
    core::Page m_page = core::Page::book;
    bool m_isFoldChosen = false; // by the person, not by the width
};

} // namespace headcap::app
