// The walk on the collation page: the walks there are and how to begin or take up one's own; and
// the sheet while one is under way.
#pragma once

#include <QWidget>

#include "app/pages/collation/walker.h"

class QPushButton;

namespace headcap::app {

class Label;
class WalkSheet;

class WalkSection : public QWidget {
    Q_OBJECT
public:
    explicit WalkSection(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] Walker& walker() { return m_walker; }
    [[nodiscard]] WalkSheet& sheet() { return *m_sheet; }
    // Begins, or takes up where one stands, and goes there.
    void go();

Q_SIGNALS:
    void walking(bool isWalking);

private:
    void refresh();
    [[nodiscard]] QString walksSaid() const;

    Session& m_session;
    Walker m_walker;
    QWidget* m_rest;
    Label* m_said;
    QPushButton* m_go;
    WalkSheet* m_sheet;
    bool m_isWalking = false;
};

} // namespace headcap::app
