// Draws one photograph of a contact sheet: the picture upright in its box, its caption, and a
// quiet line: where, how wide it stands in the report, or that it does not.
#pragma once

#include <QStyledItemDelegate>

#include "core/photo/photograph.h"

namespace headcap::app::print {
class PhotoLoader;
}

namespace headcap::app::photo {

// Its caption, or until it has one, the name of its file.
[[nodiscard]] QString titleOf(const core::Photograph& photograph);

class PhotoDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    static constexpr int kLeastWidth = 200;
    [[nodiscard]] static int cellHeight();

    explicit PhotoDelegate(print::PhotoLoader& loader, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

private:
    print::PhotoLoader& m_loader;
};

// The picture in the middle of its box, or words: that it is being read, or why it can't be.
void paintPhoto(QPainter& painter, const QRect& box, const core::Photograph& photograph,
                print::PhotoLoader& loader, const QWidget& widget);

} // namespace headcap::app::photo
