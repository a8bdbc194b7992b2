// Makes pictures of the windows: headcap_pictures OUTDIR [ONLY]. Light and dark, at 1x and 2x, at
// 1,024 and 1,440 px; ONLY keeps those whose name holds it.
#include <cstdio>
#include <functional>

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLineEdit>
#include <QPainter>
#include <QPixmap>
#include <QProcess>
#include <QProcessEnvironment>
#include <QPushButton>
#include <QTest>
#include <QThread>

#include "app/form/ruled_table.h"
#include "app/look/dress.h"
#include "app/pages/bench/open_lines.h"
#include "app/pages/bench/setting_strip.h"
#include "app/pages/bench/step_form.h"
#include "app/pages/bench/uses_editor.h"
#include "app/pages/bench/work_button.h"
#include "app/pages/bench_page.h"
#include "app/pages/collation/leaf_sheet_section.h"
#include "app/pages/collation/leaf_sheet_view.h"
#include "app/pages/collation/walk_section.h"
#include "app/pages/collation_page.h"
#include "app/pages/page_table.h"
#include "app/pages/photographs_page.h"
#include "app/pages/proposal/decision_list.h"
#include "app/pages/proposal_page.h"
#include "app/pages/report_page.h"
#include "app/photo/contact_sheet.h"
#include "app/photo/photo_grid.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_view.h"
#include "app/shell/main_window.h"
#include "app/shell/worklist_view.h"
#include "app/stock/cutting_view.h"
#include "app/stock/piece_list.h"
#include "app/work/day_view.h"
#include "app/work/setting_watch.h"
#include "core/collation/walk_entries.h"
#include "tests/app/pictures/printed.h"
#include "tests/support/sample_survey.h"
#include "tests/support/sample_workshop.h"

