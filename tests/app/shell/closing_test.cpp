// Closing the window: what can be kept is kept, what can't is said once.
#include <QLineEdit>

#include "app/form/field_row.h"
#include "app/form/form_base.h"
#include "app/pages/job_page.h"
#include "app/report/paper_desk.h"
#include "app/session/intake.h"
#include "app/shell/job_view.h"
#include "tests/app/work/window_test.h"

namespace headcap::app {
namespace {

class ClosingTest : public WindowTest {
protected:
    FieldRow* row(const QString& label) {
        auto& job = *qobject_cast<JobView*>(window.current());
        for (FormBase* form : job.currentPage()->findChildren<FormBase*>()) {
            if (FieldRow* found = form->rowLabelled(label)) {
                return found;
            }
        }
        return nullptr;
    }
    void type(const QString& label, const QString& text) {
        QWidget* control = row(label)->control();
        control->setFocus();
        QTest::keySequence(control, QKeySequence::SelectAll);
        QTest::keyClicks(control, text);
    }
};

TEST_F(ClosingTest, whatCantBeReadIsSaidOnceAndClosingAgainKeepsTheRest) {
    ASSERT_TRUE(window.go({.view = ViewId::job, .job = sample.grafting}));
    type(QStringLiteral("Height"), QStringLiteral("tall"));
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(window.isVisible());
    // Mended, and more was typed: a close that is meant saves like any other.
    type(QStringLiteral("Height"), QStringLiteral("212 mm"));
    type(QStringLiteral("Author"), QStringLiteral("T. Ashwell"));
    EXPECT_TRUE(window.close());
    EXPECT_EQ(file().item.author, "T. Ashwell");
    EXPECT_EQ(file().item.height, core::Length::millimetres(212));
}

class Held : public Intake {
public:
    using Intake::Intake;
    void take() {
        start({.files = 2,
               .takeOne =
                   [this](int) {
                       isBegun = true;
                       while (!isFree) {
                           QThread::msleep(1);
                       }
                       ++taken;
                   },
               .give = [this](const auto&) { isGiven = true; }});
    }
    std::atomic_bool isBegun = false;
    std::atomic_bool isFree = false;
    std::atomic_int taken = 0;
    bool isGiven = false;
};

TEST_F(ClosingTest, whatIsBeingTakenInIsRecordedBeforeTheWindowGoes) {
    auto* held = new Held(&window);
    held->take();
    ASSERT_TRUE(QTest::qWaitFor([&] { return held->isBegun.load(); }, 10'000));
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(window.isVisible());
    held->isFree = true;
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(held->isGiven);
    EXPECT_EQ(held->taken, 1) << "the file in hand";
}

TEST_F(ClosingTest, aPaperThatIsBeingDrawnIsStoppedWhereClosingIsMeant) {
    auto* desk = new PaperDesk(session, &window);
    std::atomic_bool isBegun = false;
    desk->draw(
        [&isBegun](const print::PdfOptions& options) {
            isBegun = true;
            int page = 1;
            while (options.progress(page, 1'000'000)) {
                ++page;
                QThread::msleep(1);
            }
            return page;
        },
        [](int) {});
    ASSERT_TRUE(QTest::qWaitFor([&] { return isBegun.load(); }, 10'000));
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(window.isVisible());
    EXPECT_TRUE(desk->isBusy());
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !desk->isBusy(); }, 10'000));
}

TEST_F(ClosingTest, aJobThatIsGoneIsSaidAndLeft) {
    ASSERT_TRUE(window.go({.view = ViewId::job, .job = sample.hymnal}));
    const core::JobFile hymnal = sample.file(*sample.hymnal);
    core::Change change{.sentence = "Undone: Taken in"};
    change.remove(hymnal.job, hymnal.revisionOf(core::refOf(hymnal.job.id)));
    ASSERT_TRUE(sample.store.apply(change).has_value());
    session.poll();
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.currentId() == ViewId::worklist; }));
}

} // namespace
} // namespace headcap::app
