// The right of a job, set like marginal notes: what is still open on the page and why, hazards,
// setting times, and the last changes with undo. Each open point goes to its place. It folds away
// into a strip that still says how many are open.
#pragma once

#include <span>
#include <vector>

#include <QWidget>

#include "app/session/session.h"
#include "core/audit/audit_point.h"
#include "core/record/job_file.h"

class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace headcap::app {

class SettingBar;

class Margin : public QWidget {
    Q_OBJECT
public:
    explicit Margin(Session& session, QWidget* parent = nullptr);

    void show(const core::JobFile& file, std::span<const core::AuditPoint> points, core::Page page);
    using QWidget::show;
    void setFolded(bool isFolded);
    [[nodiscard]] bool isFolded() const { return m_isFolded; }
    void focusFirst();

Q_SIGNALS:
    void pointChosen(const headcap::core::RecordRef& record, headcap::core::Page page);
    void foldAsked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void addHeading(const QString& words);
    void addPoints(std::span<const core::AuditPoint> points, core::Page page);
    void addHazards(const core::JobFile& file);
    void addSettings(const core::JobFile& file);
    void addClocks(const core::JobFile& file);
    void addLastChanges(const core::JobFile& file);
    void tick();

    Session& m_session;
    QPushButton* m_fold;
    QPushButton* m_strip;
    QScrollArea* m_scroll;
    QWidget* m_notes = nullptr;
    QVBoxLayout* m_down = nullptr;
    std::vector<SettingBar*> m_bars;
    bool m_isFolded = false;
};

} // namespace headcap::app
