#include "app/pages/proposal_page.h"

#include <algorithm>

#include <QApplication>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/proposal/cost_view.h"
#include "app/pages/proposal/decision_list.h"
#include "app/pages/proposal/departure_list.h"
#include "app/pages/proposal/estimate_view.h"
#include "app/pages/proposal/line_list.h"
#include "app/pages/proposal/options_table.h"
#include "app/pages/proposal/proposal_paper.h"
#include "app/pages/proposal/version_bar.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/treatment/departures.h"
#include "core/treatment/proposal_versions.h"
#include "core/treatment/totals.h"

namespace headcap::app {
ProposalPage::ProposalPage(Session& session, QWidget* parent)
    : JobPage(core::Page::proposal, Body::scrolled, session, parent), m_empty(new QWidget),
      m_desk(new PaperDesk(session, this)), m_begin(new QPushButton(tr("Write the proposal"))),
      m_whole(new QWidget), m_aside(new Aside(session, this)) {
    buildEmpty();
    auto* down = new QVBoxLayout(m_whole);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    body().addWidget(m_empty);
    body().addWidget(m_whole);
    buildVersions();
    buildOptions();
    buildOption();
    buildProposal();
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
        m_past.reset();
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
        showEstimate();
    }
}

void ProposalPage::showEstimate() {
    askForPast();
    if (m_past) {
        m_estimate->show(*m_file, *m_chosen, *m_past);
    } else {
        m_estimate->wait();
    }
}

void ProposalPage::askForPast() {
    std::set<std::string> techniques;
    for (const core::ProposalLine& line : m_file->lines) {
        techniques.insert(line.technique);
    }
    if (techniques.empty()) {
        m_past.emplace();
    } else if (techniques != m_pastOf) {
        m_past.reset();
        m_aside->ask(
            [&records = session().records(), techniques, job = m_file->job.id] {
                return core::loadPastWork(records, {techniques.begin(), techniques.end()}, job);
            },
            [this](std::vector<core::PastWork> past) { takePast(std::move(past)); },
            [this] { m_pastOf.clear(); }); // asked for again when it is next shown
    }
    m_pastOf = std::move(techniques);
}

void ProposalPage::takePast(std::vector<core::PastWork> past) {
    m_past = std::move(past);
    if (!m_file || !m_chosen || proposal() == nullptr) {
        return;
    }
    QWidget* at = QApplication::focusWidget();
    const bool isInSight = at != nullptr && isAncestorOf(at) && !at->visibleRegion().isEmpty();
    showEstimate();
    if (isInSight) {
        reveal(at); // the estimate takes room, and would push it over the edge
    }
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
        reveal(m_option);
        m_option->focusFirst();
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

} // namespace headcap::app
