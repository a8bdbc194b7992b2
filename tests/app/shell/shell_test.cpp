// The whole window, by keys, with a look at the store.
#include <QAbstractButton>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/field_row.h"
#include "app/form/form_base.h"
#include "app/form/record_choices.h"
#include "app/form/record_list.h"
#include "app/look/fonts.h"
#include "app/pages/job_page.h"
#include "app/session/actions.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_head.h"
#include "app/shell/job_view.h"
#include "app/shell/main_window.h"
#include "app/shell/margin.h"
#include "app/shell/margin_note.h"
#include "app/shell/new_job_view.h"
#include "app/shell/notice_bar.h"
#include "app/shell/slip_group.h"
#include "app/shell/station.h"
#include "app/shell/view_table.h"
#include "app/shell/worklist_view.h"
#include "core/custody/hazards.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

class ShellTest : public testing::Test {
protected:
    ShellTest() {
        window.resize(1440, 900);
        window.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
    }
    void press(ActionId id) {
        const QKeySequence keys = keysOf(id).front();
        QTest::keySequence(
            QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : &window, keys);
    }
    WorklistView& worklist() { return *qobject_cast<WorklistView*>(window.current()); }
    JobView& job() { return *qobject_cast<JobView*>(window.current()); }
    bool openGrafting() { return window.go({.view = ViewId::job, .job = sample.grafting}); }
    FieldRow* row(const QString& label) {
        for (FormBase* form : job().currentPage()->findChildren<FormBase*>()) {
            if (FieldRow* found = form->rowLabelled(label)) {
                return found;
            }
        }
        return nullptr;
    }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    MainWindow window{session};
};

TEST_F(ShellTest, beginsWithASlipForEachJobInTheHouse) {
    int slips = 0;
    for (const SlipGroup* group : worklist().groups()) {
        slips += static_cast<int>(group->slips().size());
    }
    EXPECT_EQ(slips, static_cast<int>(sample.store.inTheHouse().size()));
}

TEST_F(ShellTest, opensAJobByEnterOnItsSlipAndEscStepsBack) {
    Slip* slip = nullptr;
    for (const SlipGroup* group : worklist().groups()) {
        slip = slip == nullptr ? group->firstShown() : slip;
    }
    ASSERT_NE(slip, nullptr);
    slip->setFocus();
    QTest::keyClick(slip, Qt::Key_Return);
    EXPECT_EQ(window.currentId(), ViewId::job);
    press(ActionId::back);
    EXPECT_EQ(window.currentId(), ViewId::worklist);
}

TEST_F(ShellTest, typingAnywhereOnTheWorklistFinds) {
    worklist().setFocus();
    QTest::keyClicks(&worklist(), QStringLiteral("graf"));
    EXPECT_EQ(worklist().find().text(), QStringLiteral("graf"));
    int shown = 0;
    for (const SlipGroup* group : worklist().groups()) {
        for (const Slip* slip : group->slips()) {
            shown += slip->isHidden() ? 0 : 1;
        }
    }
    EXPECT_EQ(shown, 1);
    QTest::keyClick(&worklist().find(), Qt::Key_Return);
    EXPECT_EQ(window.currentId(), ViewId::job) << "the one that is left";
    press(ActionId::back);
    QTest::keyClicks(&worklist(), QStringLiteral("guarded"));
    QTest::keyClick(&worklist().find(), Qt::Key_Return);
    EXPECT_EQ(window.currentId(), ViewId::find) << "none is left: everywhere";
}

TEST_F(ShellTest, theKeyOfAPageIsNoWordToFind) {
    ASSERT_TRUE(window.go({.view = ViewId::find, .words = QStringLiteral("guarded")}));
    auto* words = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(words, nullptr);
    QTest::sendKeyEvent(QTest::Click, words, Qt::Key_5, QStringLiteral("5"), Qt::AltModifier);
    EXPECT_EQ(words->text(), QStringLiteral("guarded"));
    QTest::keyClicks(words, QStringLiteral("5"));
    EXPECT_EQ(words->text(), QStringLiteral("5")) << "without Alt it is typed over what was asked";
}

