// Proposes the pieces of common work from the book's measures, to be taken over into the list of
// what is wanted.
#pragma once

#include <QWidget>

#include "app/session/session.h"
#include "app/stock/work_words.h"
#include "core/custody/item.h"

class QPushButton;

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;

class WorkProposer : public QWidget {
    Q_OBJECT
public:
    explicit WorkProposer(Session& session, QWidget* parent = nullptr);
    // The measures of the job's book; another book's are forgotten.
    void setBook(const core::Item& item, const core::WorkHouseValues& house);
    // The boards that are to be cut from.
    void setBoard(const core::Length& thickness);
    [[nodiscard]] Work work() const;
    [[nodiscard]] PlainForm& form() { return *m_form; }
    [[nodiscard]] QPushButton& button() { return *m_propose; }
    [[nodiscard]] std::vector<core::WorkPiece> pieces(const core::WorkHouseValues& house);

Q_SIGNALS:
    void proposeAsked();

private:
    void showAsked();
    void putMeasures();

    Session& m_session;
    PlainForm* m_form;
    FieldRow* m_work;
    FieldRow* m_width;
    FieldRow* m_height;
    FieldRow* m_thickness;
    FieldRow* m_board;
    FieldRow* m_count;
    FieldRow* m_length;
    Label* m_measured; // of what the measures are, and where they come from
    std::optional<core::Item> m_book;
    core::WorkHouseValues m_house;
    QPushButton* m_propose;
};

} // namespace headcap::app
