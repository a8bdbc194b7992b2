#include "tests/app/pictures/printed.h"

#include <cstdio>

#include <QPrinter>

#include "app/print/labels.h"
#include "app/print/print_report.h"
#include "app/stock/plan_paper.h"
#include "core/cutting/plan_cuts.h"
#include "core/materials/ledger.h"
#include "core/report/compose_proposal.h"
#include "core/report/compose_report.h"
#include "core/report/leaf_sheet_paper.h"
#include "core/report/materials_sheet.h"
#include "core/report/receipt.h"
#include "core/report/stock_sheet.h"
#include "tests/support/sample_workshop.h"

namespace headcap::tests {
namespace {

core::Length mm(std::int64_t n) {
    return core::Length::millimetres(n);
}

class Paper {
public:
    Paper(const QDir& folder, const char* name) : m_printer(QPrinter::HighResolution) {
        m_printer.setOutputFormat(QPrinter::PdfFormat);
        m_printer.setOutputFileName(folder.filePath(QString::fromUtf8(name)));
        std::printf("%s\n", name);
    }
    QPrinter& printer() { return m_printer; }

private:
    QPrinter m_printer;
};

// Thirty pieces of many sizes out of one large sheet, its damaged edges trimmed.
core::CutProblem thirtyPieces() {
    using core::GrainWay;
    core::CutProblem problem;
    problem.rules.leastStrip = mm(5);
    problem.rules.leastOffcut = mm(40);
    problem.sheets.push_back({"31-030", mm(1000), mm(700), GrainWay::alongHeight});
    problem.sheets.front().trim = {mm(6), mm(6), mm(4), mm(9)};
    problem.pieces = {{"endpaper fold", mm(242), mm(196), GrainWay::alongHeight, 4},
                      {"pastedown", mm(128), mm(194), GrainWay::alongHeight, 2},
                      {"spine lining", mm(27), mm(180), GrainWay::alongHeight, 2},
                      {"guard", mm(24), mm(186), GrainWay::alongHeight, 10},
                      {"hinge", mm(18), mm(60), GrainWay::none, 8},
                      {"label", mm(70), mm(45), GrainWay::none, 4}};
    return problem;
}

core::CutProblem severalSheets() {
    core::CutProblem problem = thirtyPieces();
    problem.sheets = {{"31-031", mm(300), mm(420), core::GrainWay::alongHeight},
                      {"31-030", mm(640), mm(450), core::GrainWay::alongHeight, 6},
                      {"29-007", mm(500), mm(380), core::GrainWay::none, 2}};
    problem.pieces.push_back({"wrapper", mm(420), mm(210), core::GrainWay::alongHeight, 2});
    return problem;
}

void printCutting(const QDir& folder, const char* name, const core::CutProblem& problem) {
    const auto plan = core::planCuts(problem, core::usualLimits(problem.objective));
    Paper paper{folder, name};
    app::printPlan(paper.printer(),
                   {.workshop = QStringLiteral("The Stell Bindery"),
                    .job = QStringLiteral("2031-014, A Booke of Grafting, 1612"),
                    .material = QStringLiteral("A paper for endpapers, 110 g/m²"),
                    .day = QStringLiteral("6 March 2031"),
                    .by = QStringLiteral("M. Orrin")},
                   problem, *plan);
}

app::print::LabelWords label(const char* number, const char* title,
                             std::initializer_list<const char*> lines, const char* caution) {
    app::print::LabelWords words{.number = QString::fromUtf8(number),
                                 .title = QString::fromUtf8(title),
                                 .caution = QString::fromUtf8(caution)};
    for (const char* line : lines) {
        words.lines << QString::fromUtf8(line);
    }
    return words;
}

void printLabelSheets(const QDir& folder) {
    const std::vector<app::print::LabelWords> labels{
        label("31-006", "wheat starch paste",
              {"good until 12 March 2031", "mixed 26 February 2031"}, ""),
        label("2031-014",
              "A Booke of Grafting, with the Planting of Orchards and the Ordering of Nurseries",
              {"Harrow Lane Library Trust"}, "arsenical green: suspected"),
        label("31-044", "hydroxypropylcellulose in ethanol",
              {"good until 1 May 2031", "2 % w/v", "mixed 1 March 2031", "cold shelf, left"},
              "Flammable: flash point of ethanol 12 °C; keep from flames, ventilate, wear gloves")};
    int number = 0;
    for (const app::print::LabelSheet& sheet : app::print::labelSheets()) {
        ++number;
        Paper paper{folder, qPrintable(QStringLiteral("labels-%1.pdf").arg(number))};
        paper.printer().setPageSize(
            QPageSize{QSizeF{sheet.pageWidth, sheet.pageHeight}, QPageSize::Millimeter});
        app::print::printLabels(paper.printer(), sheet, labels, 1);
    }
    Paper paper{folder, "labels-test-page.pdf"};
    app::print::printTestPage(paper.printer(), app::print::labelSheets().front());
}

} // namespace

void printAll(const QDir& folder) {
    printCutting(folder, "plan-thirty-pieces.pdf", thirtyPieces());
    printCutting(folder, "plan-several-sheets.pdf", severalSheets());
    printLabelSheets(folder);
    SampleWorkshop sample;
    {
        Paper paper{folder, "stock.pdf"};
        (void)app::print::printReport(core::stockSheet(core::loadShelf(sample.store),
                                                       sample.clock.today(), "The bindery",
                                                       sample.clock),
                                      {}, paper.printer());
    }
    const core::JobFile file = sample.file(*sample.grafting);
    const core::HandBack back{.id = sample.ids.next<core::HandBack>(),
                              .job = file.job.id,
                              .onDay = sample.clock.today(),
                              .who = file.people.front().id};
    const auto print = [&](const char* name, const core::Document& document) {
        Paper paper{folder, name};
        (void)app::print::printReport(document, {}, paper.printer());
    };
    print("proposal.pdf",
          core::composeProposal(file, file.proposals.front(), sample.clock.today()));
    print("materials.pdf", core::materialsSheet(file, {}, sample.clock));
    print("receipt.pdf", core::arrivalReceiptOf(file, sample.clock));
    print("receipt-for-the-return.pdf", core::receiptOf(file, back, sample.clock));
    print("leaves.pdf", core::leafSheetPaper(file, sample.clock));
    print("report.pdf", core::composeReport(file, {.date = sample.clock.today()}, sample.clock));
}

} // namespace headcap::tests
