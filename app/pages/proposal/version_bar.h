// The versions of a job's proposal, each with what became of it; and what can be done with the one
// shown: it is sent, or a new version is begun from the latest.
#pragma once

#include <QWidget>

#include "core/record/job_file.h"

class QHBoxLayout;
class QPushButton;

namespace headcap::app {

class VersionBar : public QWidget {
    Q_OBJECT
public:
    explicit VersionBar(QWidget* parent = nullptr);
    void show(const core::JobFile& file, const core::Id<core::Proposal>& shown, core::Day today);
    using QWidget::show;
    [[nodiscard]] QPushButton& next() { return *m_next; }
    [[nodiscard]] QPushButton& sent() { return *m_sent; }
    [[nodiscard]] QPushButton& save() { return *m_save; }

Q_SIGNALS:
    void chosen(const headcap::core::Id<headcap::core::Proposal>& proposal);
    void nextAsked();
    void sentAsked();
    void printAsked();
    void saveAsked();

private:
    QHBoxLayout* m_versions;
    QPushButton* m_print;
    QPushButton* m_save;
    QPushButton* m_sent;
    QPushButton* m_next;
};

} // namespace headcap::app
