#include "app/pages/proposal_page.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"
#include "app/pages/proposal/cost_view.h"
#include "app/pages/proposal/decision_list.h"
#include "app/pages/proposal/departure_list.h"
#include "app/pages/proposal/estimate_view.h"
#include "app/pages/proposal/line_list.h"
#include "app/pages/proposal/option_head.h"
#include "app/pages/proposal/options_table.h"
#include "app/pages/proposal/proposal_paper.h"
#include "app/pages/proposal/tax_row.h"
#include "app/pages/proposal/version_bar.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/treatment/departures.h"
#include "core/treatment/proposal_versions.h"
#include "core/treatment/totals.h"

namespace headcap::app {
namespace {

QPushButton* quietButton(const QString& words) {
    auto* button = new QPushButton(words);
    button->setProperty(kQuietButton, true);
    return button;
}

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

ProposalPage::ProposalPage(Session& session, QWidget* parent)
    : JobPage(core::Page::proposal, Body::scrolled, session, parent), m_empty(new QWidget),
      m_begin(new QPushButton(tr("Write the proposal"))), m_whole(new QWidget) {
    buildEmpty();
    auto* down = new QVBoxLayout(m_whole);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    body().addWidget(m_empty);
    body().addWidget(m_whole);
    buildProposal();
    buildOptions();
    buildOption();
    m_decisions = new DecisionList(session, edits());
    down->addSpacing(kSection);
    down->addWidget(m_decisions);
    down->addWidget(&m_decisions->answers());
    m_departures = new DepartureList;
    connect(m_departures, &DepartureList::explained, this,
            [this](const core::RecordRef& subject, const QString& rule, const QString& text) {
                apply(core::explain(*m_file, subject, toCore(rule), toCore(text),
                                    this->session().person(), this->session().clock().now(),
                                    this->session().ids()));
            });
    down->addSpacing(kSection);
    down->addWidget(m_departures);
    edits().alignLabels();
}

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

void ProposalPage::buildProposal() {
    using R = core::Proposal;
    m_versions = new VersionBar;
    connect(m_versions, &VersionBar::chosen, this, &ProposalPage::choose);
    connect(m_versions, &VersionBar::nextAsked, this, &ProposalPage::beginVersion);
    connect(m_versions, &VersionBar::sentAsked, this, &ProposalPage::markSent);
    connect(m_versions, &VersionBar::printAsked, this, &ProposalPage::print);
    connect(m_versions, &VersionBar::saveAsked, this, [this] {
        if (edits().save() && proposal() != nullptr) {
            saveProposal(this->session(), *m_file, *proposal());
        }
    });
    m_sentWords = new Label(Face::small, Ink::quiet);
    m_sentWords->setRunning();
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
    down->addWidget(m_versions);
    down->addSpacing(kGap);
    down->addWidget(m_sentWords);
    down->addSpacing(kSpace);
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
    m_option->value(tr("Stands at"), &R::position);
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

void ProposalPage::load(const core::JobFile& file) {
    const bool isOther = !m_file || m_file->job.id != file.job.id;
    m_file = file;
    const auto isThere = [&](const core::Proposal& one) { return m_shown == one.id; };
    if (isOther || std::ranges::none_of(file.proposals, isThere)) {
        const core::Proposal* latest = core::latestProposal(file);
        m_shown = latest == nullptr ? std::nullopt : std::optional{latest->id};
        m_chosen.reset();
    }
    if (isOther) {
        m_pastOf.clear();
    }
    showShown();
}

const core::Proposal* ProposalPage::proposal() const {
    const auto found =
        std::ranges::find_if(m_file->proposals, [&](const auto& one) { return m_shown == one.id; });
    return found == m_file->proposals.end() ? nullptr : &*found;
}

std::optional<core::Id<core::ProposalOption>> ProposalPage::optionToShow() const {
    const auto options = core::optionsOf(*m_file, *m_shown);
    for (const core::ProposalOption* option : options) {
        if (m_chosen == option->id) {
            return m_chosen;
        }
    }
    const auto approved = core::approvedLines(*m_file);
    for (const core::ProposalOption* option : options) {
        if (!approved.empty() && approved.front()->option == option->id) {
            return option->id;
        }
    }
    return options.empty() ? std::nullopt : std::optional{options.back()->id};
}

void ProposalPage::showShown() {
    const core::Proposal* shown = proposal();
    m_empty->setVisible(shown == nullptr);
    m_whole->setVisible(shown != nullptr);
    if (shown == nullptr) {
        m_proposal->clear();
        m_option->clear();
        m_lines->showOption(*m_file, std::nullopt);
        return;
    }
    m_chosen = optionToShow();
    m_versions->show(*m_file, shown->id, session().clock().today());
    m_proposal->show(*shown, m_file->revisionOf(core::refOf(shown->id)));
    saySent(*shown);
    m_table->show(*m_file, *shown, m_chosen);
    m_doNothing->setVisible(!core::offersDoingNothing(*m_file, shown->id));
    showOption(*shown);
    m_decisions->showProposal(*m_file, shown->id, m_chosen);
    m_departures->show(*m_file, session().clock());
}

void ProposalPage::showOption(const core::Proposal& shown) {
    bool isShown = false;
    for (const core::ProposalOption& option : m_file->options) {
        if (m_chosen == option.id) {
            m_option->show(option, m_file->revisionOf(core::refOf(option.id)));
            m_optionName->setText(option.name.empty() ? tr("The option") : fromCore(option.name));
            isShown = true;
        }
    }
    if (!isShown) {
        m_option->clear();
    }
    m_option->setVisible(isShown);
    m_optionName->setVisible(isShown);
    m_lines->setVisible(isShown);
    m_lines->showOption(*m_file, m_chosen);
    m_cost->setVisible(isShown);
    m_estimate->setVisible(isShown);
    if (isShown) {
        m_cost->show(*m_file, shown, *m_chosen);
        m_estimate->show(*m_file, *m_chosen, past());
    }
}

const std::vector<core::PastWork>& ProposalPage::past() {
    std::set<std::string> techniques;
    for (const core::ProposalLine& line : m_file->lines) {
        techniques.insert(line.technique);
    }
    if (techniques != m_pastOf) {
        m_pastOf = techniques;
        session().guarded([&] {
            m_past = core::loadPastWork(session().records(), {techniques.begin(), techniques.end()},
                                        m_file->job.id);
        });
    }
    return m_past;
}

bool ProposalPage::print() {
    if (edits().save() && m_file && proposal() != nullptr) {
        printProposal(session(), *m_file, *proposal(), this);
    }
    return true;
}

void ProposalPage::saySent(const core::Proposal& proposal) {
    const bool isDecided = core::latestDecision(*m_file, proposal.id) != nullptr;
    m_sentWords->setVisible(proposal.sentOn.has_value());
    m_sentWords->setText(
        isDecided ? tr("The owner has answered this version. What changes now is a new "
                       "version, and needs its own answer.")
                  : tr("The owner has this version. What changes now is a new version."));
}

void ProposalPage::choose(const core::Id<core::Proposal>& proposal) {
    if (m_shown != proposal && edits().save()) {
        m_shown = proposal;
        m_chosen.reset();
        showShown();
    }
}

void ProposalPage::chooseOption(const core::Id<core::ProposalOption>& option) {
    if (m_chosen != option && edits().save()) {
        m_chosen = option;
        showShown();
    }
}

bool ProposalPage::apply(core::Change change) {
    const QString said = fromCore(change.sentence);
    if (!session().apply(std::move(change))) {
        return false;
    }
    session().say({Notice::Kind::done, said, true});
    return true;
}

void ProposalPage::beginVersion() {
    if (!edits().save()) {
        return;
    }
    auto made =
        core::nextVersion(*m_file, session().person(), session().clock().today(), session().ids());
    if (apply(std::move(made.change))) {
        choose(made.proposal);
        m_proposal->focusFirst();
    }
}

void ProposalPage::markSent() {
    if (edits().save() && proposal() != nullptr) {
        apply(core::sendProposal(*m_file, *proposal(), session().person(), session().clock().now(),
                                 session().clock().today(), session().ids()));
    }
}

void ProposalPage::addOption(bool isDoingNothing) {
    if (!edits().save() || proposal() == nullptr) {
        return;
    }
    auto made = core::addOption(*m_file, *proposal(), isDoingNothing, session().ids());
    if (apply(std::move(made.change))) {
        chooseOption(made.option);
        m_option->focusFirst();
        reveal(m_option);
    }
}

void ProposalPage::removeOption() {
    if (edits().save() && m_option->record()) {
        apply(core::removeOption(*m_file, *m_option->record()));
    }
}

bool ProposalPage::goTo(const core::RecordRef& ref) {
    if (!m_file) {
        return false;
    }
    for (const core::Proposal& one : m_file->proposals) {
        if (core::refOf(one.id) == ref) {
            choose(one.id);
            m_proposal->focusFirst();
            return true;
        }
    }
    for (const core::ProposalOption& one : m_file->options) {
        if (core::refOf(one.id) == ref) {
            return goToOption(one);
        }
    }
    for (const core::ProposalLine& line : m_file->lines) {
        if (core::refOf(line.id) == ref && goTo(core::refOf(line.option))) {
            reveal(m_lines);
            return m_lines->goTo(ref.id);
        }
    }
    for (const core::Decision& one : m_file->decisions) {
        if (core::refOf(one.id) == ref) {
            choose(one.proposal);
            reveal(m_decisions);
            return m_decisions->goTo(ref.id);
        }
    }
    return false;
}

bool ProposalPage::goToOption(const core::ProposalOption& option) {
    const core::Id<core::ProposalOption> id = option.id;
    choose(option.proposal);
    chooseOption(id);
    m_option->focusFirst();
    reveal(m_option);
    return m_chosen == id;
}

void ProposalPage::enter() {
    if (!m_file || m_file->proposals.empty()) {
        m_begin->setFocus(Qt::OtherFocusReason);
    } else {
        JobPage::enter();
    }
}

} // namespace headcap::app
