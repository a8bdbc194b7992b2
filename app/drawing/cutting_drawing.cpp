#include "app/drawing/cutting_drawing.h"

#include <algorithm>
#include <set>

#include <QCoreApplication>

#include "app/drawing/cut_list.h"
#include "app/drawing/cut_marks.h"
#include "app/drawing/sheet_painter.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

constexpr double kGutter = 32;
constexpr double kTwoColumnsFrom = 760;
constexpr double kTallest = 640;
constexpr double kMarks = CutMarks::kRoom;
constexpr double kCaption = 26;
constexpr double kLegendRow = 20;
constexpr double kMost = 1.0; // px a mm: small sheets are not blown up beyond it

QString tr(const char* text) {
    return QCoreApplication::translate("CuttingDrawing", text);
}

std::set<std::size_t> piecesOn(const core::CutPlan& plan, const core::SheetPlace& on) {
    std::set<std::size_t> pieces;
    for (const core::PlacedPiece& placed : plan.placed) {
        if (placed.on == on) {
            pieces.insert(placed.piece);
        }
    }
    return pieces;
}

QString captionOf(const core::CutProblem& problem, const core::SheetPlace& on) {
    const core::StockSheet& sheet = problem.sheets[on.sheet];
    const QString caption = tr("%1, sheet %2: %3 mm")
                                .arg(fromCore(sheet.id))
                                .arg(on.number)
                                .arg(sizeWords(sheet.width, sheet.height));
    return caption + (sheet.grain == core::GrainWay::none         ? tr(", no grain")
                      : sheet.grain == core::GrainWay::alongWidth ? tr(", grain along its width")
                                                                  : tr(", grain along its height"));
}

QStringList legendOf(const core::CutProblem& problem, const core::CutPlan& plan,
                     const core::SheetPlace& on) {
    QStringList words;
    for (const std::size_t piece : piecesOn(plan, on)) {
        words << tr("%1  %2").arg(letterOf(piece), fromCore(problem.pieces[piece].id));
    }
    return words;
}

// Words set one after the other, wrapped; gives how high they came.
double paintWrapped(QPainter* painter, const QFont& font, const QColor& ink,
                    const QStringList& words, const QRectF& area) {
    const QFontMetricsF metrics{font};
    double x = area.left();
    double y = area.top();
    for (const QString& word : words) {
        const double wide = metrics.horizontalAdvance(word) + 18;
        if (x > area.left() && x + wide > area.right()) {
            x = area.left();
            y += kLegendRow;
        }
        if (painter != nullptr) {
            painter->setFont(font);
            painter->setPen(ink);
            painter->drawText(QRectF{x, y, wide, kLegendRow}, Qt::AlignLeft | Qt::AlignVCenter,
                              word);
        }
        x += wide;
    }
    return words.isEmpty() ? 0 : y + kLegendRow - area.top();
}

struct Grid {
    int columns;
    double column; // its width
    double scale;
    double beside;              // room for numbers left and right of a sheet
    bool mayStandBeside = true; // the words beside the sheet
};

Grid gridOf(const CuttingDrawing& drawing, const core::CutProblem& problem,
            const core::CutPlan& plan, double width) {
    const auto sheets = sheetsCut(plan);
    double widest = 1;
    double tallest = 1;
    for (const core::SheetPlace& on : sheets) {
        widest = std::max(widest, mm(problem.sheets[on.sheet].width));
        tallest = std::max(tallest, mm(problem.sheets[on.sheet].height));
    }
    const int columns = sheets.size() > 1 && width >= kTwoColumnsFrom ? 2 : 1;
    const double column = (width - kGutter * (columns - 1)) / columns;
    const double beside = CutMarks::roomBeside(problem, plan, drawing.small);
    return {columns, column, std::min({kMost, (column - 2 * beside) / widest, kTallest / tallest}),
            beside};
}

} // namespace

std::vector<core::SheetPlace> sheetsCut(const core::CutPlan& plan) {
    std::set<core::SheetPlace> sheets;
    for (const core::PlacedPiece& placed : plan.placed) {
        sheets.insert(placed.on);
    }
    return {sheets.begin(), sheets.end()};
}

QString letterOf(std::size_t piece) {
    QString letters;
    for (std::size_t n = piece + 1; n > 0; n = (n - 1) / 26) {
        letters.prepend(QChar(static_cast<char16_t>(u'a' + (n - 1) % 26)));
    }
    return letters;
}

QString sizeWords(core::Length width, core::Length height) {
    return QStringLiteral("%1 × %2").arg(mmWords(width), mmWords(height));
}

