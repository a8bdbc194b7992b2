// How one comes to a place of the proposal page.
#include <QPushButton>

#include "app/pages/proposal/decision_list.h"
#include "app/pages/proposal/line_list.h"
#include "app/pages/proposal_page.h"

namespace headcap::app {

bool ProposalPage::goTo(const core::RecordRef& ref) {
    if (!m_file) {
        return false;
    }
    for (const core::Proposal& one : m_file->proposals) {
        if (core::refOf(one.id) == ref) {
            choose(one.id);
            reveal(m_proposal);
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
