#include "app/print/print_report.h"

#include <future>
#include <vector>

#include <QPrinter>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "tests/app/print/sample_document.h"
#include "tests/app/print/sample_photos.h"

namespace headcap::app::print {
namespace {

using namespace test;

class PrintReport : public ::testing::Test {
protected:
    PrintReport() {
        m_printer.setOutputFormat(QPrinter::PdfFormat);
        m_printer.setOutputFileName(path());
        m_printer.setPageSize(QPageSize(QPageSize::A4));
    }
    QString path() const { return m_folder.filePath(QStringLiteral("printed.pdf")); }
    QByteArray textOf(int page) const {
        const QString number = QString::number(page);
        return runProgram(QStringLiteral("pdftotext"),
                          {QStringLiteral("-raw"), QStringLiteral("-f"), number,
                           QStringLiteral("-l"), number, path(), QStringLiteral("-")})
            .output;
    }

    QTemporaryDir m_folder;
    QPrinter m_printer{QPrinter::HighResolution};
};

TEST_F(PrintReport, printsAllPagesAndReportsWhatIsAbsent) {
    const PrintOutcome outcome = printReport(sampleDocument(), {}, m_printer);
    EXPECT_TRUE(outcome.isComplete);
    EXPECT_GT(outcome.pages, 3);
    EXPECT_EQ(outcome.absent.size(), 4U);
}

TEST_F(PrintReport, printsTheRangeAskedFor) {
    m_printer.setPrintRange(QPrinter::PageRange);
    m_printer.setFromTo(2, 3);
    EXPECT_EQ(printReport(sampleDocument(), {}, m_printer).pages, 2);
    if (!runProgram(QStringLiteral("pdftotext"), {QStringLiteral("-v")}).isThere) {
        GTEST_SKIP() << "pdftotext is not installed";
    }
    EXPECT_TRUE(textOf(1).contains("page 2 of "));
    EXPECT_TRUE(textOf(2).contains("page 3 of "));
}

TEST_F(PrintReport, printsTheLastPageFirstWhereAsked) {
    m_printer.setPageOrder(QPrinter::LastPageFirst);
    const int pages = printReport(sampleDocument(), {}, m_printer).pages;
    if (!runProgram(QStringLiteral("pdftotext"), {QStringLiteral("-v")}).isThere) {
        GTEST_SKIP() << "pdftotext is not installed";
    }
    EXPECT_TRUE(textOf(pages).contains("page 1 of "));
}

TEST_F(PrintReport, choosesTheSheetNearestToThePaper) {
    EXPECT_EQ(sheetFor(m_printer), Sheet::a4);
    m_printer.setPageSize(QPageSize(QPageSize::Letter));
    EXPECT_EQ(sheetFor(m_printer), Sheet::letter);
    m_printer.setPageSize(QPageSize(QPageSize::A5));
    EXPECT_EQ(printReport(sampleDocument(), {}, m_printer).pages,
              printReport(sampleDocument(), {}, m_printer).pages);
}

TEST_F(PrintReport, printsOnAnotherThreadWhatItPrintsHere) {
    const int pages = printReport(sampleDocument(), {}, m_printer).pages;
    std::vector<int> told;
    const auto noteAll = [&told, pages](int done, int of) {
        EXPECT_EQ(of, pages);
        told.push_back(done);
        return true;
    };
    const PrintOutcome outcome = std::async(std::launch::async, [&] {
                                     return printReport(sampleDocument(), {}, m_printer, noteAll);
                                 }).get();
    EXPECT_TRUE(outcome.isComplete);
    EXPECT_EQ(outcome.pages, pages);
    ASSERT_EQ(told.size(), static_cast<std::size_t>(pages));
    EXPECT_EQ(told.back(), pages);
}

TEST_F(PrintReport, isStoppedAfterThePageInHandAndThePrinterIsFree) {
    const PrintOutcome outcome =
        printReport(sampleDocument(), {}, m_printer, [](int done, int) { return done < 2; });
    EXPECT_FALSE(outcome.isComplete);
    EXPECT_TRUE(outcome.wasStopped);
    EXPECT_EQ(outcome.pages, 2);
    EXPECT_TRUE(printReport(sampleDocument(), {}, m_printer).isComplete);
}

} // namespace
} // namespace headcap::app::print
