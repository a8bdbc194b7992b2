// The proposal as the owner gets it: a sound PDF, every face in it, and everything said that the
// owner must know before agreeing. Checked with qpdf and poppler's tools.
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "app/print/pdf_report.h"
#include "app/session/words.h"
#include "core/report/compose_proposal.h"
#include "core/report/stock_sheet.h"
#include "core/treatment/cost.h"
#include "core/treatment/totals.h"
#include "core/values/typographic.h"
#include "tests/app/print/sample_photos.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app::print {
namespace {

using namespace test;

class ProposalPdf : public ::testing::Test {
protected:
    ProposalPdf() {
        core::Proposal& proposal = file.proposals.front();
        proposal.taxPpm = 190'000;
        proposal.deposit = core::Money{15'000, "EUR"};
        proposal.insuredValue = core::Money{480'000, "EUR"};
        proposal.validUntil = std::chrono::year{2031} / 5 / 1;
    }
    QString write(const core::Document& document) {
        const QString path = folder.filePath(QStringLiteral("paper.pdf"));
        EXPECT_TRUE(writePdf(document, {}, path).has_value());
        return path;
    }
    static QString textOf(const QString& path) {
        const ProgramResult result = runProgram(
            QStringLiteral("pdftotext"), {QStringLiteral("-raw"), path, QStringLiteral("-")});
        return result.isThere ? QString::fromUtf8(result.output).simplified() : QString{};
    }

    QTemporaryDir folder;
    tests::SampleWorkshop sample;
    core::JobFile file{sample.file(*sample.grafting)};
};

TEST_F(ProposalPdf, isSoundAndHasItsFacesInIt) {
    const QString path =
        write(core::composeProposal(file, file.proposals.front(), sample.clock.today()));
    const ProgramResult check =
        runProgram(QStringLiteral("qpdf"), {QStringLiteral("--check"), path});
    const ProgramResult fonts = runProgram(QStringLiteral("pdffonts"), {path});
    if (!check.isThere || !fonts.isThere) {
        GTEST_SKIP() << "qpdf or pdffonts is not installed";
    }
    EXPECT_EQ(check.status, 0) << check.output.toStdString();
    const QStringList lines = QString::fromUtf8(fonts.output).trimmed().split(u'\n');
    ASSERT_GT(lines.size(), 3);
    for (const QString& line : lines.mid(2)) {
        EXPECT_TRUE(line.contains(QStringLiteral(" yes yes yes "))) << line.toStdString();
    }
}

TEST_F(ProposalPdf, saysEveryOptionLinePriceTaxDepositAndWhatCannotBeUndone) {
    const core::Proposal& proposal = file.proposals.front();
    const QString text = textOf(write(core::composeProposal(file, proposal, sample.clock.today())));
    if (text.isEmpty()) {
        GTEST_SKIP() << "pdftotext is not installed";
    }
    const auto says = [&](const std::string& words) {
        EXPECT_TRUE(text.contains(fromCore(core::typographic(words)).simplified())) << words;
    };
    ASSERT_GE(core::optionsOf(file, proposal.id).size(), 3U);
    for (const core::ProposalOption* option : core::optionsOf(file, proposal.id)) {
        says(option->name);
        says(option->irreversible);
        const core::OptionCost cost = core::costOf(file, proposal, option->id);
        for (const core::LineCost& line : cost.lines) {
            says(file.techniques.nameOf(line.line->technique));
            ASSERT_TRUE(line.work);
            says(core::toText(*line.work));
        }
        for (const core::CostTotal& total : cost.totals) {
            says(core::toText(total.net));
            says(core::toText(total.tax));
            says(core::toText(total.gross));
        }
    }
    for (const core::ProposalLine* line :
         core::irreversibleLines(file, core::optionsOf(file, proposal.id).back()->id)) {
        says(file.techniques.nameOf(line->technique));
    }
    for (const char* words : {"Tax 19 %", "Deposit", "Insured for", "Can't be undone", "1 May 2031",
                              "A box; digitising."}) {
        says(words);
    }
    says(core::toText(*proposal.deposit));
    says(core::toText(*proposal.insuredValue));
}

// Worked by hand, for option A: 96 + 32 + 72 + 336 = 536 EUR; 19 % of it is 101.84; 637.84 in all.
TEST_F(ProposalPdf, addsUpAsByHand) {
    const core::Proposal& proposal = file.proposals.front();
    const QString text = textOf(write(core::composeProposal(file, proposal, sample.clock.today())));
    if (text.isEmpty()) {
        GTEST_SKIP() << "pdftotext is not installed";
    }
    for (const std::int64_t cents : {53'600, 10'184, 63'784}) {
        EXPECT_TRUE(text.contains(fromCore(core::toText(core::Money{cents, "EUR"})))) << cents;
    }
}

TEST_F(ProposalPdf, theStockListIsAPaperToo) {
    const core::Shelf shelf = core::loadShelf(sample.store);
    const QString text = textOf(
        write(core::stockSheet(shelf, sample.clock.today(), "Sample bindery", sample.clock)));
    if (text.isEmpty()) {
        GTEST_SKIP() << "pdftotext is not installed";
    }
    EXPECT_TRUE(text.contains(QStringLiteral("as of 6 March 2031"))) << text.toStdString();
    int said = 0;
    for (const core::Lot& lot : shelf.lots) {
        const auto balance = shelf.balanceOf(lot.id);
        if (balance && balance->count > 0) {
            EXPECT_TRUE(text.contains(fromCore(lot.number))) << lot.number;
            EXPECT_TRUE(text.contains(fromCore(core::toText(*balance)))) << lot.number;
            ++said;
        }
    }
    EXPECT_GE(said, 3);
}

} // namespace
} // namespace headcap::app::print
