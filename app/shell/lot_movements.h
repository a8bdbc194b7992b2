// What came and went of one lot: a line that enters a movement in the ledger, and the ledger below
// it. Entries are never edited; a wrong one is undone, and its contrary stands beside it.
#pragma once

#include <map>
#include <optional>

#include <QWidget>

#include "app/session/session.h"
#include "core/materials/ledger.h"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace headcap::app {

class Label;
class RuledTable;
struct LotStory;

class LotMovements : public QWidget {
    Q_OBJECT
public:
    explicit LotMovements(Session& session, QWidget* parent = nullptr);
    using Uses = std::map<core::Id<core::MaterialUse>, QString>; // in words
    // Null: no lot is chosen.
    void show(const core::Shelf& shelf, const LotStory* story, const Uses& uses);
    using QWidget::show;
    // Whose movements are entered.
    [[nodiscard]] const std::optional<core::Id<core::Lot>>& lot() const { return m_lot; }

protected:
    bool event(QEvent* event) override;

private:
    enum class Movement { cameIn, mixed, thrownAway, counted };

    void layOut();
    void showHints();
    void showLedger(const core::Lot& lot, const LotStory& story, const Uses& uses);
    void enterMovement();
    [[nodiscard]] Movement movement() const;
    // The change, or in one sentence why there is none.
    [[nodiscard]] tl::expected<core::Change, QString> composed(const core::Lot& lot) const;

    Session& m_session;
    core::Shelf m_shelf;
    std::optional<core::Id<core::Lot>> m_lot;
    Label* m_heading;
    Label* m_balance;
    QComboBox* m_what;
    QLineEdit* m_amount;
    QLineEdit* m_note;
    QPushButton* m_enter;
    RuledTable* m_ledger;
};

} // namespace headcap::app
