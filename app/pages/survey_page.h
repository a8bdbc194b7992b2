// The condition as it came: findings by component in the order of a survey, the photographs that
// show the chosen one, how the book was examined and what was not, spot tests and samples.
#pragma once

#include "app/form/record_form.h"
#include "app/form/record_list.h"
#include "app/pages/job_page.h"

namespace headcap::app {

class SurveyPage : public JobPage {
    Q_OBJECT
public:
    explicit SurveyPage(Session& session, QWidget* parent = nullptr);

    void load(const core::JobFile& file) override;
    bool goTo(const core::RecordRef& ref) override;

private:
    void buildFindings();
    void buildFindingForm();
    void buildExaminations();
    void buildTests();
    [[nodiscard]] QString photographsOf(const core::Finding& finding) const;

    RecordList<core::Finding>* m_findings;
    RecordList<core::Examination>* m_examinations;
    RecordList<core::Test>* m_tests;
    std::optional<core::JobFile> m_file;
};

} // namespace headcap::app
