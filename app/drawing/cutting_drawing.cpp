#include "app/drawing/cutting_drawing.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

constexpr double kGutter = 32;
constexpr double kTwoColumnsFrom = 760;
constexpr double kTallest = 640;
constexpr double kGrainStep = 9;
constexpr double kBadge = 18;
constexpr double kCaption = 26;
constexpr double kLegendRow = 20;
constexpr double kMost = 1.0; // px a mm: small sheets are not blown up beyond it

QString tr(const char* text) {
    return QCoreApplication::translate("CuttingDrawing", text);
}

double mm(core::Length length) {
    return static_cast<double>(length.count()) / 1e6;
}

QString mmWords(core::Length length) {
    // To the tenth of a millimetre, as a rule is read.
    return fromCore(core::decimalText((length.count() + 50'000) / 100'000, 1));
}

// Where a sheet is drawn, and how large a millimetre is.
struct Frame {
    QPointF at;
    double scale;
    [[nodiscard]] QRectF of(const core::CutRect& r) const {
        return {at.x() + mm(r.x) * scale, at.y() + mm(r.y) * scale, mm(r.width) * scale,
                mm(r.height) * scale};
    }
    [[nodiscard]] QPointF of(core::Length x, core::Length y) const {
        return {at.x() + mm(x) * scale, at.y() + mm(y) * scale};
    }
};

core::CutRect wholeOf(const core::StockSheet& sheet) {
    return {{}, {}, sheet.width, sheet.height};
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

class SheetPainter {
public:
    SheetPainter(QPainter& painter, const CuttingDrawing& drawing, const core::CutProblem& problem,
                 const core::CutPlan& plan, const core::SheetPlace& on, const Frame& frame)
        : m_painter(painter), m_drawing(drawing), m_problem(problem), m_plan(plan), m_on(on),
          m_sheet(problem.sheets[on.sheet]), m_frame(frame) {}

    void paint() {
        const QRectF whole = m_frame.of(wholeOf(m_sheet));
        m_painter.fillRect(whole, QBrush{m_drawing.colours.hatch, Qt::BDiagPattern});
        for (const core::PlannedOffcut& offcut : m_plan.offcuts) {
            if (offcut.on == m_on) {
                paintOffcut(offcut);
            }
        }
        for (const core::PlacedPiece& placed : m_plan.placed) {
            if (placed.on == m_on) {
                paintPiece(placed);
            }
        }
        m_painter.setPen(QPen{m_drawing.colours.ink, 1.5});
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(whole);
        for (const core::SheetCut& cut : m_plan.cuts) {
            if (cut.on == m_on) {
                paintCut(cut);
            }
        }
        for (const core::SheetCut& cut : m_plan.cuts) {
            if (cut.on == m_on) {
                paintBadge(cut);
            }
        }
    }

private:
    void paintGrain(const QRectF& rect) {
        if (m_sheet.grain == core::GrainWay::none) {
            return;
        }
        m_painter.setPen(QPen{m_drawing.colours.rule, 1});
        const bool isAlongWidth = m_sheet.grain == core::GrainWay::alongWidth;
        // Counted from the sheet's own corner, so that the lines run on from piece to piece.
        const double from = isAlongWidth ? m_frame.at.y() : m_frame.at.x();
        const double first = isAlongWidth ? rect.top() : rect.left();
        const double last = isAlongWidth ? rect.bottom() : rect.right();
        for (double at = from + std::ceil((first - from) / kGrainStep) * kGrainStep; at < last;
             at += kGrainStep) {
            if (isAlongWidth) {
                m_painter.drawLine(QPointF{rect.left(), at}, QPointF{rect.right(), at});
            } else {
                m_painter.drawLine(QPointF{at, rect.top()}, QPointF{at, rect.bottom()});
            }
        }
    }

    void paintOffcut(const core::PlannedOffcut& offcut) {
        const QRectF rect = m_frame.of(offcut.at);
        m_painter.fillRect(rect, m_drawing.colours.paper);
        paintGrain(rect);
        m_painter.setPen(QPen{m_drawing.colours.settled, 1, Qt::DashLine});
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(rect);
        paintWords(rect, {tr("offcut"), sizeWords(offcut.at.width, offcut.at.height)},
                   m_drawing.colours.settled);
    }

    void paintPiece(const core::PlacedPiece& placed) {
        const QRectF rect = m_frame.of(placed.at);
        m_painter.fillRect(rect, m_drawing.colours.raised);
        paintGrain(rect);
        m_painter.setPen(QPen{m_drawing.colours.ink, 1});
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(rect);
        paintWords(rect,
                   {letterOf(placed.piece), sizeWords(placed.at.width, placed.at.height),
                    fromCore(m_problem.pieces[placed.piece].id)},
                   m_drawing.colours.ink);
    }

    // As many of the lines as have room, the first above all.
    void paintWords(const QRectF& rect, const QStringList& lines, const QColor& ink) {
        const QFontMetricsF metrics{m_drawing.small};
        QStringList shown;
        for (const QString& line : lines) {
            if (metrics.height() * static_cast<double>(shown.size() + 1) <= rect.height() - 4 &&
                metrics.horizontalAdvance(line) <= rect.width() - 8) {
                shown << line;
            }
        }
        if (shown.isEmpty()) {
            return;
        }
        const double tall = metrics.height() * static_cast<double>(shown.size());
        double wide = 0;
        for (const QString& line : shown) {
            wide = std::max(wide, metrics.horizontalAdvance(line));
        }
        const QRectF box{rect.center().x() - wide / 2 - 3, rect.center().y() - tall / 2, wide + 6,
                         tall};
        m_painter.fillRect(box, m_drawing.colours.raised);
        m_painter.setPen(ink);
        m_painter.setFont(m_drawing.small);
        m_painter.drawText(box, Qt::AlignCenter, shown.join(QLatin1Char('\n')));
    }

    void paintCut(const core::SheetCut& cut) {
        m_painter.setPen(QPen{m_drawing.colours.accent, 2});
        m_painter.drawLine(endOf(cut, cut.from), endOf(cut, cut.to));
    }

    [[nodiscard]] QPointF endOf(const core::SheetCut& cut, core::Length along) const {
        return cut.axis == core::CutAxis::x ? m_frame.of(cut.at, along) : m_frame.of(along, cut.at);
    }

    void paintBadge(const core::SheetCut& cut) {
        QPointF at = endOf(cut, cut.from);
        (cut.axis == core::CutAxis::x ? at.ry() : at.rx()) += kBadge / 2 + 1;
        QRectF round{at.x() - kBadge / 2, at.y() - kBadge / 2, kBadge, kBadge};
        // Of close cuts, each number steps along its own cut until it is free.
        const double reach = std::abs(mm(cut.to - cut.from)) * m_frame.scale - kBadge;
        const QPointF step = cut.axis == core::CutAxis::x ? QPointF{0, kBadge} : QPointF{kBadge, 0};
        for (double gone = 0;
             gone + kBadge <= reach &&
             std::ranges::any_of(m_badges,
                                 [&](const QRectF& other) { return other.intersects(round); });
             gone += kBadge) {
            round.translate(step);
        }
        m_badges.push_back(round);
        m_painter.setPen(QPen{m_drawing.colours.accent, 1.2});
        m_painter.setBrush(m_drawing.colours.paper);
        m_painter.drawEllipse(round);
        m_painter.setFont(m_drawing.small);
        m_painter.setPen(m_drawing.colours.accent);
        m_painter.drawText(round, Qt::AlignCenter, QString::number(cut.order));
    }

    QPainter& m_painter;
    const CuttingDrawing& m_drawing;
    const core::CutProblem& m_problem;
    const core::CutPlan& m_plan;
    core::SheetPlace m_on;
    const core::StockSheet& m_sheet;
    Frame m_frame;
    std::vector<QRectF> m_badges;
};

QString captionOf(const core::CutProblem& problem, const core::SheetPlace& on) {
    const core::StockSheet& sheet = problem.sheets[on.sheet];
    QString caption = tr("%1, sheet %2: %3 mm")
                          .arg(fromCore(sheet.id))
                          .arg(on.number)
                          .arg(sizeWords(sheet.width, sheet.height));
    if (sheet.grain == core::GrainWay::none) {
        caption += tr(", no grain");
    }
    return caption;
}

QStringList cutWords(const core::CutPlan& plan, const core::SheetPlace& on) {
    QStringList words;
    for (const core::SheetCut& cut : plan.cuts) {
        if (cut.on == on) {
            words << tr(cut.axis == core::CutAxis::x ? "%1 at %2 from the left"
                                                     : "%1 at %2 from the top")
                         .arg(cut.order)
                         .arg(mmWords(cut.at));
        }
    }
    return words;
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
};

Grid gridOf(const core::CutProblem& problem, const core::CutPlan& plan, double width) {
    const auto sheets = sheetsCut(plan);
    double widest = 1;
    double tallest = 1;
    for (const core::SheetPlace& on : sheets) {
        widest = std::max(widest, mm(problem.sheets[on.sheet].width));
        tallest = std::max(tallest, mm(problem.sheets[on.sheet].height));
    }
    const int columns = sheets.size() > 1 && width >= kTwoColumnsFrom ? 2 : 1;
    const double column = (width - kGutter * (columns - 1)) / columns;
    return {columns, column, std::min({kMost, (column - kBadge) / widest, kTallest / tallest})};
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

double blockHeight(const CuttingDrawing& drawing, const core::CutProblem& problem,
                   const core::CutPlan& plan, const core::SheetPlace& on, const Grid& grid) {
    const QRectF area{0, 0, grid.column, 0};
    return kCaption + mm(problem.sheets[on.sheet].height) * grid.scale + 6 +
           paintWrapped(nullptr, drawing.small, {}, legendOf(problem, plan, on), area) +
           paintWrapped(nullptr, drawing.small, {}, cutWords(plan, on), area) + kGutter / 2;
}

// A sheet with its caption above and its legend below.
void paintBlock(QPainter& painter, const CuttingDrawing& drawing, const core::CutProblem& problem,
                const core::CutPlan& plan, const core::SheetPlace& on, const QPointF& at,
                const Grid& grid) {
    painter.setFont(drawing.words);
    painter.setPen(drawing.colours.ink);
    painter.drawText(QRectF{at.x(), at.y(), grid.column, kCaption},
                     Qt::AlignLeft | Qt::AlignVCenter, captionOf(problem, on));
    const Frame frame{{at.x(), at.y() + kCaption}, grid.scale};
    SheetPainter{painter, drawing, problem, plan, on, frame}.paint();
    QRectF below{at.x(), at.y() + kCaption + mm(problem.sheets[on.sheet].height) * grid.scale + 6,
                 grid.column, 0};
    below.translate(0, paintWrapped(&painter, drawing.small, drawing.colours.ink,
                                    legendOf(problem, plan, on), below));
    paintWrapped(&painter, drawing.small, drawing.colours.accent, cutWords(plan, on), below);
}

} // namespace

double CuttingDrawing::height(const core::CutProblem& problem, const core::CutPlan& plan,
                              double width) const {
    const Grid grid = gridOf(problem, plan, width);
    const auto sheets = sheetsCut(plan);
    double total = 0;
    for (std::size_t i = 0; i < sheets.size(); i += static_cast<std::size_t>(grid.columns)) {
        double tallest = 0;
        for (std::size_t k = i;
             k < std::min(sheets.size(), i + static_cast<std::size_t>(grid.columns)); ++k) {
            tallest = std::max(tallest, blockHeight(*this, problem, plan, sheets[k], grid));
        }
        total += tallest;
    }
    return total;
}

void CuttingDrawing::paint(QPainter& painter, const core::CutProblem& problem,
                           const core::CutPlan& plan, double width) const {
    painter.setRenderHint(QPainter::Antialiasing);
    const Grid grid = gridOf(problem, plan, width);
    const auto sheets = sheetsCut(plan);
    double y = 0;
    for (std::size_t i = 0; i < sheets.size(); i += static_cast<std::size_t>(grid.columns)) {
        double tallest = 0;
        for (std::size_t k = i;
             k < std::min(sheets.size(), i + static_cast<std::size_t>(grid.columns)); ++k) {
            const double x = static_cast<double>(k - i) * (grid.column + kGutter);
            paintBlock(painter, *this, problem, plan, sheets[k], {x, y}, grid);
            tallest = std::max(tallest, blockHeight(*this, problem, plan, sheets[k], grid));
        }
        y += tallest;
    }
}

void CuttingDrawing::paintSheet(QPainter& painter, const core::CutProblem& problem,
                                const core::CutPlan& plan, const core::SheetPlace& on,
                                const QRectF& page) const {
    painter.setRenderHint(QPainter::Antialiasing);
    const core::StockSheet& sheet = problem.sheets[on.sheet];
    const QRectF area{0, 0, page.width(), 0};
    const double beside = kCaption + 6 +
                          paintWrapped(nullptr, small, {}, legendOf(problem, plan, on), area) +
                          paintWrapped(nullptr, small, {}, cutWords(plan, on), area);
    const double scale = std::min(page.width() / mm(sheet.width),
                                  std::max(40.0, page.height() - beside) / mm(sheet.height));
    paintBlock(painter, *this, problem, plan, on, page.topLeft(), {1, page.width(), scale});
}

} // namespace headcap::app
