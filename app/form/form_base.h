// What all forms share, whatever record they show: rows with aligned labels in one or two columns,
// and the gathering of edits. Edits leave it as writes of a change that the page saves as one.
#pragma once

#include <vector>

#include <QStringList>
#include <QWidget>

#include "app/form/field_row.h"
#include "core/record/change.h"

namespace headcap::app {

class ColumnLayout;

class FormBase : public QWidget {
    Q_OBJECT
public:
    explicit FormBase(const QString& subject, QWidget* parent = nullptr);

    // What the form is about, as the journal says it: "Book".
    [[nodiscard]] const QString& subject() const { return m_subject; }
    [[nodiscard]] const std::vector<FieldRow*>& rows() const { return m_rows; }
    [[nodiscard]] bool isEdited() const;
    // A row whose text can't be read, or that somebody else has changed too; none: null.
    [[nodiscard]] FieldRow* troubled() const;
    [[nodiscard]] FieldRow* rowLabelled(const QString& label) const;
    void focusFirst();
    // Without this row the record can't be kept, though something was written; null: none is owed.
    [[nodiscard]] virtual FieldRow* owed() const { return nullptr; }
    // Esc in a field that can't be kept takes back what was written there.
    [[nodiscard]] bool takesBack() const { return m_takesBack; }
    void setTakesBack() { m_takesBack = true; }
    // A control without a label, under the rows and on the edge of their controls.
    void addBelow(QWidget* control);
    // The forms of a page stand on one column of labels.
    [[nodiscard]] int widestLabel() const;
    void alignLabels(int width);

    // Adds what was edited and can be read; gives the sentence of it, empty where there is nothing.
    virtual QString gather(core::Change& change) = 0;

Q_SIGNALS:
    void left(); // there may be something to save
    void edited();

protected:
    FieldRow& addRow(const QString& label, QWidget* control, bool isWide);
    // What would be lost from sight with the row: words that were typed, a tick that was set. A
    // choice always stands at something.
    [[nodiscard]] static bool holdsWords(const FieldRow& row);

private:
    QString m_subject;
    ColumnLayout* m_columns;
    std::vector<FieldRow*> m_rows;
    std::vector<QWidget*> m_below;
    bool m_takesBack = false;
};

} // namespace headcap::app
