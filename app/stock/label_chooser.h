// Labels for the lots and jobs that are named, on the sheet that is chosen; seen before they are
// printed.
#pragma once

#include <QWidget>

#include "app/print/labels.h"
#include "app/session/session.h"
#include "core/materials/shelf.h"

class QPushButton;

namespace headcap::app {

class FieldRow;
class Label;
class LabelCloseUp;
class LabelPreview;
class PlainForm;

class LabelChooser : public QWidget {
    Q_OBJECT
public:
    explicit LabelChooser(Session& session, QWidget* parent = nullptr);
    void refresh();
    void choose(const QString& numbers);
    [[nodiscard]] const std::vector<print::LabelWords>& labels() const { return m_labels; }
    [[nodiscard]] PlainForm& form() { return *m_form; }
    // Asks for a printer; false where there is nothing to print.
    bool print();

private:
    void compose();
    void printTest();
    [[nodiscard]] std::optional<print::LabelWords> wordsFor(const QString& number) const;
    [[nodiscard]] const print::LabelSheet& sheet() const;
    [[nodiscard]] int from() const;

    Session& m_session;
    core::Shelf m_shelf;
    PlainForm* m_form;
    FieldRow* m_numbers;
    FieldRow* m_sheet;
    FieldRow* m_from;
    LabelPreview* m_preview;
    LabelCloseUp* m_closeUp;
    QPushButton* m_print;
    QPushButton* m_test;
    std::vector<print::LabelWords> m_labels;
};

} // namespace headcap::app
