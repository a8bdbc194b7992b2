// Tooltips are words: what looks like markup in the text of a record stays text. Watches the
// application, for a tip may come from any widget or row.
#pragma once

#include <QObject>

namespace headcap::app {

class PlainTips : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace headcap::app