TEST_F(ShellTest, leavingAPageSavesItAndEscLosesNothing) {
    ASSERT_TRUE(openGrafting());
    QWidget* author = row(QStringLiteral("Author"))->control();
    author->setFocus();
    QTest::keyClick(author, Qt::Key_End);
    QTest::keyClicks(author, QStringLiteral(", gent."));
    EXPECT_TRUE(window.go({ViewId::worklist}));
    EXPECT_EQ(sample.file(*sample.grafting).item.author, "Thomas Ashwell, gent.");
}

TEST_F(ShellTest, closingTheWindowLosesNothing) {
    ASSERT_TRUE(openGrafting());
    QWidget* author = row(QStringLiteral("Author"))->control();
    author->setFocus();
    QTest::keyClick(author, Qt::Key_End);
    QTest::keyClicks(author, QStringLiteral(", gent."));
    EXPECT_TRUE(window.close());
    EXPECT_EQ(sample.file(*sample.grafting).item.author, "Thomas Ashwell, gent.");
}

TEST_F(ShellTest, anotherWorkshopIsAskedForOnceThisOneIsSavedAndClosed) {
    ASSERT_TRUE(openGrafting());
    int asked = 0;
    QObject::connect(&window, &MainWindow::otherWorkshopAsked, &window, [&] { ++asked; });
    QWidget* author = row(QStringLiteral("Author"))->control();
    author->setFocus();
    QTest::keyClick(author, Qt::Key_End);
    QTest::keyClicks(author, QStringLiteral(", gent."));
    press(ActionId::otherWorkshop);
    EXPECT_EQ(asked, 1);
    EXPECT_FALSE(window.isVisible());
    EXPECT_EQ(sample.file(*sample.grafting).item.author, "Thomas Ashwell, gent.");
}

