// The whole window on the sample workshop, for tests by keys that look at the store.
#pragma once

#include <QTest>

#include <gtest/gtest.h>

#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/main_window.h"
#include "app/shell/notice_bar.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {

class WindowTest : public testing::Test {
protected:
    WindowTest() {
        window.resize(1440, 900);
        window.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
    }
    void press(ActionId id) {
        QWidget* at = QApplication::focusWidget();
        QTest::keySequence(at != nullptr ? at : &window, keysOf(id).front());
    }
    void key(Qt::Key key) {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), key);
    }
    core::JobFile file() { return sample.file(*sample.grafting); }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    MainWindow window{session};
};

} // namespace headcap::app
