// A row of words that lead on to other views, each with its key in its tip.
#pragma once

#include <vector>

#include <QWidget>

#include "app/session/actions.h"
#include "app/shell/view.h"

namespace headcap::app {

class WaysOn : public QWidget {
    Q_OBJECT
public:
    struct Way {
        ActionId action;
        ViewId view;
    };
    WaysOn(View& view, const std::vector<Way>& ways);
};

} // namespace headcap::app
