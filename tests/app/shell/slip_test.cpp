#include "app/shell/slip.h"

#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::app {
namespace {

SlipWords words(const QString& next) {
    core::SystemClock clock;
    core::IdSource ids{clock, 7};
    return {.job = ids.next<core::Job>(),
            .number = QStringLiteral("2031-017"),
            .book = QStringLiteral("Register of the Hundred of Mereham"),
            .owner = QStringLiteral("the record room"),
            .next = next};
}

// The next thing to do is never cut, however many lines it takes.
TEST(Slip, isAsHighAsItsWordsNeed) {
    QWidget sheet;
    auto* down = new QVBoxLayout(&sheet);
    auto* brief = new Slip(words(QStringLiteral("Collate it.")));
    auto* lengthy = new Slip(words(QStringLiteral(
        "On hold: drying at 45 % RH in the cupboard; nothing is touched before the growth is at "
        "rest and the owner has been told of it by letter")));
    down->addWidget(brief);
    down->addWidget(lengthy);
    down->addStretch(1);
    sheet.resize(480, 600);
    sheet.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&sheet));
    EXPECT_EQ(brief->height(), brief->heightForWidth(brief->width()));
    EXPECT_EQ(lengthy->height(), lengthy->heightForWidth(lengthy->width()));
    EXPECT_GT(lengthy->height(), brief->height());
}

} // namespace
} // namespace headcap::app
