// The proposal: its versions, the options of one of them side by side, the chosen option with its
// lines, and what the owner decided. Sending it and an approval change the state of the job.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "app/form/record_form.h"
#include "app/pages/job_page.h"
#include "app/session/aside.h"
#include "core/treatment/past_work.h"

class QPushButton;

namespace headcap::app {

class CostView;
class DecisionList;
class DepartureList;
class EstimateView;
class Label;
class LineList;
class OptionsTable;
class PaperDesk;
class VersionBar;

class ProposalPage : public JobPage {
    Q_OBJECT
public:
    explicit ProposalPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    bool goTo(const core::RecordRef& ref) override;
    void enter() override;
    bool print() override;

    [[nodiscard]] EstimateView& estimate() { return *m_estimate; }
    [[nodiscard]] CostView& cost() { return *m_cost; }
    [[nodiscard]] DepartureList& departures() { return *m_departures; }
    [[nodiscard]] RecordForm<core::Proposal>& version() { return *m_proposal; }
    [[nodiscard]] OptionsTable& table() { return *m_table; }
    [[nodiscard]] VersionBar& versions() { return *m_versions; }
    [[nodiscard]] DecisionList& decisions() { return *m_decisions; }
    [[nodiscard]] LineList& lines() { return *m_lines; }
    [[nodiscard]] RecordForm<core::ProposalOption>& option() { return *m_option; }
    [[nodiscard]] QPushButton& begin() { return *m_begin; }
    [[nodiscard]] const std::optional<core::Id<core::Proposal>>& shown() const { return m_shown; }

private:
    void buildEmpty();
    void buildVersions();
    void buildProposal();
    void buildOptions();
    void buildOption();
    void buildTerms();
    void showOption(const core::Proposal& shown);
    void showEstimate();
    void askForPast();
    void takePast(std::vector<core::PastWork> past);
    void showShown();
    void choose(const core::Id<core::Proposal>& proposal);
    void chooseOption(const core::Id<core::ProposalOption>& option);
    void beginVersion();
    void markSent();
    void addOption(bool isDoingNothing);
    void removeOption();
    bool goToOption(const core::ProposalOption& option);
    bool apply(core::Change change);
    void saySent(const core::Proposal& proposal);
    [[nodiscard]] const core::Proposal* proposal() const;
    [[nodiscard]] std::optional<core::Id<core::ProposalOption>> optionToShow() const;

    std::optional<core::JobFile> m_file;
    std::optional<core::Id<core::Proposal>> m_shown;
    std::optional<core::Id<core::ProposalOption>> m_chosen;
    QWidget* m_empty;
    PaperDesk* m_desk;
    QPushButton* m_begin;
    QWidget* m_whole;
    VersionBar* m_versions;
    RecordForm<core::Proposal>* m_proposal;
    Label* m_sentWords;
    OptionsTable* m_table;
    QPushButton* m_doNothing;
    Label* m_optionName;
    RecordForm<core::ProposalOption>* m_option;
    LineList* m_lines;
    CostView* m_cost;
    EstimateView* m_estimate;
    DecisionList* m_decisions;
    DepartureList* m_departures;
    // Of the techniques in this job's lines; read again when these have changed.
    Aside* m_aside;
    std::set<std::string> m_pastOf;
    std::optional<std::vector<core::PastWork>> m_past; // nothing: it is being read
};

} // namespace headcap::app
