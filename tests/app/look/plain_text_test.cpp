// What looks like markup in a record stays text wherever it is shown.
#include <QHelpEvent>
#include <QLabel>
#include <QMenu>
#include <QStandardItemModel>
#include <QTableView>
#include <QTest>
#include <QTextDocument>
#include <QTextEdit>
#include <QToolTip>

#include <gtest/gtest.h>

#include "app/pages/page_table.h"
#include "app/session/words.h"
#include "app/shell/main_window.h"
#include "app/shell/person_menu.h"
#include "app/shell/view_table.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

const QString kMarkup = QStringLiteral("<b>bold</b> & <img src=\"x\"> &amp; <script>");

// What a person reads of a tip that is shown.
QString readTip() {
    const QString shown = QToolTip::text();
    if (!Qt::mightBeRichText(shown)) {
        return shown;
    }
    QTextDocument document;
    document.setHtml(shown);
    return document.toPlainText();
}

void askForTip(QWidget& widget, const QPoint& at) {
    QToolTip::hideText();
    QHelpEvent event(QEvent::ToolTip, at, widget.mapToGlobal(at));
    QApplication::sendEvent(&widget, &event);
}

TEST(PlainText, aTipSaysItAsItIsWritten) {
    QWidget widget;
    widget.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&widget));
    for (const QString& tip : {kMarkup, QStringLiteral("Takes back “%1” (Ctrl+Z)").arg(kMarkup),
                               QStringLiteral("plain words")}) {
        widget.setToolTip(tip);
        askForTip(widget, {5, 5});
        EXPECT_EQ(readTip(), tip);
    }
}

TEST(PlainText, aTipOfARowToo) {
    QStandardItemModel model(1, 1);
    model.setData(model.index(0, 0), QStringLiteral("row"));
    model.setData(model.index(0, 0), kMarkup, Qt::ToolTipRole);
    QTableView table;
    table.setModel(&model);
    table.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&table));
    askForTip(*table.viewport(), table.visualRect(model.index(0, 0)).center());
    EXPECT_EQ(readTip(), kMarkup);
}

class MarkupInEveryRecord : public testing::Test {
protected:
    MarkupInEveryRecord() {
        // Every text of every record of the job most is known of.
        for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
            for (const core::Found& found : sample.store.all(static_cast<core::RecordKind>(i))) {
                core::AnyRecord record = found.record;
                std::visit([](auto& one) { markUp(one); }, record);
                sample.store.changeElsewhere(record);
            }
        }
    }
    template <class Record>
    static void markUp(Record& record) {
        std::apply(
            [&](const auto&... fields) {
                const auto mark = [&](const auto& field) {
                    using Value = std::decay_t<decltype(record.*(field.member))>;
                    if constexpr (std::is_same_v<Value, std::string>) {
                        record.*(field.member) += toCore(kMarkup);
                    }
                };
                (mark(fields), ...);
            },
            core::Description<Record>::fields());
    }
    void expectPlain(const QString& where) {
        int seen = 0;
        for (const QLabel* label : window.findChildren<QLabel*>()) {
            if (!label->text().isEmpty()) {
                ++seen;
                EXPECT_EQ(label->textFormat(), Qt::PlainText)
                    << where.toStdString() << ": " << label->text().toStdString();
            }
        }
        EXPECT_GT(seen, 0) << where.toStdString();
        for (const QTextEdit* edit : window.findChildren<QTextEdit*>()) {
            EXPECT_FALSE(edit->acceptRichText()) << where.toStdString();
        }
    }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    MainWindow window{session};
};

TEST_F(MarkupInEveryRecord, noLabelOfAnyViewOrPageReadsIt) {
    window.setVisible(true);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    for (const ViewEntry& entry : viewTable()) {
        if (entry.id != ViewId::job) {
            window.go({.view = entry.id, .words = QStringLiteral("bold")});
            expectPlain(QStringLiteral("view %1").arg(static_cast<int>(entry.id)));
        }
    }
    for (const PageEntry& entry : pageTable()) {
        ASSERT_TRUE(window.go({.view = ViewId::job, .job = sample.grafting, .page = entry.page}));
        expectPlain(titleOf(entry.page));
    }
}

TEST_F(MarkupInEveryRecord, anAmpersandOfANameIsShownInTheMenu) {
    window.setVisible(true);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    popUpPeople(session, window, [] {});
    const auto* menu = window.findChild<QMenu*>();
    ASSERT_NE(menu, nullptr);
    const QString shown = menu->actions().front()->text();
    EXPECT_EQ(QString{shown}.replace(QLatin1String("&&"), QLatin1String("&")),
              fromCore(core::all<core::Person>(sample.store).front().record.name));
    EXPECT_EQ(shown.count(QLatin1String("&&")), 2) << shown.toStdString();
}

} // namespace
} // namespace headcap::app
