// What comes next at the bench, as large buttons: a step to be logged, and the approved lines that
// no step carries out yet. One touch begins one, with all that the line says.
#pragma once

#include <QWidget>

#include "core/record/job_file.h"

class QHBoxLayout;
class QMenu;
class QPushButton;

namespace headcap::app {

class OpenLines : public QWidget {
    Q_OBJECT
public:
    explicit OpenLines(QWidget* parent = nullptr);
    void show(const core::JobFile& file);
    using QWidget::show;
    // A step is being written: the first button goes on with it.
    void setWriting(bool isWriting);
    [[nodiscard]] QPushButton& add() { return *m_add; }

Q_SIGNALS:
    void addAsked();
    void lineChosen(const headcap::core::ProposalLine& line);

private:
    void addLine(const core::ProposalLine& line);

    QPushButton* m_add;
    QHBoxLayout* m_lines;
};

} // namespace headcap::app
