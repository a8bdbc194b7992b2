// The first view: slips sorted by what they need; typing anywhere finds; a plain table of all jobs
// is one key away.
#pragma once

#include <array>

#include "app/shell/view.h"
#include "app/shell/worklist.h"

class QBoxLayout;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTableView;
class QTimer;
class QVBoxLayout;

namespace headcap::app {

class AllJobsModel;
class Label;
class SlipGroup;

class WorklistView : public View {
    Q_OBJECT
public:
    explicit WorklistView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    bool back() override;
    [[nodiscard]] QString title() const override { return tr("Worklist"); }

    void setTable(bool isTable);
    [[nodiscard]] QLineEdit& find() { return *m_find; }
    [[nodiscard]] const std::array<SlipGroup*, kSlipGroups>& groups() const { return m_groups; }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QBoxLayout* makeHead();
    QWidget* makeSlips();
    QTableView* makeTable();
    QPushButton* makeLink(const QString& words, const QString& tip);
    void filter();
    void openFirst();
    void openJob(const core::Id<core::Job>& job);

    Session& m_session;
    Label* m_summary;
    QLineEdit* m_find;
    QPushButton* m_all;
    QPushButton* m_person;
    QStackedWidget* m_faces;
    std::array<SlipGroup*, kSlipGroups> m_groups{};
    QBoxLayout* m_columns;
    QWidget* m_empty;
    AllJobsModel* m_model;
    QTableView* m_table;
    int m_inTheHouse = 0;
};

} // namespace headcap::app
