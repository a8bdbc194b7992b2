#include "app/pages/collation/walk_drawing.h"

#include <QPainter>

#include "app/drawing/gathering_drawing.h"
#include "app/look/fonts.h"

namespace headcap::app {
namespace {

constexpr int kHeight = 200;

} // namespace

WalkDrawing::WalkDrawing(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("The gathering in front"));
}

void WalkDrawing::show(core::PicturedGathering picture, std::optional<std::size_t> looked) {
    m_picture = std::move(picture);
    m_looked = looked;
    setAccessibleDescription(describe(m_picture));
    update();
}

QSize WalkDrawing::sizeHint() const {
    return {480, kHeight};
}

void WalkDrawing::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    drawGathering(painter, QRectF{rect()}, m_picture,
                  {.colours = coloursFor(palette()),
                   .refs = faceFont(Face::formula),
                   .words = faceFont(Face::small),
                   .looked = m_looked});
}

} // namespace headcap::app