namespace headcap::tests {
namespace {

constexpr int kReadingMs = 150; // until photographs are read

// A window on the sample workshop, brought to where the picture is taken.
struct Scene {
    QString name;
    std::function<void(app::MainWindow&, SampleWorkshop&)> set;
    bool isTall = false; // the whole page, not a window of it
};

app::JobView& jobView(app::MainWindow& window) {
    return *qobject_cast<app::JobView*>(window.current());
}

// The collation page of a book of this make-up.
app::CollationPage& collationOf(app::MainWindow& window, SampleWorkshop& sample,
                                const char* formula, const char* extent) {
    core::Collation collation{.id = sample.ids.next<core::Collation>(), .job = *sample.hymnal};
    collation.formula = formula;
    collation.extent = extent;
    sample.store.changeElsewhere(collation);
    window.go({.view = app::ViewId::job, .job = sample.hymnal, .page = core::Page::collation});
    return *qobject_cast<app::CollationPage*>(jobView(window).currentPage());
}

void keys(const char* text) {
    QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
}

// A small book, a folio with complicated preliminaries, a wholly unsigned one; and a walk.
void addCollations(std::vector<Scene>& all) {
    struct Book {
        const char* name;
        const char* formula;
        const char* extent;
    };
    for (const Book& book :
         {Book{"whole-collation-small", "8°: A-D⁸ (-D8)", "62 p."},
          Book{"whole-collation-folio", "2°: π² ¶⁴ 2¶² A⁶(A1+1) πA² B-2F⁶ 2G⁴(-2G4) χ1 a-c⁶ (±b3)",
               "[18], 352, 36, [2] p."},
          Book{"whole-collation-unsigned", "4°: [1-6⁸] [7⁶]", "[108] p."}}) {
        all.push_back({QLatin1String(book.name),
                       [book](app::MainWindow& window, SampleWorkshop& sample) {
                           collationOf(window, sample, book.formula, book.extent);
                       },
                       true});
    }
    const auto walk = [](app::MainWindow& window, SampleWorkshop& sample) {
        auto& page = collationOf(window, sample, "8°: A⁴ B-2P⁸", "[8], 592 p.");
        page.walk().go();
        keys("EE  ");
        keys("A");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        keys("21");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    };
    all.push_back({QStringLiteral("whole-walk"), walk, true});
    all.push_back(
        {QStringLiteral("walk-reading"),
         [walk](app::MainWindow& window, SampleWorkshop& sample) { walk(window, sample); }});
    all.push_back({QStringLiteral("whole-walk-note"),
                   [walk](app::MainWindow& window, SampleWorkshop& sample) {
                       walk(window, sample);
                       keys("L");
                       QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
                       keys("    T");
                       keys("along the fold");
                   },
                   true});
}

// Somebody else went through the book before, and says otherwise of one leaf.
void walksApart(app::MainWindow& window, SampleWorkshop& sample) {
    auto& page = collationOf(window, sample, "8°: A⁴ B-D⁸", "[8], 48 p.");
    const core::JobFile file = sample.file(*sample.hymnal);
    const core::Collation& collation = file.collations.back();
    const core::WalkedBook walked = core::walkedBook(collation.formula, collation.extent);
    const core::WalkPen pen{.ids = sample.ids, .now = sample.clock.now(), .who = {}};
    const core::Walk walk =
        beginWalk(*sample.hymnal, {}, collation, core::WalkKind::againstMakeUp, pen);
    sample.store.changeElsewhere(walk);
    for (const std::size_t leaf : {0U, 4U, 12U, 20U}) {
        sample.store.changeElsewhere(restAsExpected(walk, walked.book, leaf, pen));
    }
    page.walk().go();
    keys("E  M");
    keys("after B7");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    keys("EEE");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
}

// The sheet of leaves, half ticked; and two walks that do not agree.
void addLeafSheets(std::vector<Scene>& all) {
    const auto sheet = [](app::MainWindow& window, SampleWorkshop& sample) {
        int position = 0;
        for (const auto& [technique, leaves, done] :
             {std::tuple{"tear_mending", "A2, B1–B4, C8", "A2, B1"},
              std::tuple{"guarding", "A1–A4, C1, C8", ""},
              std::tuple{"washing", "gatherings A–B", "gathering A"}}) {
            core::LeafTask task{.id = sample.ids.next<core::LeafTask>(), .job = *sample.hymnal};
            task.position = ++position;
            task.technique = technique;
            task.leaves = leaves;
            task.done = done;
            sample.store.changeElsewhere(task);
        }
        auto& page = collationOf(window, sample, "8°: A⁴ B-D⁸", "[8], 48 p.");
        page.leafSheet().enter();
        QTest::qWait(kReadingMs);
        QTest::keySequence(QApplication::focusWidget(),
                           QKeySequence{QLatin1String(app::kSheetKey)});
        QTest::qWait(kReadingMs);
    };
    all.push_back({QStringLiteral("whole-leaf-sheet"), sheet, true});
    all.push_back({QStringLiteral("leaf-sheet"), sheet});
    all.push_back({QStringLiteral("whole-walks-apart"), walksApart, true});
}

// Endpapers and wrappers planned from three sheets of paper.
void showCutting(app::MainWindow& window, SampleWorkshop& sample) {
    const core::Material paper{.id = sample.ids.next<core::Material>(),
                               .name = "A paper for endpapers, 110 g/m²",
                               .kind = core::MaterialClass::paper,
                               .unit = core::Unit::sheet};
    core::Change change{.sentence = "Paper received"};
    change.add(paper);
    for (const auto& [number, width, height, sheets] :
         {std::tuple{"31-030", 640, 900, 6}, std::tuple{"31-031", 300, 420, 1}}) {
        const core::Lot lot{.id = sample.ids.next<core::Lot>(),
                            .number = number,
                            .material = paper.id,
                            .origin =
                                sheets == 1 ? core::LotOrigin::offcut : core::LotOrigin::bought,
                            .sheetWidth = core::Length::millimetres(width),
                            .sheetHeight = core::Length::millimetres(height),
                            .grain = core::Grain::alongHeight};
        change.add(lot).add(core::LedgerEntry{.id = sample.ids.next<core::LedgerEntry>(),
                                              .lot = lot.id,
                                              .at = sample.clock.now(),
                                              .amount = core::Amount::sheets(sheets)});
    }
    (void)sample.store.apply(change);
    window.go({.view = app::ViewId::cutting, .job = sample.grafting});
    auto* view = qobject_cast<app::CuttingView*>(window.current());
    const auto piece = [&](const char* name, int width, int height, core::GrainWay grain, int n) {
        view->pieces().add({.id = name,
                            .width = core::Length::millimetres(width),
                            .height = core::Length::millimetres(height),
                            .grain = grain,
                            .count = n});
    };
    piece("endpaper fold", 242, 196, core::GrainWay::alongHeight, 4);
    piece("wrapper", 420, 210, core::GrainWay::alongHeight, 1);
    piece("guard", 24, 186, core::GrainWay::alongHeight, 6);
    (void)QTest::qWaitFor([&] { return view->planned().has_value(); }, 10'000);
}

// The day and the techniques; a setting that is over; a lot past its date in the line.
void addWork(std::vector<Scene>& all) {
    all.push_back({QStringLiteral("techniques"), [](app::MainWindow& window, SampleWorkshop&) {
                       window.go({app::ViewId::techniques});
                   }});
    all.push_back({QStringLiteral("day"), [](app::MainWindow& window, SampleWorkshop& sample) {
                       window.go({app::ViewId::day});
                       auto* view = qobject_cast<app::DayView*>(window.current());
                       const auto steps = sample.file(*sample.grafting).steps;
                       view->showDay(sample.clock.dayOf(steps.back().at));
                   }});
    all.push_back(
        {QStringLiteral("has-set"), [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go(
                 {.view = app::ViewId::job, .job = sample.grafting, .page = core::Page::survey});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setText(QStringLiteral("lined spine 29-102 1 sheet 40 min sets 90 min"));
             QTest::keyClick(&line, Qt::Key_Return);
             sample.clock.at += std::chrono::minutes{114};
             window.settings().look();
         }});
    all.push_back(
        {QStringLiteral("bench-reason"), [](app::MainWindow& window, SampleWorkshop& sample) {
             for (auto& lot : core::all<core::Lot>(sample.store)) {
                 if (lot.record.number == "31-006") {
                     lot.record.goodUntil = std::chrono::year{2031} / 3 / 1;
                     sample.store.changeElsewhere(lot.record);
                 }
             }
             window.go(
                 {.view = app::ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setFocus();
             line.setText(QStringLiteral("guarded K7 with 31-006 0.6 g 18 min"));
             QTest::keyClick(&line, Qt::Key_Return);
         }});
}

// What lies over a page: a menu, an opened choice, the list of a field; and a lot that is begun.
void addOpened(std::vector<Scene>& all) {
    all.push_back({QStringLiteral("people"), [](app::MainWindow& window, SampleWorkshop&) {
                       QTest::keyClick(window.current(), Qt::Key_U, Qt::ControlModifier);
                   }});
    all.push_back(
        {QStringLiteral("people-job"), [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = app::ViewId::job, .job = sample.grafting});
             QTest::keyClick(window.current(), Qt::Key_U, Qt::ControlModifier);
         }});
    const auto newLot = [](app::MainWindow& window) {
        window.go({app::ViewId::materials});
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Insert);
    };
    all.push_back({QStringLiteral("new-lot"), [newLot](app::MainWindow& window, SampleWorkshop&) {
                       newLot(window);
                       QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
                       keys("9");
                       (void)window.current()->leave();
                   }});
    all.push_back(
        {QStringLiteral("list-of-field"), [newLot](app::MainWindow& window, SampleWorkshop&) {
             newLot(window);
             QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
         }});
    all.push_back(
        {QStringLiteral("choice-list"), [newLot](app::MainWindow& window, SampleWorkshop&) {
             newLot(window);
             for (auto* box : window.current()->findChildren<QComboBox*>()) {
                 if (box->accessibleName() == QLatin1String("It was")) {
                     box->showPopup();
                 }
             }
         }});
}

std::vector<Scene> scenes() {
    using app::ViewId;
    std::vector<Scene> all{
        {QStringLiteral("worklist"), [](app::MainWindow&, SampleWorkshop&) {}},
        {QStringLiteral("all-jobs"),
         [](app::MainWindow& window, SampleWorkshop&) {
             qobject_cast<app::WorklistView*>(window.current())->setTable(true);
         }},
        {QStringLiteral("find"),
         [](app::MainWindow& window, SampleWorkshop&) {
             window.go({.view = ViewId::find, .words = QStringLiteral("orchard")});
         }},
        {QStringLiteral("new-job"),
         [](app::MainWindow& window, SampleWorkshop&) { window.go({ViewId::newJob}); }},
        {QStringLiteral("materials-view"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go(
                 {.view = ViewId::materials,
                  .record = core::refOf(core::all<core::Lot>(sample.store).front().record.id)});
         }},
        {QStringLiteral("materials-whole"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go(
                 {.view = ViewId::materials,
                  .record = core::refOf(core::all<core::Lot>(sample.store).front().record.id)});
         },
         true},
        {QStringLiteral("mixing"),
         [](app::MainWindow& window, SampleWorkshop&) { window.go({ViewId::mixing}); }, true},
        {QStringLiteral("cutting"), showCutting, true},
        {QStringLiteral("stock"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go(
                 {.view = ViewId::stock,
                  .record = core::refOf(core::all<core::Lot>(sample.store).front().record.id)});
         },
         true},
        {QStringLiteral("keys"),
         [](app::MainWindow& window, SampleWorkshop&) { window.go({ViewId::keys}); }},
        {QStringLiteral("workshop"),
         [](app::MainWindow& window, SampleWorkshop&) { window.go({ViewId::workshop}); }},
        {QStringLiteral("backups"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             sample.upkeep.outside = sample.clock.now() - std::chrono::hours{9 * 24};
             sample.upkeep.outsideAt = "/media/blue-disk/headcap";
             sample.upkeep.inside = sample.clock.now() - std::chrono::hours{2};
             window.go({ViewId::backups});
             QTest::keyClick(window.current(), Qt::Key_B, Qt::ControlModifier);
         }},
        {QStringLiteral("backups-none"),
         [](app::MainWindow& window, SampleWorkshop&) { window.go({ViewId::backups}); }},
        {QStringLiteral("backups-running"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             sample.upkeep.outsideAt = "/media/blue-disk/headcap";
             sample.upkeep.onBackup = [](const std::filesystem::path& folder,
                                         const core::Progress& progress) {
                 while (progress(312, 1'040)) {
                     QThread::msleep(20);
                 }
                 return core::BackupReport{.folder = folder};
             };
             window.go({ViewId::backups});
             QTest::keyClick(window.current(), Qt::Key_B, Qt::ControlModifier);
         }},
        {QStringLiteral("worklist-backup"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             sample.upkeep.outside = sample.clock.now() - std::chrono::hours{9 * 24};
             window.go({ViewId::worklist});
         }},
        {QStringLiteral("form-open"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             const auto piece = sample.file(*sample.grafting).pieces.front();
             window.go({.view = ViewId::job,
                        .job = sample.grafting,
                        .page = core::Page::book,
                        .record = core::refOf(piece.id)});
         }},
        {QStringLiteral("state"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting});
             QTest::keyClick(window.current(), Qt::Key_J, Qt::ControlModifier);
         }},
        {QStringLiteral("bench-line"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setFocus();
             line.setText(QStringLiteral("guarded K7 with 31-006 0.6 g and 29-102 18 min"));
         }},
        {QStringLiteral("bench-note"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setFocus();
             line.setText(QStringLiteral("mended title leaf beside the old repair 20 min"));
         }},
        {QStringLiteral("whole-decision"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::proposal});
             auto* page = qobject_cast<app::ProposalPage*>(jobView(window).currentPage());
             page->decisions().ask(core::DecisionKind::approvedWithLimits);
         },
         true},
        {QStringLiteral("bench-substance"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setFocus();
             line.setText(QStringLiteral("mended B2 EVA 2 g, press until tomorrow 9am, 20 min"));
             QTest::keyClick(&line, Qt::Key_Return);
         }},
        {QStringLiteral("bench-times"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setFocus();
             line.setText(
                 QStringLiteral("set label back 31-006 2 g, 1 g wasted, 25 min, 1 h 15 min"));
             QTest::keyClick(&line, Qt::Key_Return);
         }},
        {QStringLiteral("bench-undoing"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setFocus();
             line.setText(QStringLiteral("reattached boards 31-006 2 g 1 h"));
             QTest::keyClick(&line, Qt::Key_Return);
         }},
        {QStringLiteral("bench-step"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             auto* page = qobject_cast<app::BenchPage*>(jobView(window).currentPage());
             page->log().setFocus();
             QTest::keyClick(&page->log(), Qt::Key_Up);
             QTest::keyClick(&page->log(), Qt::Key_Return);
         }},
        {QStringLiteral("bench-form"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             auto* page = qobject_cast<app::BenchPage*>(jobView(window).currentPage());
             QTest::keyClick(&page->lines().add(), Qt::Key_Space);
             QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("Guarding"));
             page->form().uses().addBlank();
             QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("31-006"));
         },
         true},
        {QStringLiteral("bench-clocks"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             auto* page = qobject_cast<app::BenchPage*>(jobView(window).currentPage());
             for (app::WorkButton* button : page->lines().buttons()) {
                 if (button->mark() == app::WorkButton::Mark::starts) {
                     QTest::mouseClick(button, Qt::LeftButton);
                     break;
                 }
             }
             jobView(window).benchLine().line().setText(
                 QStringLiteral("lined spine 29-102 1 sheet 40 min sets 90 min"));
             QTest::keyClick(&jobView(window).benchLine().line(), Qt::Key_Return);
             sample.clock.at += std::chrono::minutes{114};
             page->lines().tick();
             page->findChild<app::SettingStrip*>()->tick();
         }},
        {QStringLiteral("bench-offers"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
             QLineEdit& line = jobView(window).benchLine().line();
             line.setFocus();
             QTest::keyClicks(&line, QStringLiteral("guarded K7 with 31"));
         }},
        {QStringLiteral("release"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::report});
             auto* page = qobject_cast<app::ReportPage*>(jobView(window).currentPage());
             QTest::mouseClick(&page->letGo(), Qt::LeftButton);
         }},
        {QStringLiteral("notice"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting});
             sample.store.failNext = core::StoreError::Code::diskFull;
             jobView(window).benchLine().line().setText(QStringLiteral("washed K7 20 min"));
             QTest::keyClick(&jobView(window).benchLine().line(), Qt::Key_Return);
         }},
    };
    addOpened(all);
    const auto choosePhotograph = [](app::MainWindow& window, SampleWorkshop& sample) {
        window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::photographs});
        auto* page = qobject_cast<app::PhotographsPage*>(jobView(window).currentPage());
        page->goTo(core::refOf(sample.file(*sample.grafting).photographs[3].id));
        return page;
    };
    all.push_back({QStringLiteral("whole-photographs-chosen"), choosePhotograph, true});
    all.push_back({QStringLiteral("photographs-large"),
                   [choosePhotograph](app::MainWindow& window, SampleWorkshop& sample) {
                       auto& grid =
                           choosePhotograph(window, sample)->sheet().grid(core::PhotoRole::before);
                       QTest::keyClick(&grid, Qt::Key_Return);
                   }});
    all.push_back(
        {QStringLiteral("whole-survey-chosen"),
         [](app::MainWindow& window, SampleWorkshop& sample) {
             window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::survey});
             jobView(window).currentPage()->goTo(
                 core::refOf(sample.file(*sample.grafting).findings[0].id));
         },
         true});
    addCollations(all);
    addWork(all);
    addLeafSheets(all);
    for (const app::PageEntry& entry : app::pageTable()) {
        const QString name = app::titleOf(entry.page).toLower();
        all.push_back({QStringLiteral("page-") + name,
                       [page = entry.page](app::MainWindow& window, SampleWorkshop& sample) {
                           window.go({.view = ViewId::job, .job = sample.grafting, .page = page});
                       }});
        all.push_back({QStringLiteral("whole-") + name,
                       [page = entry.page](app::MainWindow& window, SampleWorkshop& sample) {
                           window.go({.view = ViewId::job, .job = sample.grafting, .page = page});
                       },
                       true});
        all.push_back({QStringLiteral("empty-") + name,
                       [page = entry.page](app::MainWindow& window, SampleWorkshop& sample) {
                           window.go({.view = ViewId::job, .job = sample.hymnal, .page = page});
                       }});
    }
    return all;
}

