// The program's own keys work in every field: a toolkit's line editing takes some of them for
// itself (to the end of the line is deleted with Ctrl+K, the whole line with Ctrl+U, on some
// systems), and what was typed would be gone. Taking back and bringing again stay the field's; and
// Esc is of a list that is open, before it is of the page.
#pragma once

#include <QObject>

namespace headcap::app {

class KeysFirst : public QObject {
    Q_OBJECT
public:
    // Of the whole application, for as long as it lives.
    explicit KeysFirst(QObject* parent);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace headcap::app
