// The head of the worklist: how many jobs are in the house, the box to find in, and the ways to
// the other views.
#pragma once

#include <QWidget>

#include "app/session/actions.h"
#include "app/session/session.h"
#include "app/shell/view.h"

class QHBoxLayout;
class QLineEdit;
class QPushButton;

namespace headcap::app {

class Label;

class WorklistHead : public QWidget {
    Q_OBJECT
public:
    explicit WorklistHead(Session& session, QWidget* parent = nullptr);
    [[nodiscard]] QLineEdit& find() { return *m_find; }
    [[nodiscard]] QPushButton& person() { return *m_person; }
    void setInTheHouse(int jobs);
    // All jobs, so many, in the place of what needs you; nothing: what needs you.
    void setTable(std::optional<std::size_t> jobs);
    // Why a backup is wanted; empty: none is.
    void setBackup(const QString& words);

Q_SIGNALS:
    void goAsked(const headcap::app::Destination& destination);
    void tableTurned();
    void downAsked(); // from the box to what was found

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void layOut();
    void showCounts();
    void addWayOn(QHBoxLayout& across, ActionId action, ViewId view);

    Session& m_session;
    Label* m_title;
    Label* m_summary;
    QLineEdit* m_find;
    QPushButton* m_newJob;
    QPushButton* m_person;
    QPushButton* m_all;
    QPushButton* m_backup;
    int m_inTheHouse = 0;
    std::optional<std::size_t> m_jobs{};
};

} // namespace headcap::app