TEST_F(ShellTest, anotherWorkshopWaitsWhereSomethingCannotBeRead) {
    ASSERT_TRUE(openGrafting());
    int asked = 0;
    QObject::connect(&window, &MainWindow::otherWorkshopAsked, &window, [&] { ++asked; });
    QWidget* height = row(QStringLiteral("Height"))->control();
    height->setFocus();
    QTest::keyClick(height, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(height, QStringLiteral("14 spans"));
    press(ActionId::otherWorkshop);
    EXPECT_EQ(asked, 0);
    EXPECT_TRUE(window.isVisible());
}

TEST_F(ShellTest, aCautionIsShownWholeInANarrowWindow) {
    ASSERT_TRUE(openGrafting());
    auto* strip = window.findChild<HazardStrip*>();
    ASSERT_NE(strip, nullptr);
    const auto lines = [&](int width) {
        window.resize(width, 800);
        QCoreApplication::sendPostedEvents();
        const QFontMetrics metrics{faceFont(Face::smallStrong)};
        EXPECT_GE(strip->width(), width - 2);
        return strip->height() / metrics.height();
    };
    EXPECT_EQ(lines(2400), 1);
    EXPECT_EQ(lines(1024), 2);
}

TEST_F(ShellTest, undoWorksFromAnywhereWithItsSentence) {
    ASSERT_TRUE(openGrafting());
    QWidget* author = row(QStringLiteral("Author"))->control();
    author->setFocus();
    QTest::keyClick(author, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(author, QStringLiteral("T. A."));
    QTest::keyClick(author, Qt::Key_Return);
    ASSERT_EQ(sample.file(*sample.grafting).item.author, "T. A.");
    press(ActionId::undo);
    EXPECT_EQ(sample.file(*sample.grafting).item.author, "Thomas Ashwell");
    EXPECT_EQ(window.notices().sentence(), QStringLiteral("Undone: Book: author changed"));
    EXPECT_EQ(row(QStringLiteral("Author"))->text(), QStringLiteral("Thomas Ashwell"));
}

TEST_F(ShellTest, movingTheBookIsOnRecord) {
    ASSERT_TRUE(openGrafting());
    const std::size_t before = sample.file(*sample.grafting).moves.size();
    QWidget* kept = row(QStringLiteral("Kept at"))->control();
    kept->setFocus();
    QTest::keyClick(kept, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(kept, QStringLiteral("bench 2"));
    QTest::keyClick(kept, Qt::Key_Return);
    const auto file = sample.file(*sample.grafting);
    EXPECT_EQ(file.job.keptAt, "bench 2");
    ASSERT_EQ(file.moves.size(), before + 1);
    EXPECT_EQ(file.moves.back().toPlace, "bench 2");
    EXPECT_EQ(file.moves.back().who, sample.orrin);
}

TEST_F(ShellTest, logsALineOfTheBench) {
    ASSERT_TRUE(openGrafting());
    press(ActionId::toBenchLine);
    QLineEdit& line = job().benchLine().line();
    EXPECT_TRUE(line.hasFocus());
    const std::size_t before = sample.file(*sample.grafting).steps.size();
    QTest::keyClicks(&line, QStringLiteral("guarded K7 with 31-006 0.6 g 18 min"));
    QTest::keyClick(&line, Qt::Key_Return);
    const auto file = sample.file(*sample.grafting);
    ASSERT_EQ(file.steps.size(), before + 1);
    EXPECT_TRUE(line.text().isEmpty());
    EXPECT_EQ(file.steps.back().minutes, core::Minutes{18});
    EXPECT_EQ(file.steps.back().who, *sample.orrin);
}

TEST_F(ShellTest, keepsTheLineWhereItCouldNotBeSaved) {
    ASSERT_TRUE(openGrafting());
    QLineEdit& line = job().benchLine().line();
    line.setFocus();
    QTest::keyClicks(&line, QStringLiteral("guarded K7 18 min"));
    sample.store.failNext = core::StoreError::Code::diskFull;
    QTest::keyClick(&line, Qt::Key_Return);
    EXPECT_EQ(line.text(), QStringLiteral("guarded K7 18 min"));
    EXPECT_TRUE(window.notices().sentence().contains(QStringLiteral("disk is full")));
}

TEST_F(ShellTest, aNoteOfTheMarginGoesToItsPlaceByEnter) {
    ASSERT_TRUE(openGrafting());
    for (MarginNote* note : job().margin().findChildren<MarginNote*>()) {
        if (note->accessibleName().contains(QStringLiteral("arsenical"), Qt::CaseInsensitive)) {
            note->setFocus();
            QTest::keyClick(note, Qt::Key_Return);
        }
    }
    ASSERT_TRUE(QTest::qWaitFor([&] {
        return job().page() == core::Page::book && row(QStringLiteral("Hazard"))->isVisible();
    }));
    EXPECT_EQ(row(QStringLiteral("Hazard"))->text().toStdString(),
              core::hazardName("arsenical_green"));
    EXPECT_TRUE(row(QStringLiteral("Hazard"))->isVisible());
}

TEST_F(ShellTest, seesWhatAnotherWindowChanged) {
    ASSERT_TRUE(openGrafting());
    auto item = sample.file(*sample.grafting).item;
    item.author = "T. Ashwell the elder";
    sample.store.changeElsewhere(item);
    session.poll();
    EXPECT_EQ(row(QStringLiteral("Author"))->text(), QStringLiteral("T. Ashwell the elder"));
}

TEST_F(ShellTest, takesInABook) {
    press(ActionId::newJob);
    ASSERT_EQ(window.currentId(), ViewId::newJob);
    auto* view = qobject_cast<NewJobView*>(window.current());
    const auto type = [&](const QString& label, const QString& text) {
        for (FormBase* form : view->findChildren<FormBase*>()) {
            if (FieldRow* found = form->rowLabelled(label)) {
                QTest::keyClicks(found->control(), text);
                return;
            }
        }
    };
    EXPECT_FALSE(view->takeIn()); // for nobody
    type(QStringLiteral("Title"), QStringLiteral("Rule of the Tides"));
    type(QStringLiteral("Date"), QStringLiteral("ca. 1590"));
    type(QStringLiteral("Name"), QStringLiteral("Mere College"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    const auto line = sample.store.numbered("2031-017");
    ASSERT_TRUE(line.has_value());
    EXPECT_EQ(line->title, "Rule of the Tides, ca. 1590");
    EXPECT_EQ(line->owner, "Mere College"); // known already: not a second one
    EXPECT_EQ(window.currentId(), ViewId::job);
    EXPECT_EQ(sample.store.all(core::RecordKind::owner).size(), 7U);
}

TEST_F(ShellTest, ofTwoOwnersOfOneNameTheChosenOneBringsTheBook) {
    core::Owner lane{.id = sample.ids.next<core::Owner>(), .name = "R. Hale"};
    lane.address = "Harrow Lane 4";
    core::Owner shop{.id = sample.ids.next<core::Owner>(), .name = "R. Hale"};
    shop.telephone = "555 0142";
    sample.store.put(lane);
    sample.store.put(shop);
    press(ActionId::newJob);
    auto* view = qobject_cast<NewJobView*>(window.current());
    QLineEdit* name = nullptr;
    for (FormBase* form : view->findChildren<FormBase*>()) {
        if (FieldRow* found = form->rowLabelled(QStringLiteral("Name"))) {
            name = qobject_cast<QLineEdit*>(found->control());
        }
    }
    ASSERT_NE(name, nullptr);
    QTest::keyClicks(name, QStringLiteral("R. Hale"));
    EXPECT_FALSE(view->takeIn()); // which of them?
    QTest::keyClicks(name, QStringLiteral(", 555 0142"));
    EXPECT_TRUE(view->takeIn());
    const auto line = sample.store.numbered("2031-017");
    ASSERT_TRUE(line.has_value());
    EXPECT_EQ(sample.file(line->id).job.owner, shop.id);
}

TEST_F(ShellTest, takesInABookThatHasBeenHereBefore) {
    press(ActionId::newJob);
    auto* view = qobject_cast<NewJobView*>(window.current());
    ASSERT_NE(view, nullptr);
    const std::size_t books = sample.store.all(core::RecordKind::item).size();
    for (FormBase* form : view->findChildren<FormBase*>()) {
        if (FieldRow* found = form->rowLabelled(QStringLiteral("Seen before"))) {
            QTest::keyClicks(found->control(), QStringLiteral("Sermons on the Tides"));
        }
    }
    EXPECT_TRUE(view->takeIn());
    EXPECT_EQ(sample.store.all(core::RecordKind::item).size(), books);
    const auto line = sample.store.numbered("2031-017");
    ASSERT_TRUE(line.has_value());
    EXPECT_EQ(sample.file(line->id).otherJobs.size(), 1U);
}

TEST_F(ShellTest, booksAndOwnersAreOfferedByWhatIsTyped) {
    const auto offered = booksLike(session, QStringLiteral("sermons ti"));
    ASSERT_EQ(offered.size(), 1U);
    EXPECT_TRUE(offered.front().words.startsWith(QStringLiteral("Sermons on the Tides")));
    EXPECT_TRUE(offered.front().words.contains(QStringLiteral(" · "))) << "whose it is";
    // What was offered is found again by its own words, date and owner among them.
    EXPECT_EQ(keyOf(booksLike(session, offered.front().words), offered.front().words),
              offered.front().key);
    EXPECT_FALSE(booksLike(session, {}).empty()) << "the newest";
    EXPECT_TRUE(booksLike(session, QStringLiteral("no such words")).empty());
    EXPECT_EQ(wordsOf(ownersLike(session, QStringLiteral("mere c"))),
              QStringList{QStringLiteral("Mere College")});
}

TEST_F(ShellTest, whoIsWorkingIsAskedWhereAStepNeedsIt) {
    session.setPerson(std::nullopt);
    ASSERT_TRUE(openGrafting());
    press(ActionId::toBenchLine);
    QLineEdit& line = job().benchLine().line();
    QTest::keyClicks(&line, QStringLiteral("guarded K7 12 min"));
    QTest::keyClick(&line, Qt::Key_Return);
    EXPECT_EQ(line.text(), QStringLiteral("guarded K7 12 min")) << "nothing typed is lost";
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    QTest::keyClick(menu, Qt::Key_Return); // the first of them
    ASSERT_TRUE(session.person().has_value());
    const std::size_t before = sample.file(*sample.grafting).steps.size();
    QTest::keyClick(&line, Qt::Key_Return);
    EXPECT_EQ(sample.file(*sample.grafting).steps.size(), before + 1);
}

TEST_F(ShellTest, theBenchLineHasItsOwnWordsBackBeforeARecordIsUndone) {
    ASSERT_TRUE(openGrafting());
    press(ActionId::toBenchLine);
    QLineEdit& line = job().benchLine().line();
    QTest::keyClicks(&line, QStringLiteral("guarded K7 12 min"));
    QTest::keyClick(&line, Qt::Key_Escape);
    ASSERT_TRUE(line.text().isEmpty());
    const std::size_t changes = sample.store.changes();
    QTest::keyClick(&line, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(line.text(), QStringLiteral("guarded K7 12 min"));
    EXPECT_EQ(sample.store.changes(), changes);
    QTest::keyClick(&line, Qt::Key_Return); // what was taken is the record's to undo
    ASSERT_EQ(sample.store.changes(), changes + 1);
    QTest::keyClick(&line, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(sample.store.last().kind, core::EntryKind::undo);
}

TEST_F(ShellTest, thereIsNoWayBackToTheTakingInOfABookTakenIn) {
    press(ActionId::newJob);
    auto* view = qobject_cast<NewJobView*>(window.current());
    ASSERT_NE(view, nullptr);
    for (FormBase* form : view->findChildren<FormBase*>()) {
        for (const auto& [label, words] :
             {std::pair{"Title", "Rule of the Tides"}, std::pair{"Name", "Mere College"}}) {
            if (FieldRow* found = form->rowLabelled(QLatin1String(label))) {
                QTest::keyClicks(found->control(), QLatin1String(words));
            }
        }
    }
    ASSERT_TRUE(view->takeIn());
    ASSERT_EQ(window.currentId(), ViewId::job);
    press(ActionId::back);
    EXPECT_EQ(window.currentId(), ViewId::worklist);
}

TEST_F(ShellTest, aPersonWhoIsEnteredCanBeChosen) {
    ASSERT_TRUE(window.go({ViewId::workshop}));
    RecordList<core::Person>* people = nullptr;
    for (ListSection* list : window.current()->findChildren<ListSection*>()) {
        people = dynamic_cast<RecordList<core::Person>*>(list);
    }
    ASSERT_NE(people, nullptr);
    people->startNew();
    QWidget* name = people->form().rowLabelled(QStringLiteral("Name"))->control();
    QTest::keyClicks(name, QStringLiteral("L. Fenn"));
    QTest::keyClick(name, Qt::Key_Return);
    const auto choices = peopleOf(session)();
    EXPECT_EQ(choices.back().words, QStringLiteral("L. Fenn"));
}

// Every control that can have the focus says what it is, on every view and page.
TEST_F(ShellTest, everyControlHasANameForScreenReaders) {
    const auto check = [&] {
        for (QWidget* widget : window.findChildren<QWidget*>()) {
            const bool isControl = widget->focusPolicy() != Qt::NoFocus &&
                                   !widget->inherits("QAbstractScrollAreaScrollBarContainer") &&
                                   !widget->inherits("View") && widget->focusProxy() == nullptr;
            if (!isControl || qobject_cast<View*>(widget) != nullptr ||
                qobject_cast<JobPage*>(widget) != nullptr || widget->parent() == nullptr ||
                widget->inherits("QScrollBar") || widget->inherits("QComboBoxPrivateContainer") ||
                widget->inherits("QComboBoxListView") || widget->inherits("QHeaderView") ||
                widget->inherits("QTableCornerButton")) {
                continue;
            }
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            const QString name = widget->accessibleName().isEmpty() && button != nullptr
                                     ? button->text()
                                     : widget->accessibleName();
            EXPECT_FALSE(name.isEmpty()) << widget->metaObject()->className() << " in "
                                         << widget->parent()->metaObject()->className();
        }
    };
    for (const ViewEntry& view : viewTable()) {
        window.go({.view = view.id, .job = sample.grafting});
    }
    ASSERT_TRUE(openGrafting());
    for (const core::Page page :
         {core::Page::book, core::Page::collation, core::Page::survey, core::Page::proposal,
          core::Page::bench, core::Page::materials, core::Page::photographs, core::Page::report}) {
        job().turnTo(page);
    }
    check();
}

TEST_F(ShellTest, theSewingLineSaysTheStateOfEachPageInWords) {
    ASSERT_TRUE(openGrafting());
    const auto stations = job().findChildren<Station*>();
    ASSERT_EQ(stations.size(), 8);
    for (const Station* station : stations) {
        EXPECT_FALSE(station->accessibleName().isEmpty());
        EXPECT_FALSE(station->accessibleDescription().isEmpty());
    }
}

// A step back closes the innermost thing: the list of a choice before the page.
TEST_F(ShellTest, aStepBackClosesAnOpenListFirst) {
    ASSERT_TRUE(window.go({.view = ViewId::cutting}));
    QComboBox* choice = nullptr;
    for (QComboBox* box : window.current()->findChildren<QComboBox*>()) {
        choice = choice == nullptr && box->count() > 1 && box->isVisible() ? box : choice;
    }
    ASSERT_NE(choice, nullptr);
    choice->showPopup();
    ASSERT_NE(QApplication::activePopupWidget(), nullptr);
    // The system offers a key to the shortcuts first: who claims it there has it.
    QWidget* list = QApplication::activePopupWidget()->focusWidget();
    ASSERT_NE(list, nullptr);
    QKeyEvent offered{QEvent::ShortcutOverride, Qt::Key_Escape, Qt::NoModifier};
    offered.ignore();
    QCoreApplication::sendEvent(list, &offered);
    EXPECT_TRUE(offered.isAccepted());
    EXPECT_NE(QApplication::activePopupWidget(), nullptr);
    QTest::keyClick(list, Qt::Key_Escape);
    EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
    EXPECT_EQ(window.currentId(), ViewId::cutting);
    press(ActionId::back);
    EXPECT_EQ(window.currentId(), ViewId::worklist);
}

// The record that a button stood for may go, and the button with it: the keys do not go nowhere.
TEST_F(ShellTest, theKeysGoOnWhenWhatHadTheFocusIsGone) {
    ASSERT_TRUE(openGrafting());
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    auto* gone = new QPushButton(QStringLiteral("gone"), job().currentPage());
    gone->show();
    gone->setFocus();
    ASSERT_EQ(QApplication::focusWidget(), gone);
    delete gone;
    ASSERT_TRUE(QTest::qWaitFor([] { return QApplication::focusWidget() != nullptr; }, 5'000));
    press(ActionId::toReport);
    EXPECT_EQ(job().page(), core::Page::report);
}

} // namespace
} // namespace headcap::app
