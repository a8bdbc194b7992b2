// What went into the book, lot by lot: where each was used, in which step, for which facsimile,
// how it comes off, and how the lot now stands; the pieces cut for it; what it all cost against the
// estimate. Enter goes to the step.
#pragma once

#include <map>

#include "app/pages/job_page.h"
#include "core/materials/cutting_record.h"

class QPushButton;

namespace headcap::app {

class Label;
class RuledTable;

class JobMaterialsPage : public JobPage {
    Q_OBJECT
public:
    explicit JobMaterialsPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    bool goTo(const core::RecordRef& ref) override;
    void enter() override;
    // The materials as a sheet of their own.
    bool print() override;
    [[nodiscard]] RuledTable& table() { return *m_table; }

private:
    void open();

    [[nodiscard]] std::vector<core::CutPart> piecesCut();

    std::optional<core::JobFile> m_file;
    Label* m_cost;
    QPushButton* m_print;
    RuledTable* m_table;
    QWidget* m_empty;
};

} // namespace headcap::app
