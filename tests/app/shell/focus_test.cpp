// Where the cursor, a notice and the menu of people come to stand.
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include "app/form/field_row.h"
#include "app/pages/job_page.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_view.h"
#include "app/shell/station.h"
#include "app/shell/worklist_head.h"
#include "app/shell/worklist_view.h"
#include "tests/app/work/window_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class FocusTest : public WindowTest {
protected:
    JobView& job() { return *qobject_cast<JobView*>(window.current()); }
    bool open(core::Page page) {
        return window.go({.view = ViewId::job, .job = sample.grafting, .page = page});
    }
    static QRect inWindow(const QWidget& widget) {
        return {widget.mapTo(widget.window(), QPoint{0, 0}), widget.size()};
    }
};

TEST_F(FocusTest, aNoticeHasItsOwnRoomAndLiesOnNoFieldAndNotOnTheLine) {
    for (const QSize size : {QSize{1440, 900}, QSize{1024, 640}}) {
        window.resize(size);
        for (const core::Page page : {core::Page::bench, core::Page::proposal}) {
            ASSERT_TRUE(open(page));
            session.say({Notice::Kind::refused, QStringLiteral("Not logged: who is working?")});
            tests::settle();
            const QRect notice = inWindow(window.notices());
            EXPECT_TRUE(window.notices().isVisible());
            EXPECT_FALSE(notice.intersects(inWindow(*job().currentPage())));
            EXPECT_FALSE(notice.intersects(inWindow(job().benchLine())));
            EXPECT_LE(notice.bottom(), inWindow(job().benchLine()).top());
        }
    }
    window.go({ViewId::materials});
    session.say({Notice::Kind::done, QStringLiteral("Done")});
    tests::settle();
    EXPECT_FALSE(inWindow(window.notices()).intersects(inWindow(*window.current())));
}

TEST_F(FocusTest, theFieldThatIsWrittenInStaysInSightWhenANoticeComes) {
    window.resize(1024, 640);
    ASSERT_TRUE(open(core::Page::proposal));
    auto* scroll = job().currentPage()->findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    ASSERT_TRUE(tests::isRead(window)); // the estimate, which is read aside, takes room of its own
    for (int i = 0; i < 12; ++i) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    session.say({Notice::Kind::refused, QStringLiteral("That can't be read.")});
    tests::settle();
    const QRect field = inWindow(*QApplication::focusWidget());
    EXPECT_TRUE(inWindow(*scroll->viewport()).contains(field.center()));
}

TEST_F(FocusTest, aRefusalGoesWhenSomethingIsDoneAboutIt) {
    ASSERT_TRUE(open(core::Page::bench));
    session.say({Notice::Kind::refused, QStringLiteral("Add the kind of material first.")});
    ASSERT_FALSE(window.notices().sentence().isEmpty());
    core::Item item = file().item;
    item.title += " again";
    core::Change change{.sentence = "Book: title changed"};
    change.update(item, file().revisionOf(core::refOf(item.id)));
    ASSERT_TRUE(session.apply(std::move(change)));
    EXPECT_TRUE(window.notices().sentence().isEmpty());
}

// A date that can't be read keeps the page; Esc in it takes it back, and the sentence with it.
TEST_F(FocusTest, escTakesBackWhatCannotBeKeptAndTheSentenceGoes) {
    ASSERT_TRUE(open(core::Page::book));
    FieldRow* date = nullptr;
    for (FieldRow* row : job().currentPage()->findChildren<FieldRow*>()) {
        date = date == nullptr && row->label() == QStringLiteral("Date") ? row : date;
    }
    ASSERT_NE(date, nullptr);
    const QString was = date->text();
    date->control()->setFocus();
    QTest::keyClicks(date->control(), QStringLiteral("8vo"));
    press(ActionId::toCollation);
    EXPECT_EQ(job().page(), core::Page::book);
    EXPECT_FALSE(window.notices().sentence().isEmpty());
    ASSERT_TRUE(date->control()->hasFocus());
    QTest::keyClick(date->control(), Qt::Key_Escape);
    EXPECT_EQ(date->text(), was);
    EXPECT_TRUE(window.notices().sentence().isEmpty());
    press(ActionId::toCollation);
    EXPECT_EQ(job().page(), core::Page::collation);
}

TEST_F(FocusTest, aPageComeToAgainStandsWhereItsCursorIs) {
    ASSERT_TRUE(open(core::Page::proposal));
    auto* scroll = job().currentPage()->findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    scroll->verticalScrollBar()->setValue(scroll->verticalScrollBar()->maximum());
    ASSERT_GT(scroll->verticalScrollBar()->value(), 200);
    press(ActionId::toProposal);
    tests::settle();
    const QRect at = inWindow(*QApplication::focusWidget());
    EXPECT_TRUE(inWindow(*scroll->viewport()).contains(at.center()));
}

// The ring is drawn round the name of the page, not over it.
TEST_F(FocusTest, theNameOfAPageCanBeReadWithTheFocusOnIt) {
    ASSERT_TRUE(open(core::Page::survey));
    for (Station* station : window.findChildren<Station*>()) {
        station->show({.page = core::Page::book, .progress = core::PageProgress::settled});
        station->setFocus(Qt::TabFocusReason);
        ASSERT_TRUE(station->hasFocus());
        const QImage with = station->grab().toImage();
        job().benchLine().setFocus(Qt::OtherFocusReason);
        const QImage without = station->grab().toImage();
        int changed = 0;
        for (int y = 0; y < with.height(); ++y) {
            for (int x = 0; x < with.width(); ++x) {
                changed += with.pixel(x, y) == without.pixel(x, y) ? 0 : 1;
            }
        }
        EXPECT_GT(changed, 0);
        EXPECT_LT(changed, with.width() * with.height() / 16);
        break;
    }
}

TEST_F(FocusTest, whereNoSlipHoldsTheWordsThePageSaysWhatEnterDoes) {
    auto* worklist = qobject_cast<WorklistView*>(window.current());
    ASSERT_NE(worklist, nullptr);
    const auto isSaid = [&] {
        for (const QLabel* label : worklist->findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(QStringLiteral("Enter looks"))) {
                return true;
            }
        }
        return false;
    };
    QTest::keyClicks(worklist, QStringLiteral("Grafting"));
    EXPECT_FALSE(isSaid());
    QTest::keyClicks(&worklist->find(), QStringLiteral(" of nothing here"));
    EXPECT_TRUE(isSaid());
    worklist->find().clear();
    EXPECT_FALSE(isSaid());
}

TEST_F(FocusTest, theMenuOfPeopleOpensUnderTheButtonThatNamesThem) {
    auto* worklist = qobject_cast<WorklistView*>(window.current());
    ASSERT_NE(worklist, nullptr);
    worklist->find().setFocus();
    press(ActionId::choosePerson);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    const QWidget* anchor = worklist->personAnchor();
    const QPoint under = anchor->mapToGlobal(QPoint{0, anchor->height()});
    EXPECT_EQ(menu->geometry().top(), under.y());
    menu->close();
    // In a job it hides no field that is being written: it stands in the corner.
    ASSERT_TRUE(open(core::Page::book));
    press(ActionId::choosePerson);
    menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    const QWidget* field = QApplication::focusWidget();
    ASSERT_NE(field, nullptr);
    EXPECT_FALSE(menu->geometry().intersects({field->mapToGlobal(QPoint{0, 0}), field->size()}));
    menu->close();
}

} // namespace
} // namespace headcap::app
