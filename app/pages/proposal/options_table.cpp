#include "app/pages/proposal/options_table.h"

#include <algorithm>

#include <QGridLayout>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/proposal/option_cell.h"
#include "app/pages/proposal/option_head.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/treatment/cost.h"
#include "core/treatment/totals.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr int kLabelWidth = 124;

using Passages = std::vector<OptionCell::Passage>;

QWidget* cellOf(Passages passages) {
    return new OptionCell(std::move(passages));
}

OptionCell::Passage saidOr(const std::string& words, const QString& nothing, Ink ink) {
    return words.empty() ? OptionCell::Passage{Face::body, Ink::quiet, nothing}
                         : OptionCell::Passage{Face::body, ink, fromCore(words)};
}

QString detailOf(const core::JobFile& file, const core::ProposalLine& line, bool isApproved) {
    QStringList said;
    if (line.minutes > core::Minutes{0}) {
        said << fromCore(core::toText(line.minutes));
    }
    said << (line.price ? fromCore(core::toText(*line.price)) : OptionsTable::tr("no price"));
    if (isApproved) {
        const core::LineWork work = core::workedOn(file, line);
        said << (work.steps == 0
                     ? OptionsTable::tr("not begun")
                     : OptionsTable::tr("done: %1").arg(fromCore(core::toText(work.minutes))));
    }
    return dotted(said);
}

QWidget* linesOf(const core::JobFile& file, const core::ProposalOption& option, bool isApproved) {
    Passages lines;
    for (const core::ProposalLine* line : core::linesOf(file, option.id)) {
        lines.push_back({Face::body, Ink::ink, fromCore(core::lineTitle(*line, file.techniques)),
                         lines.empty() ? 0 : kGap});
        lines.push_back({Face::small, Ink::quiet, detailOf(file, *line, isApproved), 2});
    }
    if (lines.empty()) {
        lines.push_back({Face::body, Ink::quiet, OptionsTable::tr("no work")});
    }
    return cellOf(std::move(lines));
}

// With its tax; where the owner set a limit and approved this option, beside it.
QWidget* totalsOf(const core::JobFile& file, const core::Proposal& proposal,
                  const core::ProposalOption& option, bool isApproved) {
    const core::OptionCost cost = core::costOf(file, proposal, option.id);
    QStringList sums;
    for (const core::CostTotal& total : cost.totals) {
        sums << fromCore(core::toText(total.gross));
    }
    Passages totals{{Face::strong, Ink::ink,
                     cost.lines.empty() ? QStringLiteral("—")
                     : sums.isEmpty()   ? OptionsTable::tr("no price")
                                        : sums.join(QStringLiteral(" + "))}};
    if (proposal.taxPpm != 0 && !sums.isEmpty()) {
        totals.push_back({Face::small, Ink::quiet, OptionsTable::tr("with tax")});
    }
    if (const core::Minutes work = core::minutesOf(file, option.id); work > core::Minutes{0}) {
        totals.push_back({Face::body, Ink::ink, fromCore(core::toText(work))});
    }
    if (cost.unpriced > 0 && !sums.isEmpty()) {
        totals.push_back(
            {Face::small, Ink::open,
             counted(static_cast<int>(cost.unpriced), OptionsTable::tr("without %1 line"),
                     OptionsTable::tr("without %1 lines"))});
    }
    const core::Decision* decision = isApproved ? core::approval(file) : nullptr;
    if (decision != nullptr && decision->limit) {
        totals.push_back({Face::small, Ink::ink,
                          OptionsTable::tr("the owner's limit: %1")
                              .arg(fromCore(core::toText(*decision->limit)))});
    }
    return cellOf(std::move(totals));
}

QString irreversibleOf(const core::JobFile& file, const core::ProposalOption& option) {
    QStringList said;
    for (const core::ProposalLine* line : core::irreversibleLines(file, option.id)) {
        said << fromCore(core::lineTitle(*line, file.techniques));
    }
    return said.isEmpty()
               ? QString{}
               : OptionsTable::tr("By its technique: %1").arg(said.join(QStringLiteral("; ")));
}

QWidget* irreversibleCell(const core::JobFile& file, const core::ProposalOption& option) {
    Passages passages;
    const QString known = irreversibleOf(file, option);
    if (!option.irreversible.empty() || known.isEmpty()) {
        passages.push_back(
            saidOr(option.irreversible, OptionsTable::tr("nothing named"), Ink::open));
    }
    if (!known.isEmpty()) {
        passages.push_back({Face::small, Ink::open, known, passages.empty() ? 0 : 2});
    }
    return cellOf(std::move(passages));
}

