// The arithmetic of sewing beside the cutting: how much thicker the spine becomes, against what is
// wanted, and the thread that would give it.
#pragma once

#include <QWidget>

#include "app/session/session.h"
#include "core/cutting/swell.h"
#include "core/materials/shelf.h"

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;

class SwellForm : public QWidget {
    Q_OBJECT
public:
    explicit SwellForm(Session& session, QWidget* parent = nullptr);
    void show(const core::Shelf& shelf, const core::SewingHouseValues& house);
    using QWidget::show;
    [[nodiscard]] PlainForm& form() { return *m_form; }
    [[nodiscard]] QString answer() const;

private:
    void reckon();
    [[nodiscard]] QString threadWords(core::Length wanted) const;

    Session& m_session;
    core::Shelf m_shelf;
    core::SewingHouseValues m_house;
    PlainForm* m_form;
    FieldRow* m_sections;
    FieldRow* m_bulk;
    FieldRow* m_thread;
    FieldRow* m_way;
    FieldRow* m_guards;
    FieldRow* m_guardPaper;
    Label* m_answer;
};

} // namespace headcap::app