namespace {

// Legend and cuts stand beside the sheet where there is room, else below it.
struct Block {
    QRectF legend;
    QRectF cuts;
    double height; // of it all
};

Block blockOf(const CuttingDrawing& drawing, const core::CutProblem& problem,
              const core::CutPlan& plan, const core::SheetPlace& on, const Grid& grid) {
    const CutList cuts{problem, plan, on, drawing.small, drawing.isPaper};
    const double wide = mm(problem.sheets[on.sheet].width) * grid.scale + 2 * grid.beside;
    const double tall = mm(problem.sheets[on.sheet].height) * grid.scale + 2 * kMarks;
    const double left = wide + kGutter;
    const bool isBeside = grid.mayStandBeside && grid.column - left >= cuts.columnWidth();
    QRectF legend = isBeside ? QRectF{left, kCaption, grid.column - left, 0}
                             : QRectF{0, kCaption + tall + 6, grid.column, 0};
    legend.setHeight(paintWrapped(nullptr, drawing.small, {}, legendOf(problem, plan, on), legend) +
                     kLegendRow / 2);
    QRectF list{legend.left(), legend.bottom(), legend.width(), 0};
    list.setHeight(cuts.height(list.width(), isBeside ? kCaption + tall - legend.bottom() : 0));
    return {legend, list, std::max(kCaption + tall + 6, list.bottom()) + kGutter / 2};
}

// A sheet with its caption above.
void paintBlock(QPainter& painter, const CuttingDrawing& drawing, const core::CutProblem& problem,
                const core::CutPlan& plan, const core::SheetPlace& on, const QPointF& at,
                const Grid& grid) {
    painter.setFont(drawing.words);
    painter.setPen(drawing.colours.ink);
    painter.drawText(QRectF{at.x(), at.y(), grid.column, kCaption},
                     Qt::AlignLeft | Qt::AlignVCenter, captionOf(problem, on));
    const Frame frame{{at.x() + grid.beside, at.y() + kCaption + kMarks}, grid.scale};
    SheetPainter{painter, drawing, problem, plan, on, frame}.paint();
    const Block block = blockOf(drawing, problem, plan, on, grid);
    paintWrapped(&painter, drawing.small, drawing.colours.ink, legendOf(problem, plan, on),
                 block.legend.translated(at));
    CutList{problem, plan, on, drawing.small, drawing.isPaper}.paint(painter, drawing.colours,
                                                                     block.cuts.translated(at));
}

} // namespace

double CuttingDrawing::height(const core::CutProblem& problem, const core::CutPlan& plan,
                              double width) const {
    const Grid grid = gridOf(*this, problem, plan, width);
    const auto sheets = sheetsCut(plan);
    double total = 0;
    for (std::size_t i = 0; i < sheets.size(); i += static_cast<std::size_t>(grid.columns)) {
        double tallest = 0;
        for (std::size_t k = i;
             k < std::min(sheets.size(), i + static_cast<std::size_t>(grid.columns)); ++k) {
            tallest = std::max(tallest, blockOf(*this, problem, plan, sheets[k], grid).height);
        }
        total += tallest;
    }
    return total;
}

void CuttingDrawing::paint(QPainter& painter, const core::CutProblem& problem,
                           const core::CutPlan& plan, double width) const {
    painter.setRenderHint(QPainter::Antialiasing);
    const Grid grid = gridOf(*this, problem, plan, width);
    const auto sheets = sheetsCut(plan);
    double y = 0;
    for (std::size_t i = 0; i < sheets.size(); i += static_cast<std::size_t>(grid.columns)) {
        double tallest = 0;
        for (std::size_t k = i;
             k < std::min(sheets.size(), i + static_cast<std::size_t>(grid.columns)); ++k) {
            const double x = static_cast<double>(k - i) * (grid.column + kGutter);
            paintBlock(painter, *this, problem, plan, sheets[k], {x, y}, grid);
            tallest = std::max(tallest, blockOf(*this, problem, plan, sheets[k], grid).height);
        }
        y += tallest;
    }
}

void CuttingDrawing::paintSheet(QPainter& painter, const core::CutProblem& problem,
                                const core::CutPlan& plan, const core::SheetPlace& on,
                                const QRectF& page) const {
    painter.setRenderHint(QPainter::Antialiasing);
    const core::StockSheet& sheet = problem.sheets[on.sheet];
    // What the words below leave.
    const double beside = CutMarks::roomBeside(problem, plan, small);
    const double below =
        blockOf(*this, problem, plan, on, {1, page.width(), 0, beside, false}).height - kGutter / 2;
    const double scale = std::min((page.width() - 2 * beside) / mm(sheet.width),
                                  std::max(40.0, page.height() - below) / mm(sheet.height));
    paintBlock(painter, *this, problem, plan, on, page.topLeft(),
               {1, page.width(), scale, beside, false});
}

} // namespace headcap::app
