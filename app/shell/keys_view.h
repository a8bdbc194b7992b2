// The sheet of keys, made from the catalogue of actions.
#pragma once

#include "app/shell/view.h"

namespace headcap::app {

class KeysView : public View {
    Q_OBJECT
public:
    explicit KeysView(QWidget* parent = nullptr);
    bool enter(const Destination&) override;
    [[nodiscard]] QString title() const override { return tr("Keys"); }
};

} // namespace headcap::app
