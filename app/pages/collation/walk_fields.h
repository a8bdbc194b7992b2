// What should be on the leaf, and under it what is there where it differs: mark, numbers,
// catchword. Only what differs need be typed. Enter takes it; Esc goes back, and what
// was typed is kept with the leaf, as it is wherever the fields are left.
#pragma once

#include <QWidget>

#include "core/collation/leaf_expectation.h"
#include "core/collation/walk_entries.h"

class QLineEdit;

namespace headcap::app {

class Label;

class WalkFields : public QWidget {
    Q_OBJECT
public:
    explicit WalkFields(QWidget* parent = nullptr);

    void expect(const core::LeafExpectation& expected, const std::string& catchwordDue,
                const QString& before);
    // What was read of the leaf already; empties the fields where nothing was.
    void setReading(const core::LeafReading& reading);
    [[nodiscard]] core::LeafReading reading() const;
    void setRunsOn(core::TextRunsOn runsOn);
    // Into the first field.
    void enter();

Q_SIGNALS:
    void taken();
    void steppedBack();
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool isLeftBy(const QEvent& event) const;
    struct Column {
        Label* expected;
        QLineEdit* field;
    };
    Column addColumn(int column, const QString& heading, int stretch);

    Column m_mark;
    Column m_recto;
    Column m_verso;
    Column m_words;
    Column m_catchword;
    Label* m_runsOn;
    core::TextRunsOn m_runsOnValue = core::TextRunsOn::notRead;
};

} // namespace headcap::app
