#include "app/stock/plan_paper.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPrinter>

#include "app/drawing/cutting_drawing.h"
#include "app/look/fonts.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

constexpr double kUnits = 96; // to the inch, whatever the printer's dots
constexpr double kTitleTall = 34;
constexpr double kLineTall = 18;

QString tr(const char* text) {
    return QCoreApplication::translate("PlanPaper", text);
}

// A size in points would count the printer's dots once more.
QFont sized(Face face, int pixels) {
    QFont font = faceFont(face);
    font.setPixelSize(pixels);
    return font;
}

// Gives what is left of the page below it.
QRectF paintHead(QPainter& painter, const PlanHead& head, const QRectF& page,
                 const Colours& colours) {
    painter.setPen(colours.ink);
    painter.setFont(sized(Face::title, 24));
    const QRectF top{page.left(), page.top(), page.width(), kTitleTall};
    painter.drawText(top, Qt::AlignLeft | Qt::AlignVCenter, tr("Cutting plan"));
    painter.setFont(sized(Face::body, 13));
    painter.drawText(top, Qt::AlignRight | Qt::AlignVCenter, head.workshop);
    QStringList said{head.job.isEmpty() ? tr("for stock") : head.job, head.material, head.day,
                     head.by.isEmpty() ? QString{} : tr("by %1").arg(head.by), head.note};
    const QFont small = sized(Face::body, 12);
    painter.setFont(small);
    painter.setPen(colours.quiet);
    const QRectF line{page.left(), top.bottom(), page.width(), kLineTall};
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetricsF{small}.elidedText(dotted(said), Qt::ElideRight, line.width()));
    const double rule = line.bottom() + 5;
    painter.setPen(QPen{colours.ink, 1});
    painter.drawLine(QPointF{page.left(), rule}, QPointF{page.right(), rule});
    return page.adjusted(0, rule + 8 - page.top(), 0, 0);
}

} // namespace

void printPlan(QPrinter& printer, const PlanHead& head, const core::CutProblem& problem,
               const core::CutPlan& plan) {
    QPainter painter{&printer};
    const double scale = printer.resolution() / kUnits;
    painter.scale(scale, scale);
    const QRect paint = printer.pageLayout().paintRectPixels(static_cast<int>(kUnits));
    const QRectF page{QPointF{}, QSizeF{paint.size()}};
    const Colours colours = coloursOf(Tone::light);
    const CuttingDrawing drawing{sized(Face::strong, 14), sized(Face::small, 11), colours, true};
    bool isFirst = true;
    for (const core::SheetPlace& on : sheetsCut(plan)) {
        if (!isFirst) {
            printer.newPage();
        }
        isFirst = false;
        drawing.paintSheet(painter, problem, plan, on, paintHead(painter, head, page, colours));
    }
}

} // namespace headcap::app
