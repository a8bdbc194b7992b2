// The walk as it is seen: the gathering in front, the leaf to look at, what should be on it, and
// the keys. The whole is done by keys: one a leaf, one for the rest of the gathering, one a kind of
// finding. Esc steps back from a field to the leaf, and from the leaf out of the walk.
#pragma once

#include <QWidget>

#include "app/pages/collation/walk_keys.h"
#include "app/pages/collation/walker.h"

class QLineEdit;
class QPushButton;

namespace headcap::app {

class Label;
class WalkDrawing;
class WalkFields;

class WalkSheet : public QWidget {
    Q_OBJECT
public:
    explicit WalkSheet(Walker& walker, QWidget* parent = nullptr);
    void refresh();
    // For tests and pictures.
    [[nodiscard]] QString place() const;
    [[nodiscard]] QString said() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void layOut();
    void act(WalkAction action);
    void takeReading();
    void keepTyped();
    void takeNote(bool goOn);
    void startNote(const core::Id<core::CollationFinding>& finding, core::CollationKind kind);
    void showLeaf(std::size_t leaf);
    void showEnd();
    void keepInSight();
    [[nodiscard]] QStringList remarks() const;

    Walker& m_walker;
    Label* m_place;
    Label* m_where;
    WalkDrawing* m_drawing;
    WalkFields* m_fields;
    QWidget* m_noteRow;
    Label* m_noteLabel;
    QLineEdit* m_note;
    Label* m_said;
    WalkKeys* m_keys;
    QPushButton* m_finish;
    std::optional<core::Id<core::CollationFinding>> m_noted;
    std::optional<std::size_t> m_shown;
};

} // namespace headcap::app