void take(const Scene& scene, const QDir& folder, const QString& tone, int scale) {
    for (const int width : {1024, 1440}) {
        SampleWorkshop sample;
        addSurvey(sample);
        addPhotographs(sample);
        app::Session session{sample.means()};
        app::MainWindow window{session};
        window.resize(width, scene.isTall ? 2400 : width == 1024 ? 768 : 900);
        window.setVisible(true);
        if (!QTest::qWaitForWindowExposed(&window)) {
            std::fputs("no window\n", stderr);
            return;
        }
        scene.set(window, sample);
        QTest::qWait(kReadingMs);
        const QString file =
            QStringLiteral("%1-%2-%3-%4x.png").arg(scene.name, tone).arg(width).arg(scale);
        QPixmap taken = window.grab();
        if (QWidget* popup = QApplication::activePopupWidget()) { // a window of its own
            QPainter painter{&taken};
            painter.drawPixmap(popup->pos() - window.pos(), popup->grab());
            popup->close();
        }
        taken.save(folder.filePath(file));
        std::printf("%s\n", qPrintable(file));
    }
}

} // namespace
} // namespace headcap::tests

int main(int argc, char** argv) {
    using namespace headcap;
    if (argc < 2) {
        std::fputs("headcap_pictures OUTDIR [ONLY]\n", stderr);
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QDir folder{QString::fromLocal8Bit(argv[1])};
    folder.mkpath(QStringLiteral("."));
    const QString only = argc > 2 ? QString::fromLocal8Bit(argv[2]) : QString{};
    const int scale = qRound(application.devicePixelRatio());
    for (const auto tone : {app::Tone::light, app::Tone::dark}) {
        app::dress(application, {.tone = tone});
        const bool isLight = tone == app::Tone::light;
        for (const tests::Scene& scene : tests::scenes()) {
            if (only.isEmpty() || scene.name.contains(only)) {
                tests::take(scene, folder,
                            isLight ? QStringLiteral("light") : QStringLiteral("dark"), scale);
            }
        }
    }
    if (scale == 1 && (only.isEmpty() || only == QStringLiteral("printed"))) {
        app::dress(application, {.tone = app::Tone::light});
        tests::printAll(folder);
    }
    if (scale == 1) {
        // The factor is read when a program starts.
        QProcess twice;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("QT_SCALE_FACTOR"), QStringLiteral("2"));
        twice.setProcessEnvironment(environment);
        twice.setProcessChannelMode(QProcess::ForwardedChannels);
        twice.start(QApplication::applicationFilePath(), application.arguments().mid(1));
        twice.waitForFinished(-1);
    }
    return 0;
}
