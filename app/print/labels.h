// Labels for lots and jobs on common label sheets: a QR code with the number, the number to be read
// by eye, what it is and what must be known of it.
#pragma once

#include <span>
#include <vector>

#include <QMarginsF>
#include <QPainter>
#include <QString>
#include <QStringList>

class QPrinter;

namespace headcap::app::print {

// Sizes in millimetres, as makers of label sheets give them.
struct LabelSheet {
    const char* name; // "A4, 3 × 7 of 63.5 × 38.1 mm"
    double pageWidth, pageHeight;
    int columns, rows;
    double width, height;
    double left, top; // of the first label
    double columnStep, rowStep;
    [[nodiscard]] int count() const { return columns * rows; }
    // Of a label of the sheet, counted from 0 in reading order.
    [[nodiscard]] QRectF place(int index) const;
};

[[nodiscard]] std::span<const LabelSheet> labelSheets();

struct LabelWords {
    QString number; // in the QR code
    QString title;
    QStringList lines;
    QString caution;
};

// Whether its number, title and caution, and the first of its lines, stand on it whole.
[[nodiscard]] bool standsWhole(const LabelWords& label, const LabelSheet& sheet);

// Into its place, one unit a millimetre.
void paintLabel(QPainter& painter, const LabelWords& label, const QRectF& place);
// One page of them, the first label at `from`; gives how many it held.
int paintLabels(QPainter& painter, const LabelSheet& sheet, std::span<const LabelWords> labels,
                int from);
// The outlines of all labels of a sheet and a rule of 100 mm, to be held against it.
void paintTestPage(QPainter& painter, const LabelSheet& sheet);
void printTestPage(QPrinter& printer, const LabelSheet& sheet);
void printLabels(QPrinter& printer, const LabelSheet& sheet, std::span<const LabelWords> labels,
                 int from);

} // namespace headcap::app::print
