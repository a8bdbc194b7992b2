// What the proposal page is made of.
#include "app/pages/proposal_page.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/pages/proposal/cost_view.h"
#include "app/pages/proposal/estimate_view.h"
#include "app/pages/proposal/line_list.h"
#include "app/pages/proposal/option_head.h"
#include "app/pages/proposal/options_table.h"
#include "app/pages/proposal/proposal_paper.h"
#include "app/pages/proposal/tax_row.h"
#include "app/pages/proposal/version_bar.h"
#include "app/session/words.h"
#include "core/treatment/proposal_versions.h"

namespace headcap::app {
namespace {

QWidget* headed(const QString& words, std::initializer_list<QWidget*> right) {
    auto* head = new QWidget;
    auto* across = new QHBoxLayout;
    across->addWidget(new Label(Face::heading, Ink::ink, words));
    across->addStretch();
    for (QWidget* one : right) {
        across->addWidget(one);
    }
    auto* down = new QVBoxLayout(head);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGrid);
    down->addLayout(across);
    down->addWidget(new HairRule);
    return head;
}

} // namespace

void ProposalPage::buildEmpty() {
    auto* words = new Label(
        Face::body, Ink::quiet,
        tr("What could be done, in options side by side, with what each would cost and what can't "
           "be undone. Doing nothing is always among them."));
    words->setRunning();
    connect(m_begin, &QPushButton::clicked, this, &ProposalPage::beginVersion);
    auto* down = new QVBoxLayout(m_empty);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kSpace);
    down->addWidget(words);
    down->addWidget(m_begin, 0, Qt::AlignLeft);
}

void ProposalPage::buildVersions() {
    m_versions = new VersionBar;
    connect(m_versions, &VersionBar::chosen, this, &ProposalPage::choose);
    connect(m_versions, &VersionBar::nextAsked, this, &ProposalPage::beginVersion);
    connect(m_versions, &VersionBar::sentAsked, this, &ProposalPage::markSent);
    connect(m_versions, &VersionBar::printAsked, this, &ProposalPage::print);
    connect(m_versions, &VersionBar::saveAsked, this, [this] {
        if (edits().save() && proposal() != nullptr) {
            saveProposal(this->session(), *m_desk, *m_file, *proposal());
        }
    });
    m_sentWords = new Label(Face::small, Ink::quiet);
    m_sentWords->setWordWrap(true);
    auto* down = qobject_cast<QVBoxLayout*>(m_whole->layout());
    down->addWidget(m_versions);
    down->addSpacing(kGap);
    down->addWidget(m_sentWords);
}

// What the letter says beside the options.
void ProposalPage::buildProposal() {
    using R = core::Proposal;
    m_proposal = new RecordForm<R>(session(), tr("Proposal"));
    m_proposal->lines(tr("Aim"), &R::aim).placeholder(tr("what the book is to be fit for"));
    m_proposal->lines(tr("Risks"), &R::risks).placeholder(tr("of any treatment of this book"));
    m_proposal->lines(tr("Not included"), &R::notIncluded);
    m_proposal->value(tr("Made on"), &R::madeOn);
    m_proposal->value(tr("Sent on"), &R::sentOn);
    m_proposal->pick(tr("By"), &R::who, peopleOf(session()));
    buildTerms();
    m_proposal->lines(tr("Note"), &R::note);
    m_proposal->setDescription([](const R& proposal) { return QString::number(proposal.version); });
    m_proposal->setAlso([this](const R& before, const R& after, core::Change& change) {
        const auto move =
            after.sentOn && !before.sentOn
                ? core::moveOnSending(*m_file, after, session().person(), session().clock().now())
                : std::nullopt;
        if (move) {
            core::addMove(change, *m_file, *move, session().ids());
        }
    });
    edits().watch(m_proposal);
    auto* down = qobject_cast<QVBoxLayout*>(m_whole->layout());
    down->addSpacing(kSection);
    down->addWidget(headed(tr("The letter"), {}));
    down->addSpacing(kGap);
    down->addWidget(m_proposal);
}

void ProposalPage::buildTerms() {
    using R = core::Proposal;
    bindTax(*m_proposal, &R::taxPpm);
    m_proposal->check(tr("Tax is"), tr("rounded line by line"), &R::taxPerLine);
    m_proposal->value(tr("Deposit"), &R::deposit);
    m_proposal->value(tr("Insured for"), &R::insuredValue);
    m_proposal->value(tr("Begins"), &R::startOn);
    m_proposal->value(tr("Ready"), &R::readyOn);
    m_proposal->value(tr("Valid until"), &R::validUntil);
}

void ProposalPage::buildOptions() {
    m_table = new OptionsTable;
    auto* add = quietButton(tr("Add an option"));
    m_doNothing = quietButton(tr("Add doing nothing"));
    m_doNothing->setToolTip(tr("The owner is always offered that nothing is done"));
    connect(add, &QPushButton::clicked, this, [this] { addOption(false); });
    connect(m_doNothing, &QPushButton::clicked, this, [this] { addOption(true); });
    connect(m_table, &OptionsTable::chosen, this, &ProposalPage::chooseOption);
    connect(m_table, &OptionsTable::opened, this, [this] {
        m_option->focusFirst();
        reveal(m_option);
    });
    auto* down = qobject_cast<QVBoxLayout*>(m_whole->layout());
    down->addSpacing(kSection);
    down->addWidget(headed(tr("Options, side by side"), {m_doNothing, add}));
    down->addSpacing(kGap);
    down->addWidget(m_table);
}

void ProposalPage::buildOption() {
    using R = core::ProposalOption;
    m_option = new RecordForm<R>(session(), tr("Option"));
    m_option->text(tr("Name"), &R::name).placeholder(tr("A: repair, and keep the old sewing"));
    m_option->value(tr("Order"), &R::position);
    m_option->lines(tr("What it does"), &R::effect);
    m_option->lines(tr("Risk"), &R::risk);
    m_option->lines(tr("Can't be undone"), &R::irreversible)
        .placeholder(tr("every act that can't be taken back, so that it is agreed to"));
    m_option->setDescription([](const R& option) { return fromCore(option.name); });
    edits().watch(m_option);
    m_lines = new LineList(session(), edits());
    auto* remove = quietButton(tr("Remove this option"));
    connect(remove, &QPushButton::clicked, this, &ProposalPage::removeOption);
    m_optionName = new Label(Face::heading);
    auto* down = qobject_cast<QVBoxLayout*>(m_whole->layout());
    auto* head = new QHBoxLayout;
    head->addWidget(m_optionName);
    head->addStretch();
    head->addWidget(remove);
    down->addSpacing(kSection);
    down->addLayout(head);
    down->addWidget(new HairRule);
    down->addSpacing(kGap + kGrid);
    down->addWidget(m_option);
    down->addSpacing(kSpace);
    down->addWidget(m_lines);
    m_cost = new CostView;
    m_estimate = new EstimateView;
    down->addSpacing(kSpace);
    down->addWidget(m_cost);
    down->addSpacing(kSpace);
    down->addWidget(m_estimate);
}

} // namespace headcap::app
