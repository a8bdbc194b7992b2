// The treatment report: how it stands today as it will be printed, what still keeps it from being
// issued, what was issued before, and the ways out: paper, a PDF draft, the issue itself.
#pragma once

#include <memory>
#include <optional>

#include "app/form/record_form.h"
#include "app/pages/job_page.h"
#include "app/print/layout/layout.h"
#include "app/print/photo_loader.h"
#include "app/report/issuing.h"
#include "core/audit/audit_point.h"

class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTimer;

namespace headcap::app {

class ReleasePanel;

class Label;
class PaperDesk;
class RuledList;
namespace print {
class ReportPreview;
}

class ReportPage : public JobPage {
    Q_OBJECT
public:
    explicit ReportPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    bool goTo(const core::RecordRef& ref) override;
    bool print() override;
    bool back() override; // stops what is being drawn
    void enter() override;
    [[nodiscard]] ReleasePanel& release() { return *m_release; }
    [[nodiscard]] QPushButton& letGo() { return *m_letGo; }
    [[nodiscard]] PaperDesk& desk() { return *m_desk; }

private:
    void buildHead();
    void buildIssued();
    void buildAdvice();
    void showStanding();
    void showRelease(bool isShown);
    void showIssued();
    void showPages();
    void layOn();
    void saveDraft();
    void issue();
    void enterDrawn(const PreparedIssue& issue,
                    const tl::expected<DrawnIssue, IssueRefusal>& drawn);
    void showDrawing(bool isDrawing);
    void openIssued();

    std::unique_ptr<print::LayingOut> m_laying{};
    QTimer* m_layOn;
    print::PhotoLoader m_photos;
    Label* m_standing;
    QPushButton* m_print;
    QPushButton* m_draft;
    QPushButton* m_issue;
    QPushButton* m_stop;
    PaperDesk* m_desk;
    QLineEdit* m_changes;
    FieldRow* m_changesRow;
    RuledList* m_issued;
    RecordForm<core::Job>* m_advice;
    print::ReportPreview* m_preview;
    std::optional<core::JobFile> m_file;
    QPushButton* m_letGo = nullptr;
    QStackedWidget* m_below = nullptr;
    ReleasePanel* m_release = nullptr;
};

} // namespace headcap::app
