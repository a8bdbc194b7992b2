// What went into the book, lot by lot: where each was used, in which step, for which facsimile,
// how it comes off, and how the lot now stands. Enter goes to the step.
#pragma once

#include <map>

#include "app/pages/job_page.h"

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
    [[nodiscard]] RuledTable& table() { return *m_table; }

private:
    void open();

    std::optional<core::JobFile> m_file;
    RuledTable* m_table;
    QWidget* m_empty;
};

} // namespace headcap::app
