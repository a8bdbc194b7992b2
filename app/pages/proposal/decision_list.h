// What the owner decided about one version: by whom, by what right, how and within what limits.
// An approval takes the job to "approved" in the same entry of the journal.
#pragma once

#include "app/form/record_list.h"
#include "core/treatment/proposal.h"

namespace headcap::app {

class Label;

class DecisionList : public RecordList<core::Decision> {
public:
    DecisionList(Session& session, PageEdits& edits, QWidget* parent = nullptr);
    // New ones are about the option given, where it has lines.
    void showProposal(const core::JobFile& file, const core::Id<core::Proposal>& proposal,
                      const std::optional<core::Id<core::ProposalOption>>& option);
    // A button for each answer the owner may give.
    [[nodiscard]] QWidget& answers() { return *m_answers; }
    // Asks how it came; then the form opens.
    void ask(core::DecisionKind kind);
    void start(core::DecisionKind kind, core::DecisionMeans means);

private:
    void buildForm();
    void buildAnswers();
    [[nodiscard]] RowWords wordsOf(const core::Decision& decision) const;
    [[nodiscard]] Choices options() const;

    Session& m_work;
    std::optional<core::JobFile> m_file;
    std::optional<core::Id<core::Proposal>> m_proposal;
    std::optional<core::Id<core::ProposalOption>> m_option;
    core::DecisionKind m_kind = core::DecisionKind::approved;
    core::DecisionMeans m_means = core::DecisionMeans::signature;
    QWidget* m_answers;
    QWidget* m_how = nullptr; // seen once the answer is said
    Label* m_howWords = nullptr;
};

} // namespace headcap::app
