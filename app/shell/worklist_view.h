// The first view: slips sorted by what they need; typing anywhere finds; a plain table of all jobs
// is one key away.
#pragma once

#include <array>
#include <future>

#include "app/session/session.h"
#include "app/shell/view.h"
#include "app/shell/worklist.h"

class QLineEdit;
class QStackedWidget;
class QTableView;

namespace headcap::app {

class AllJobsModel;
class SlipGroup;
class SlipSheet;
class WorklistHead;

class WorklistView : public View {
    Q_OBJECT
public:
    explicit WorklistView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    bool back() override;
    [[nodiscard]] QString title() const override { return tr("Worklist"); }
    [[nodiscard]] QWidget* personAnchor() override;

    void setTable(bool isTable);
    [[nodiscard]] QLineEdit& find();
    [[nodiscard]] const std::array<SlipGroup*, kSlipGroups>& groups() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Ahead {
        std::int64_t version = 0; // of the store it was read from
        Worklist list{};
    };
    [[nodiscard]] Worklist read();
    [[nodiscard]] QTableView& table();
    void connectParts();
    void openFound();
    void openJob(const core::Id<core::Job>& job);

    Session& m_session;
    std::future<Ahead> m_ahead; // what is shown first is read while the window is built
    WorklistHead* m_head;
    QStackedWidget* m_faces;
    SlipSheet* m_slips;
    AllJobsModel* m_model;
    QTableView* m_table = nullptr; // made when it is first asked for
};

} // namespace headcap::app
