// The leaf-by-leaf sheet of work on the collation page: what is done and what remains of each piece
// of work, the sheet to be ticked, and the sheet on paper for the wet room.
#pragma once

#include <QWidget>

#include "app/session/session.h"
#include "core/collation/leaf_places.h"
#include "core/record/job_file.h"

class QPushButton;

namespace headcap::app {

class Label;
class LeafSheetView;
class PaperDesk;

class LeafSheetSection : public QWidget {
    Q_OBJECT
public:
    explicit LeafSheetSection(Session& session, QWidget* parent = nullptr);
    void show(const core::JobFile& file, const core::LaidBook& book,
              const std::vector<core::LeafTask>& tasks);
    using QWidget::show;
    [[nodiscard]] LeafSheetView& sheet() { return *m_view; }
    // True: there is a sheet, and the keys go to it.
    bool enter();
    // The sheet on paper; false where there is none.
    bool print();

private:
    void tick(const core::LeafTask& task, const std::vector<std::size_t>& leaves, bool isDone);
    void save();

    Session& m_session;
    PaperDesk* m_desk;
    Label* m_said;
    LeafSheetView* m_view;
    QPushButton* m_print;
    QPushButton* m_save;
    std::optional<core::JobFile> m_file;
};

} // namespace headcap::app
