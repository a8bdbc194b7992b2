#include "app/stock/ways_on.h"

#include <QHBoxLayout>
#include <QPushButton>

#include "app/look/grid.h"

namespace headcap::app {

WaysOn::WaysOn(View& view, const std::vector<Way>& ways) {
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(kGap);
    for (const Way& way : ways) {
        auto* button = new QPushButton(wordsOf(way.action));
        button->setToolTip(tipOf(way.action));
        connect(button, &QPushButton::clicked, &view,
                [&view, id = way.view] { Q_EMIT view.goAsked({id}); });
        across->addWidget(button);
    }
    across->addStretch(1);
}

} // namespace headcap::app
