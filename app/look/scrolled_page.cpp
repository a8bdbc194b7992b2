#include "app/look/scrolled_page.h"

#include <QScrollArea>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"

namespace headcap::app {

void scrollIn(QWidget* view, QWidget* sheet) {
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(sheet);
    auto* whole = new QVBoxLayout(view);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
}

QVBoxLayout* scrolledPage(QWidget* view, const QString& title, const QString& purpose, int widest) {
    auto* sheet = new QWidget;
    sheet->setMaximumWidth(widest);
    auto* down = new QVBoxLayout(sheet);
    down->setContentsMargins(15 * kGrid, 8 * kGrid, 15 * kGrid, kSection);
    down->setSpacing(0);
    down->addWidget(new Label(Face::title, Ink::ink, title));
    down->addWidget(new Label(Face::small, Ink::quiet, purpose));
    scrollIn(view, sheet);
    return down;
}

void addHeading(QVBoxLayout& down, const QString& words) {
    down.addSpacing(kSection);
    down.addWidget(new Label(Face::heading, Ink::ink, words));
    down.addWidget(new HairRule);
    down.addSpacing(kGap);
}

} // namespace headcap::app
