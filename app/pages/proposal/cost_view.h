// What an option costs: work, materials, tax as the version chooses, and in all; with what it
// stands beside: deposit, the owner's limit, what has been done so far.
#pragma once

#include <QWidget>

#include "core/treatment/cost.h"

class QGridLayout;

namespace headcap::app {

class CostView : public QWidget {
    Q_OBJECT
public:
    explicit CostView(QWidget* parent = nullptr);
    void show(const core::JobFile& file, const core::Proposal& proposal,
              const core::Id<core::ProposalOption>& option);
    using QWidget::show;

private:
    void add(const QString& label, const QString& sum, bool isFoot = false);
    void addTotal(const core::CostTotal& total, const core::Proposal& proposal);

    QWidget* m_sheet = nullptr;
    QGridLayout* m_grid = nullptr;
};

} // namespace headcap::app
