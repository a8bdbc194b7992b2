// A window on a page of the sample job, for tests by keys that look at the store.
#pragma once

#include <QTest>

#include <gtest/gtest.h>

#include "app/form/field_row.h"
#include "app/form/form_base.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_view.h"
#include "app/shell/main_window.h"
#include "app/shell/notice_bar.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {

template <class Page>
class PageTest : public testing::Test {
protected:
    PageTest() {
        window.resize(1440, 900);
        window.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
    }
    bool open(const core::Id<core::Job>& job, core::Page page) {
        return window.go({.view = ViewId::job, .job = job, .page = page});
    }
    JobView& job() { return *qobject_cast<JobView*>(window.current()); }
    Page& page() { return *qobject_cast<Page*>(job().currentPage()); }
    core::JobFile file() { return sample.file(*sample.grafting); }
    void press(ActionId id) {
        QTest::keySequence(QApplication::focusWidget() != nullptr ? QApplication::focusWidget()
                                                                  : &window,
                           keysOf(id).front());
    }
    // Puts the words into a field of a form, in place of what stands there.
    static void type(FormBase& form, const QString& label, const QString& words) {
        FieldRow* row = form.rowLabelled(label);
        ASSERT_NE(row, nullptr) << label.toStdString();
        QWidget* control = row->control();
        control->setFocus();
        QTest::keyClick(control, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(control, words);
    }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    MainWindow window{session};
};

} // namespace headcap::app
