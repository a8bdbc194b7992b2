// The walk on the collation page: the walks there are and how to begin or take up one's own; and
// the sheet while one is under way.
#pragma once

#include <QWidget>

#include "app/pages/collation/walker.h"

class QPushButton;

namespace headcap::app {

class InferSheet;
class Label;
class WalkSheet;

class WalkSection : public QWidget {
    Q_OBJECT
public:
    explicit WalkSection(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] Walker& walker() { return m_walker; }
    [[nodiscard]] WalkSheet& sheet() { return *m_sheet; }
    [[nodiscard]] InferSheet& inferring() { return *m_infer; }
    void show(const core::JobFile& file, const std::optional<core::Id<core::Item>>& part,
              const core::Collation& collation);
    using QWidget::show;
    [[nodiscard]] bool isWalking() const { return m_isWalking; }
    // Begins, or takes up where one stands, and goes there; without a make-up, by typing what
    // the leaves bear.
    void go();
    void goInferring();

Q_SIGNALS:
    void walking(bool isWalking);

private:
    void refresh();
    [[nodiscard]] QString walksSaid() const;
    [[nodiscard]] QString openSaid() const;

    Session& m_session;
    Walker m_walker;
    QWidget* m_rest;
    Label* m_said;
    Label* m_open;
    QPushButton* m_go;
    QPushButton* m_goInferring;
    WalkSheet* m_sheet;
    InferSheet* m_infer;
    bool m_isWalking = false; // by either
};

} // namespace headcap::app
