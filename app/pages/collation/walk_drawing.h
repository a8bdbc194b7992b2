// The gathering that is being walked, with the leaf looked at heavier.
#pragma once

#include <QWidget>

#include "core/collation/gathering_picture.h"

namespace headcap::app {

class WalkDrawing : public QWidget {
    Q_OBJECT
public:
    explicit WalkDrawing(QWidget* parent = nullptr);
    void show(core::PicturedGathering picture, std::optional<std::size_t> looked);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    core::PicturedGathering m_picture;
    std::optional<std::size_t> m_looked;
};

} // namespace headcap::app