bool isApproved(const core::JobFile& file, const core::ProposalOption& option) {
    const auto lines = core::approvedLines(file);
    return std::ranges::any_of(
        lines, [&](const core::ProposalLine* line) { return line->option == option.id; });
}

} // namespace

OptionsTable::OptionsTable(QWidget* parent) : QWidget(parent), m_top(new QGridLayout) {
    m_top->setSpacing(0);
    m_top->setHorizontalSpacing(kGap);
    m_top->setColumnMinimumWidth(0, kLabelWidth + kGap); // an empty column has no space after it
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addLayout(m_top);
}

void OptionsTable::choose(std::size_t at) {
    const auto id = m_ids[at]; // who hears of it has all shown anew
    Q_EMIT chosen(id);
}

void OptionsTable::show(const core::JobFile& file, const core::Proposal& proposal,
                        const std::optional<core::Id<core::ProposalOption>>& chosen) {
    const auto all = core::optionsOf(file, proposal.id);
    showHeads(file, all, chosen);
    delete m_cells;
    m_cells = new QWidget;
    auto* grid = new QGridLayout(m_cells);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kGap);
    grid->setVerticalSpacing(kGap);
    grid->setColumnMinimumWidth(0, kLabelWidth);
    fill(*grid, file, proposal, all);
    layout()->addWidget(m_cells);
}

void OptionsTable::showHeads(const core::JobFile& file,
                             const std::vector<const core::ProposalOption*>& all,
                             const std::optional<core::Id<core::ProposalOption>>& chosen) {
    while (m_heads.size() > all.size()) {
        m_top->setColumnStretch(static_cast<int>(m_heads.size()), 0);
        delete m_heads.back();
        m_heads.pop_back();
    }
    while (m_heads.size() < all.size()) {
        const std::size_t at = m_heads.size();
        auto* head = new OptionHead;
        m_heads.push_back(head);
        m_top->addWidget(head, 0, static_cast<int>(at) + 1);
        m_top->setColumnStretch(static_cast<int>(at) + 1, 1);
        connect(head, &OptionHead::chosen, this, [this, at] { choose(at); });
        connect(head, &OptionHead::opened, this, &OptionsTable::opened);
        connect(head, &OptionHead::stepAsked, this, [this, at](int by) {
            const auto next = static_cast<std::size_t>(static_cast<int>(at) + by);
            if (next < m_heads.size()) {
                m_heads[next]->setFocus(Qt::TabFocusReason);
                choose(next);
            }
        });
    }
    m_ids.clear();
    for (std::size_t i = 0; i < all.size(); ++i) {
        m_ids.push_back(all[i]->id);
        const bool isIt = isApproved(file, *all[i]);
        m_heads[i]->show({fromCore(all[i]->name), isIt ? tr("approved") : QString{}, Ink::settled},
                         chosen == all[i]->id);
    }
}

void OptionsTable::fill(QGridLayout& grid, const core::JobFile& file,
                        const core::Proposal& proposal,
                        const std::vector<const core::ProposalOption*>& all) {
    int row = 0;
    const auto add = [&](const QString& label, auto makeCell) {
        if (row > 0) {
            grid.addWidget(new HairRule, row++, 0, 1, static_cast<int>(all.size()) + 1);
        }
        auto* said = new Label(Face::small, Ink::quiet, label);
        said->setWordWrap(true);
        said->setFixedWidth(kLabelWidth);
        grid.addWidget(said, row, 0, Qt::AlignTop);
        for (std::size_t i = 0; i < all.size(); ++i) {
            grid.setColumnStretch(static_cast<int>(i) + 1, 1);
            grid.addWidget(makeCell(*all[i]), row, static_cast<int>(i) + 1, Qt::AlignTop);
        }
        ++row;
    };
    using Option = core::ProposalOption;
    add(tr("What it does"),
        [](const Option& o) { return cellOf({saidOr(o.effect, tr("not said"), Ink::ink)}); });
    add(tr("Risk"),
        [](const Option& o) { return cellOf({saidOr(o.risk, tr("not said"), Ink::ink)}); });
    add(tr("Can't be undone"), [&](const Option& o) { return irreversibleCell(file, o); });
    add(tr("Work"), [&](const Option& o) { return app::linesOf(file, o, isApproved(file, o)); });
    add(tr("In all"),
        [&](const Option& o) { return app::totalsOf(file, proposal, o, isApproved(file, o)); });
}

} // namespace headcap::app
