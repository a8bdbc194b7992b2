// The options of a proposal side by side: what each does, its risk, what can't be undone, its
// lines, and what it comes to. One of them is chosen, to be written below.
#pragma once

#include <QWidget>

#include "core/record/job_file.h"

class QGridLayout;

namespace headcap::app {

class OptionHead;

class OptionsTable : public QWidget {
    Q_OBJECT
public:
    explicit OptionsTable(QWidget* parent = nullptr);
    void show(const core::JobFile& file, const core::Proposal& proposal,
              const std::optional<core::Id<core::ProposalOption>>& chosen);
    using QWidget::show;
    [[nodiscard]] const std::vector<OptionHead*>& heads() const { return m_heads; }

Q_SIGNALS:
    void chosen(const headcap::core::Id<headcap::core::ProposalOption>& option);
    void opened();

private:
    void choose(std::size_t at);
    void showHeads(const core::JobFile& file, const std::vector<const core::ProposalOption*>& all,
                   const std::optional<core::Id<core::ProposalOption>>& chosen);
    void fill(QGridLayout& grid, const core::JobFile& file, const core::Proposal& proposal,
              const std::vector<const core::ProposalOption*>& all);

    QGridLayout* m_top; // the heads, which keep the focus
    QWidget* m_cells = nullptr;
    std::vector<OptionHead*> m_heads;
    std::vector<core::Id<core::ProposalOption>> m_ids;
};

} // namespace headcap::app
