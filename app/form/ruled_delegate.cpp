#include "app/form/ruled_delegate.h"

#include <QListView>
#include <QPainter>

#include "app/form/ruled_list.h"
#include "app/look/fonts.h"
#include "app/look/grid.h"

namespace headcap::app {
namespace {

constexpr int kPad = 2 * kGrid;

const RowWords& wordsAt(const QModelIndex& index) {
    return static_cast<const RuledModel*>(index.model())->row(index.row()).words;
}

QFont titleFont(const RowWords& words) {
    QFont face = faceFont(words.isBookTitle ? Face::formula : Face::body);
    face.setStrikeOut(words.isStruck);
    return face;
}

// What a row says below its title, in as many lines as it takes; the beginning of a long text.
QString detailOf(const RowWords& words) {
    constexpr qsizetype kMost = 400;
    return words.detail.size() <= kMost ? words.detail
                                        : words.detail.left(kMost) + QStringLiteral(" …");
}

constexpr int kWrapped = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

QRect wordsRect(const QFont& face, const QString& text, const QPoint& at, int width) {
    const QRect room{at, QSize{std::max(width, 1), QWIDGETSIZE_MAX}};
    return QFontMetrics{face}.boundingRect(room, kWrapped, text);
}

QRect detailRect(const QString& detail, const QPoint& at, int width) {
    return wordsRect(faceFont(Face::small), detail, at, width);
}

// What the title has beside the mark and the words at the right.
int titleRoom(const RowWords& words, int width, int markWidth) {
    const QFontMetrics small{faceFont(Face::small)};
    const int right = words.right.isEmpty() ? 0 : small.horizontalAdvance(words.right) + kSpace;
    return width - 2 * kPad - markWidth - right;
}

// The row above that can be seen says it already.
bool isMarkSaid(const QStyleOptionViewItem& option, const QModelIndex& index) {
    const RowWords& words = wordsAt(index);
    const auto* list = qobject_cast<const QListView*>(option.widget);
    if (!words.isGrouped || list == nullptr) {
        return false;
    }
    int above = index.row() - 1;
    while (above >= 0 && list->isRowHidden(above)) {
        --above;
    }
    return above >= 0 && wordsAt(index.siblingAtRow(above)).mark == words.mark;
}

} // namespace

void RuledDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const RowWords& words = wordsAt(index);
    const Colours& c = coloursFor(option.palette);
    QRect rect = option.rect;
    const bool isPicked = option.state & QStyle::State_Selected;
    painter->save();
    if (isPicked) {
        painter->fillRect(rect, c.picked);
        if (option.state & QStyle::State_HasFocus) {
            painter->fillRect(QRect(rect.topLeft(), QSize(3, rect.height())), c.accent);
        }
    }
    painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), c.rule);
    rect.adjust(kPad, kPad, -kPad, -kPad);

    const QFont titleFace = titleFont(words);
    const QFont smallFace = faceFont(Face::small);
    const QFontMetrics title{titleFace};
    const QFontMetrics small{smallFace};
    const int baseline = rect.top() + title.ascent();

    const auto draw = [&](const QFont& face, const QColor& ink, int x, int y, const QString& text) {
        painter->setFont(face);
        painter->setPen(ink);
        painter->drawText(x, y, text);
    };
    int right = rect.right();
    if (!words.right.isEmpty()) {
        const int width = small.horizontalAdvance(words.right);
        draw(smallFace, colourOf(c, words.rightInk), right - width, baseline, words.right);
        right -= width + kSpace;
    }
    int left = rect.left();
    if (m_markWidth > 0) {
        if (!isMarkSaid(option, index)) {
            draw(smallFace, c.quiet, left, baseline,
                 small.elidedText(words.mark, Qt::ElideRight, m_markWidth - kGap));
        }
        left += m_markWidth;
    }
    // A long title goes on below: nothing of it is cut.
    const int room = titleRoom(words, option.rect.width(), m_markWidth);
    const QRect set = wordsRect(titleFace, words.title, {left, rect.top()}, room);
    painter->setFont(titleFace);
    painter->setPen(words.isStruck ? c.quiet : c.ink);
    painter->drawText(QRect{set.topLeft(), QSize{room, set.height()}}, kWrapped, words.title);
    if (!words.detail.isEmpty()) {
        const QString detail = detailOf(words);
        const QPoint below{left, rect.top() + std::max(set.height(), title.height())};
        const int width = rect.right() + 1 - left;
        painter->setFont(smallFace);
        painter->setPen(c.quiet);
        // Into the width it was measured for: in its own, which is less, it may take a line more.
        painter->drawText(QRect{below, QSize{width, detailRect(detail, below, width).height()}},
                          kWrapped, detail);
    }
    painter->restore();
}

QSize RuledDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const RowWords& words = wordsAt(index);
    const auto* list = qobject_cast<const QListView*>(option.widget);
    const int width = list != nullptr ? list->viewport()->width() : option.rect.width();
    const QFont face = titleFont(words);
    const int title =
        wordsRect(face, words.title, {}, titleRoom(words, width, m_markWidth)).height();
    int height = std::max(title, QFontMetrics{face}.height()) + 2 * kPad;
    if (!words.detail.isEmpty()) {
        height += detailRect(detailOf(words), {}, width - 2 * kPad - m_markWidth).height();
    }
    return {200, std::max(height, kControl + kGrid)};
}

} // namespace headcap::app
