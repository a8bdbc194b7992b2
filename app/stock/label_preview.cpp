#include "app/stock/label_preview.h"

#include <algorithm>

#include <QPainter>

#include "app/look/palette.h"

namespace headcap::app {
namespace {

constexpr int kPreviewWidth = 260;
constexpr int kCloseUpWidth = 420;

// Paper is white in either palette; its lines are those of the light one.
void paintPaper(QPainter& painter, const QRect& rect, const QPalette& palette) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect, Qt::white);
    painter.setPen(coloursFor(palette).edge);
    painter.drawRect(rect.adjusted(0, 0, -1, -1));
}

} // namespace

LabelPreview::LabelPreview(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Sheet of labels"));
    setFixedSize(kPreviewWidth, static_cast<int>(kPreviewWidth * 1.42));
}

void LabelPreview::show(const print::LabelSheet& sheet, std::vector<print::LabelWords> labels,
                        int from) {
    m_sheet = &sheet;
    m_labels = std::move(labels);
    m_from = from;
    setFixedHeight(static_cast<int>(kPreviewWidth * sheet.pageHeight / sheet.pageWidth));
    update();
}

void LabelPreview::paintEvent(QPaintEvent*) {
    if (m_sheet == nullptr) {
        return;
    }
    QPainter painter{this};
    paintPaper(painter, rect(), palette());
    painter.scale(width() / m_sheet->pageWidth, width() / m_sheet->pageWidth);
    painter.setPen(QPen{coloursOf(Tone::light).rule, 0});
    for (int i = 0; i < m_sheet->count(); ++i) {
        painter.drawRoundedRect(m_sheet->place(i), 1.5, 1.5);
    }
    print::paintLabels(painter, *m_sheet, m_labels, m_from);
}

LabelCloseUp::LabelCloseUp(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setMaximumWidth(kCloseUpWidth);
    hide();
}

void LabelCloseUp::show(const print::LabelSheet& sheet,
                        const std::optional<print::LabelWords>& label) {
    m_sheet = &sheet;
    m_label = label.value_or(print::LabelWords{});
    setAccessibleName(tr("The label of %1, large").arg(m_label.number));
    setVisible(label.has_value());
    updateGeometry();
    update();
}

int LabelCloseUp::heightForWidth(int width) const {
    return m_sheet == nullptr
               ? 0
               : qRound(std::min(width, kCloseUpWidth) * m_sheet->height / m_sheet->width);
}

QSize LabelCloseUp::sizeHint() const {
    return {kCloseUpWidth, heightForWidth(kCloseUpWidth)};
}

void LabelCloseUp::paintEvent(QPaintEvent*) {
    if (m_sheet == nullptr) {
        return;
    }
    QPainter painter{this};
    paintPaper(painter, rect(), palette());
    const double scale = width() / m_sheet->width;
    painter.scale(scale, scale);
    print::paintLabel(painter, m_label, QRectF{0, 0, m_sheet->width, m_sheet->height});
}

} // namespace headcap::app
