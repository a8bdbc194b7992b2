#include "app/pages/proposal/cost_view.h"

#include <QGridLayout>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/treatment/departures.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

constexpr int kLabelWidth = 200;
constexpr int kPercentPlaces = 4; // of parts per million

QString words(const core::Money& sum) {
    return fromCore(core::toText(sum));
}

} // namespace

CostView::CostView(QWidget* parent) : QWidget(parent) {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
}

void CostView::add(const QString& label, const QString& sum, bool isFoot) {
    const int row = m_grid->rowCount();
    m_grid->addWidget(new Label(Face::small, Ink::quiet, label), row, 0);
    auto* said = new Label(isFoot ? Face::strong : Face::body, Ink::ink, sum);
    said->setAccessibleName(QStringLiteral("%1: %2").arg(label, sum));
    m_grid->addWidget(said, row, 1, Qt::AlignRight);
}

void CostView::addTotal(const core::CostTotal& total, const core::Proposal& proposal) {
    add(tr("Work"), words(total.work));
    if (total.materials.minor != 0) {
        add(tr("Materials"), words(total.materials));
    }
    if (proposal.taxPpm != 0) {
        add(tr("Before tax"), words(total.net));
        const QString percent = fromCore(core::decimalText(proposal.taxPpm, kPercentPlaces));
        add(proposal.taxPerLine ? tr("Tax %1 %, by line").arg(percent)
                                : tr("Tax %1 %, on the total").arg(percent),
            words(total.tax));
    }
    add(tr("In all"), words(total.gross), true);
}

void CostView::show(const core::JobFile& file, const core::Proposal& proposal,
                    const core::Id<core::ProposalOption>& option) {
    delete m_sheet;
    m_sheet = new QWidget;
    m_grid = new QGridLayout(m_sheet);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(kSpace);
    m_grid->setVerticalSpacing(kGrid);
    m_grid->setColumnMinimumWidth(0, kLabelWidth);
    m_grid->setColumnStretch(2, 1);
    layout()->addWidget(m_sheet);
    const core::OptionCost cost = core::costOf(file, proposal, option);
    setVisible(!cost.lines.empty());
    for (const core::CostTotal& total : cost.totals) {
        addTotal(total, proposal);
    }
    if (cost.unpriced > 0) {
        add(tr("Without a price"),
            counted(static_cast<int>(cost.unpriced), tr("%1 line"), tr("%1 lines")));
    }
    if (proposal.deposit) {
        add(tr("Deposit"), words(*proposal.deposit));
    }
    const core::Decision* decision = core::approval(file);
    if (decision == nullptr || decision->option != option) {
        return;
    }
    if (decision->limit) {
        add(tr("The owner's limit"), words(*decision->limit));
    }
    for (const core::CostAsDone& done : core::costAsDone(file)) {
        const bool isTaxed = done.gross != done.net;
        add(isTaxed ? tr("Done so far, before tax") : tr("Done so far"), words(done.net));
        if (isTaxed) {
            add(tr("Done so far, with its tax"), words(done.gross));
        }
    }
}

} // namespace headcap::app
