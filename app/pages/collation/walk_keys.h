// The keys of a walk as they lie under the hand: what is as it should be, and one key a finding.
// They are letters, and so stand apart from the catalogue of actions; the sheet of keys shows both.
// They are also buttons, for a knuckle.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include <QWidget>

#include "core/collation/collation_record.h"

class QGridLayout;
class QKeyEvent;

namespace headcap::app {

enum class WalkAction {
    leaf,
    gathering,
    back,
    read,
    runsOn,
    breaks,
    // In the order of core::CollationKind.
    foundLacking,
    foundLoose,
    foundDetached,
    foundMisbound,
    foundDuplicated,
    foundCancel,
    foundInserted,
    foundSupplied,
    foundFacsimile,
    foundMisnumbered,
    foundMissigned,
    foundTornWithLoss,
    foundTorn,
    foundTrimmed,
    foundBlankLacking,
    foundFoldedPlate,
    foundOther,
};

struct WalkKey {
    WalkAction action;
    const char* words;
    const char* key;
    const char* tip;
};
[[nodiscard]] std::span<const WalkKey> walkKeys();
// Begins a walk, or takes it up, anywhere on the collation page.
inline constexpr const char* kBeginWalkKey = "Ctrl+G";

[[nodiscard]] QString wordsOf(const WalkKey& key);
[[nodiscard]] QString keyText(const WalkKey& key);
// The key of a kind of finding.
[[nodiscard]] WalkAction actionOf(core::CollationKind kind);
// Which action of a walk a key press is; none: not one of them.
[[nodiscard]] std::optional<WalkAction> walkAction(const QKeyEvent& event);
// The kind of finding an action makes.
[[nodiscard]] std::optional<core::CollationKind> kindOf(WalkAction action);

class KeyButton;

class WalkKeys : public QWidget {
    Q_OBJECT
public:
    explicit WalkKeys(QWidget* parent = nullptr);

Q_SIGNALS:
    void pressed(headcap::app::WalkAction action);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut(int columns);

    std::vector<KeyButton*> m_buttons;
    QGridLayout* m_grid;
    int m_columns = 0;
};

} // namespace headcap::app
