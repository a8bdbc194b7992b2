#include "app/pages/proposal_page.h"

#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/pages/proposal/cost_view.h"
#include "app/pages/proposal/decision_list.h"
#include "app/pages/proposal/departure_list.h"
#include "app/pages/proposal/estimate_view.h"
#include "app/pages/proposal/line_list.h"
#include "app/pages/proposal/option_head.h"
#include "app/pages/proposal/options_table.h"
#include "app/pages/proposal/version_bar.h"
#include "core/treatment/cost.h"
#include "core/treatment/proposal_versions.h"
#include "core/treatment/totals.h"
#include "tests/app/pages/page_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class ProposalPageTest : public PageTest<ProposalPage> {
protected:
    ProposalPageTest() { EXPECT_TRUE(open(*sample.hymnal, core::Page::proposal)); }
    core::JobFile hymnal() { return sample.file(*sample.hymnal); }
    void begin() { QTest::keyClick(&page().begin(), Qt::Key_Space); }
    // A line in the option shown.
    void addLine(const QString& technique, const QString& price) {
        page().lines().startNew();
        type(page().lines().form(), QStringLiteral("Technique"), technique);
        type(page().lines().form(), QStringLiteral("Price"), price);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    bool isEstimated(int withinMs = 5'000) {
        return QTest::qWaitFor([this] { return !page().estimate().isWaiting(); }, withinMs);
    }
    void decide(core::DecisionKind kind, const QString& by) {
        page().decisions().start(kind, core::DecisionMeans::letter);
        type(page().decisions().form(), QStringLiteral("By"), by);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
};

TEST_F(ProposalPageTest, beginsWithDoingNothingAmongTheOptions) {
    EXPECT_TRUE(page().begin().isVisible());
    begin();
    const auto now = hymnal();
    ASSERT_EQ(now.proposals.size(), 1U);
    EXPECT_TRUE(core::offersDoingNothing(now, now.proposals.front().id));
    EXPECT_EQ(page().table().heads().size(), 2U);
    EXPECT_FALSE(page().begin().isVisible());
}

TEST_F(ProposalPageTest, aLineTakesWhatIsUsualOfItsTechnique) {
    begin();
    addLine(QStringLiteral("Guarding"), QStringLiteral("48.50"));
    const auto now = hymnal();
    ASSERT_EQ(now.lines.size(), 1U);
    EXPECT_EQ(now.lines.front().technique, "guarding");
    EXPECT_GT(now.lines.front().minutes, core::Minutes{0});
    EXPECT_EQ(now.lines.front().price, (core::Money{4'850, "EUR"}));
    const auto cost = core::costOf(now, now.proposals.front(), now.lines.front().option);
    ASSERT_EQ(cost.totals.size(), 1U);
    EXPECT_EQ(cost.totals.front().net, (core::Money{4'850, "EUR"}));
}

TEST_F(ProposalPageTest, aLineSaysWhatSpeaksAgainstTheLotsItNames) {
    for (auto& lot : core::all<core::Lot>(sample.store)) {
        if (lot.record.number == "29-102") {
            lot.record.grain = core::Grain::alongHeight;
            sample.store.changeElsewhere(lot.record);
        }
    }
    begin();
    addLine(QStringLiteral("Lining the spine"), QStringLiteral("48.50"));
    const auto shown = [this] {
        return page().lines().list().model()->index(0, 0).data(Qt::AccessibleTextRole).toString();
    };
    EXPECT_FALSE(shown().contains(QStringLiteral("say how its grain lies")));
    ASSERT_TRUE(page().lines().goTo(hymnal().lines.front().id.uuid()));
    type(page().lines().form(), QStringLiteral("Materials"), QStringLiteral("29-102"));
    EXPECT_TRUE(job().leave());
    EXPECT_TRUE(QTest::qWaitFor([&] {
        return shown().contains(QStringLiteral("say how its grain lies"));
    })) << shown().toStdString();
    type(page().lines().form(), QStringLiteral("Materials"),
         QStringLiteral("29-102, grain along the spine"));
    EXPECT_TRUE(job().leave());
    EXPECT_FALSE(shown().contains(QStringLiteral("say how its grain lies")));
}

TEST_F(ProposalPageTest, sendingTakesTheJobToProposedInOneEntry) {
    begin();
    const std::size_t before = sample.store.changes();
    QTest::keyClick(&page().versions().sent(), Qt::Key_Space);
    EXPECT_EQ(sample.store.changes(), before + 1);
    EXPECT_EQ(hymnal().job.state, core::JobState::proposed);
    EXPECT_EQ(hymnal().proposals.front().sentOn, sample.clock.today());
    EXPECT_FALSE(page().versions().sent().isVisible());
    press(ActionId::undo);
    EXPECT_EQ(hymnal().job.state, core::JobState::received);
    EXPECT_FALSE(hymnal().proposals.front().sentOn.has_value());
}

TEST_F(ProposalPageTest, anApprovalIsNotedWithWhoGaveItAndTheJobIsApproved) {
    begin();
    addLine(QStringLiteral("Guarding"), QStringLiteral("48.50"));
    QTest::keyClick(&page().versions().sent(), Qt::Key_Space);
    const std::size_t before = sample.store.changes();
    decide(core::DecisionKind::approved, QStringLiteral("R. Hale"));
    const auto now = hymnal();
    ASSERT_EQ(now.decisions.size(), 1U);
    EXPECT_EQ(now.decisions.front().byName, "R. Hale");
    EXPECT_EQ(now.decisions.front().option, now.lines.front().option);
    EXPECT_EQ(now.job.state, core::JobState::approved);
    EXPECT_EQ(sample.store.changes(), before + 1);
    ASSERT_FALSE(now.stateChanges.empty());
    EXPECT_EQ(now.stateChanges.back().why, "proposal 1 approved by R. Hale");
}

// By e-mail, by letter: what nobody said is not kept as said.
TEST_F(ProposalPageTest, howAnAnswerCameIsAskedBeforeItsFormOpens) {
    begin();
    page().decisions().ask(core::DecisionKind::declined);
    EXPECT_TRUE(hymnal().decisions.empty());
    auto* way = qobject_cast<QPushButton*>(QApplication::focusWidget());
    ASSERT_NE(way, nullptr);
    EXPECT_TRUE(way->accessibleName().startsWith(QStringLiteral("It came")));
    QTest::keyClick(way, Qt::Key_Space);
    type(page().decisions().form(), QStringLiteral("By"), QStringLiteral("R. Hale"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    ASSERT_EQ(hymnal().decisions.size(), 1U);
    EXPECT_EQ(hymnal().decisions.front().means, core::DecisionMeans::signature);
}

TEST_F(ProposalPageTest, theUsualMinutesFollowHowMany) {
    begin();
    page().lines().startNew();
    FormBase& form = page().lines().form();
    FieldRow* minutes = form.rowLabelled(QStringLiteral("Minutes"));
    type(form, QStringLiteral("Technique"), QStringLiteral("Guarding"));
    const auto usual = core::TechniquesInForce{}.named("guarding")->minutes;
    EXPECT_EQ(minutes->text(), printed(usual));
    type(form, QStringLiteral("How many"), QStringLiteral("3"));
    EXPECT_EQ(minutes->text(), printed(usual * 3));
    type(form, QStringLiteral("Minutes"), QStringLiteral("50"));
    type(form, QStringLiteral("How many"), QStringLiteral("4"));
    EXPECT_NE(minutes->text(), printed(usual * 4)) << "what somebody wrote stays";
}

TEST_F(ProposalPageTest, aRefusalLeavesTheStateToThePerson) {
    begin();
    QTest::keyClick(&page().versions().sent(), Qt::Key_Space);
    decide(core::DecisionKind::declined, QStringLiteral("R. Hale"));
    ASSERT_EQ(hymnal().decisions.size(), 1U);
    EXPECT_EQ(hymnal().job.state, core::JobState::proposed);
}

TEST_F(ProposalPageTest, aNewVersionCopiesTheOptionsAndIsShown) {
    begin();
    addLine(QStringLiteral("Guarding"), QStringLiteral("48.50"));
    QTest::keyClick(&page().versions().next(), Qt::Key_Space);
    const auto now = hymnal();
    ASSERT_EQ(now.proposals.size(), 2U);
    EXPECT_EQ(now.lines.size(), 2U);
    EXPECT_EQ(page().shown(), core::latestProposal(now)->id);
    EXPECT_EQ(core::latestProposal(now)->version, 2);
}

TEST_F(ProposalPageTest, anOptionIsChosenByArrowsAndWrittenBelow) {
    begin();
    OptionHead* first = page().table().heads().front();
    first->setFocus();
    QTest::keyClick(first, Qt::Key_Space);
    EXPECT_EQ(page().option().record()->name, "Do nothing");
    QTest::keyClick(first, Qt::Key_Right);
    EXPECT_EQ(page().option().record()->name, "A");
    EXPECT_TRUE(page().table().heads()[1]->isChosen());
    type(page().option(), QStringLiteral("Can't be undone"), QStringLiteral("the old glue goes"));
    EXPECT_TRUE(job().leave());
    EXPECT_EQ(core::optionsOf(hymnal(), *page().shown())[1]->irreversible, "the old glue goes");
}

TEST_F(ProposalPageTest, goesToALineAndToADecisionOfAnEarlierVersion) {
    begin();
    addLine(QStringLiteral("Guarding"), QStringLiteral("48.50"));
    decide(core::DecisionKind::moreAsked, QStringLiteral("R. Hale"));
    const auto before = hymnal();
    QTest::keyClick(&page().versions().next(), Qt::Key_Space);
    EXPECT_TRUE(page().goTo(core::refOf(before.lines.front().id)));
    EXPECT_EQ(page().shown(), before.proposals.front().id);
    EXPECT_EQ(page().lines().form().record()->id, before.lines.front().id);
    EXPECT_TRUE(page().goTo(core::refOf(before.decisions.front().id)));
    EXPECT_FALSE(page().goTo(core::refOf(before.job.id)));
}

TEST_F(ProposalPageTest, taxAndTermsAreWrittenAndTheSumFollows) {
    begin();
    addLine(QStringLiteral("Guarding"), QStringLiteral("48.50"));
    type(page().version(), QStringLiteral("Tax"), QStringLiteral("19 %"));
    type(page().version(), QStringLiteral("Deposit"), QStringLiteral("20"));
    EXPECT_TRUE(job().leave());
    const core::Proposal proposal = hymnal().proposals.front();
    EXPECT_EQ(proposal.taxPpm, 190'000);
    EXPECT_EQ(proposal.deposit, (core::Money{2'000, "EUR"}));
    QStringList said;
    for (const QLabel* label : page().cost().findChildren<QLabel*>()) {
        said << label->accessibleName();
    }
    EXPECT_TRUE(said.contains(QStringLiteral("In all: 57.72 EUR"))) // 48.50 + 9.215
        << said.join(QStringLiteral("; ")).toStdString();
}

TEST_F(ProposalPageTest, aTaxThatIsNoneIsAskedForInPercent) {
    begin();
    type(page().version(), QStringLiteral("Tax"), QStringLiteral("a fifth"));
    EXPECT_FALSE(job().leave());
    EXPECT_TRUE(page().version().rowLabelled(QStringLiteral("Tax"))->hasError());
}

TEST_F(ProposalPageTest, theEstimateSaysWhatItRestsOn) {
    ASSERT_TRUE(open(*sample.grafting, core::Page::proposal));
    EXPECT_TRUE(page().estimate().isVisible());
    ASSERT_TRUE(isEstimated());
    EXPECT_GT(page().estimate().estimate().high, page().estimate().estimate().low);
    EXPECT_TRUE(page().estimate().sentence().contains(QStringLiteral("usual minutes alone")))
        << page().estimate().sentence().toStdString();
}

TEST_F(ProposalPageTest, anEstimateRestsOnFinishedWorkOfOtherJobs) {
    // The hymnal's line is guarded as it was in a job that has passed.
    core::Job passed = file().job;
    passed.id = sample.ids.next<core::Job>();
    passed.number = "2030-009";
    passed.state = core::JobState::passed;
    sample.store.changeElsewhere(passed);
    for (const core::Step& step : file().steps) {
        core::Step same = step;
        same.id = sample.ids.next<core::Step>();
        same.job = passed.id;
        same.line.reset();
        sample.store.changeElsewhere(same);
    }
    begin();
    addLine(QStringLiteral("Guarding"), QStringLiteral("48.50"));
    ASSERT_TRUE(isEstimated());
    EXPECT_EQ(page().estimate().estimate().lines.front().jobs, 1U);
    EXPECT_TRUE(page().estimate().sentence().contains(QStringLiteral("1 finished step of our own")))
        << page().estimate().sentence().toStdString();
}

TEST_F(ProposalPageTest, whatWasDoneAndNotApprovedIsExplainedWhereItStands) {
    ASSERT_TRUE(open(*sample.grafting, core::Page::proposal));
    const auto open = page().departures().departures();
    ASSERT_FALSE(open.empty());
    ASSERT_TRUE(open.front().isOpen());
    auto* field = page().departures().findChild<QLineEdit*>();
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, QStringLiteral("agreed by telephone"));
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_EQ(file().explanations.size(), 1U);
    EXPECT_EQ(file().explanations.front().subject, open.front().subject);
    EXPECT_FALSE(page().departures().departures().front().isOpen());
}

TEST_F(ProposalPageTest, aVersionIsWrittenOnTheLetterhead) {
    ASSERT_TRUE(open(*sample.grafting, core::Page::proposal));
    sample.prompts.file = sample.folder.filePath(QStringLiteral("proposal.pdf"));
    QTest::keyClick(&page().versions().save(), Qt::Key_Space);
    ASSERT_TRUE(tests::isRead(page()));
    QFile written{*sample.prompts.file};
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.read(8).startsWith("%PDF-1.4"));
}

} // namespace
} // namespace headcap::app
