#include "app/pages/survey_page.h"

#include <QPushButton>
#include <QComboBox>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/ruled_list.h"
#include "app/pages/survey_words.h"
#include "tests/support/sample_survey.h"

namespace headcap::app {
namespace {

class SurveyPageTest : public testing::Test {
protected:
    SurveyPageTest() {
        QObject::connect(&session, &Session::changed, &page, [this] { load(); });
        page.resize(1000, 800);
    }
    void open() {
        load();
        page.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&page));
    }
    void load() { page.load(sample.file(*sample.grafting)); }
    RuledList& list(const char* name) {
        for (RuledList* one : page.findChildren<RuledList*>()) {
            if (one->accessibleName() == QLatin1String(name)) {
                return *one;
            }
        }
        throw std::logic_error{name};
    }
    QWidget* field(const char* label) {
        for (FieldRow* row : page.findChildren<FieldRow*>()) {
            if (row->isVisible() && row->label() == QLatin1String(label)) {
                return row->control();
            }
        }
        throw std::logic_error{label};
    }
    void write(const char* label, const char* text) {
        field(label)->setFocus();
        QTest::keyClicks(field(label), QString::fromUtf8(text));
        QTest::keyClick(field(label), Qt::Key_Tab);
    }
    std::vector<core::Finding> findings() { return sample.file(*sample.grafting).findings; }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    SurveyPage page{session};
};

TEST_F(SurveyPageTest, offersTheTermsOfTheComponent) {
    const auto names = wordsOf(termChoices(QStringLiteral("Joints and hinges")));
    EXPECT_TRUE(names.contains(QStringLiteral("Inner hinge split")));
    EXPECT_FALSE(names.contains(QStringLiteral("Corner exposed")));
    EXPECT_TRUE(termChoices(QStringLiteral("a thing of ours")).empty());
}

TEST_F(SurveyPageTest, listsByComponentTheWorstFirst) {
    addSurvey(sample);
    open();
    auto given = findings();
    std::reverse(given.begin(), given.end());
    std::vector<std::string> terms;
    for (const auto& one : inSurveyOrder(given)) {
        terms.push_back(one.term);
    }
    EXPECT_EQ(terms, (std::vector<std::string>{"detached", "corner_exposed", "lacking",
                                               "outer_joint_cracked", "red_rot", "glassine tape"}));
}

TEST_F(SurveyPageTest, removesAFindingAndLeavesItsPhotographs) {
    addSurvey(sample);
    addPhotographs(sample);
    auto photo = sample.file(*sample.grafting).photographs[0];
    const auto finding = inSurveyOrder(findings())[0];
    photo.finding = finding.id;
    sample.store.changeElsewhere(photo);
    open();
    RuledList& list = this->list("Findings");
    list.setFocus();
    list.select(finding.id.uuid());
    QTest::keyClick(&list, Qt::Key_Delete);
    EXPECT_EQ(core::find(sample.store, finding.id).has_value(), false);
    EXPECT_EQ(core::find(sample.store, photo.id)->record.finding, std::nullopt);
    session.undo();
    EXPECT_EQ(core::find(sample.store, photo.id)->record.finding, finding.id);
}

TEST_F(SurveyPageTest, goesToWhatTheAuditNames) {
    addSurvey(sample);
    open();
    const auto file = sample.file(*sample.grafting);
    EXPECT_TRUE(page.goTo(core::refOf(file.findings[1].id)));
    EXPECT_TRUE(page.goTo(core::refOf(file.examinations[0].id)));
    EXPECT_TRUE(page.goTo(core::refOf(file.tests[0].id)));
    EXPECT_FALSE(page.goTo(core::refOf(file.job.id)));
}

} // namespace
} // namespace headcap::app
