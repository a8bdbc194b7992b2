// A section of a page with a list of records: its heading with their number, the list, the form of
// the chosen one beside or below it, a line that filters where there are many, and where there are
// none, what belongs there and the first step. Insert adds, Delete removes without asking, Enter
// goes into the form. RecordList (record_list.h) gives it its records.
#pragma once

#include <functional>

#include <QWidget>

#include "app/form/ruled_list.h"

class QBoxLayout;
class QLineEdit;
class QPushButton;

namespace headcap::app {

class FormBase;
class Label;

class ListSection : public QWidget {
    Q_OBJECT
public:
    struct Words {
        QString heading; // "Loose pieces"
        QString add;     // "Add a piece"
        QString empty;   // what belongs here, one sentence
    };
    ListSection(const Words& words, FormBase* form, QWidget* parent = nullptr);

    [[nodiscard]] RuledList& list() { return *m_list; }
    [[nodiscard]] const RuledList& list() const { return *m_list; }
    // Without a form the list is only read.
    void setAddable(bool isAddable);
    void setNote(const QString& sentence); // beside the heading
    void addWay(QPushButton* way);         // before the one that adds
    // What belongs to the chosen one and is no field of it, below its form.
    void addBelowForm(QWidget* part);

Q_SIGNALS:
    void addAsked();
    void removeAsked();
    void currentMoved();

protected:
    void showRows(std::vector<RuledModel::Row> rows);
    void openForm(bool isFocused);
    void closeForm();
    // A new one that can't be kept as it stands: Esc drops it.
    [[nodiscard]] virtual bool isOwed() const { return false; }
    virtual void dropOwed() {}
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void layOut(const Words& words);
    void connectKeys();

    FormBase* m_form;
    Label* m_heading;
    Label* m_count;
    Label* m_note;
    QPushButton* m_add;
    QLineEdit* m_filter;
    RuledList* m_list;
    QWidget* m_empty;
    QWidget* m_formFrame;
    QBoxLayout* m_head;
    QBoxLayout* m_formBox;
    QBoxLayout* m_body;
    bool m_isAddable = true;
};

} // namespace headcap::app
