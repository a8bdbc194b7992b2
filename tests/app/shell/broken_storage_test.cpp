// A disk that fails while one works: whatever is touched, a notice says it, and nothing aborts.
#include <QAbstractButton>
#include <QLineEdit>
#include <QMenu>
#include <QTimer>

#include "app/pages/page_table.h"
#include "app/shell/view_table.h"
#include "tests/app/work/window_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class BrokenStorageTest : public WindowTest, public testing::WithParamInterface<Destination> {
protected:
    BrokenStorageTest() {
        // Menus and windows that open are put away.
        QObject::connect(&m_closer, &QTimer::timeout, &putAway);
        m_closer.start(5);
    }
    static void putAway() {
        if (QWidget* open = QApplication::activePopupWidget()) {
            open->close();
        }
        if (QWidget* open = QApplication::activeModalWidget()) {
            open->close();
        }
    }
    Destination destination() const {
        Destination made = GetParam();
        if (made.view == ViewId::job) {
            made.job = sample.grafting;
        }
        return made;
    }
    std::vector<QPointer<QWidget>> touchable() {
        std::vector<QPointer<QWidget>> found;
        for (QAbstractButton* button : window.current()->findChildren<QAbstractButton*>()) {
            found.emplace_back(button);
        }
        for (QLineEdit* line : window.current()->findChildren<QLineEdit*>()) {
            found.emplace_back(line);
        }
        return found;
    }

    static void touch(QWidget& widget) {
        if (!widget.isVisible() || !widget.isEnabled()) {
            return;
        }
        if (auto* button = qobject_cast<QAbstractButton*>(&widget)) {
            button->click();
        } else {
            widget.setFocus(Qt::OtherFocusReason);
            QTest::keyClicks(&widget, QStringLiteral("5 mm"));
            QTest::keyClick(&widget, Qt::Key_Return);
        }
        tests::settle();
        putAway();
    }

private:
    QTimer m_closer;
};

TEST_P(BrokenStorageTest, abortsNothing) {
    ASSERT_TRUE(window.go(destination()));
    ASSERT_TRUE(tests::isReadAhead(window) && tests::isRead(window));
    int failed = 0;
    QObject::connect(&session, &Session::said, &window, [&](const Notice& notice) {
        failed += notice.kind == Notice::Kind::failed ? 1 : 0;
    });
    const auto widgets = touchable();
    sample.store.broken = core::StoreError::Code::ioFailed;
    EXPECT_NO_THROW({
        session.changed();
        for (const auto& widget : widgets) {
            if (widget) {
                touch(*widget);
            }
        }
        (void)window.go(destination());
        session.changed();
        EXPECT_TRUE(tests::isRead(window));
    });
    EXPECT_GT(failed, 0);
    sample.store.broken.reset();
    EXPECT_TRUE(window.go({ViewId::worklist}) || window.go({ViewId::worklist}));
}

std::vector<Destination> everywhere() {
    std::vector<Destination> all;
    for (const ViewEntry& entry : viewTable()) {
        if (entry.id != ViewId::job) {
            all.push_back({.view = entry.id});
        }
    }
    for (const PageEntry& entry : pageTable()) {
        all.push_back({.view = ViewId::job, .page = entry.page});
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Views, BrokenStorageTest, testing::ValuesIn(everywhere()));

} // namespace
} // namespace headcap::app
