// The alkali reserve of a paper by back titration, judged against ISO 9706, and kept with the lot
// it was measured on.
#pragma once

#include <optional>

#include <QWidget>

#include "app/session/session.h"
#include "core/materials/permanence.h"

class QPushButton;

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;

class TitrationForm : public QWidget {
    Q_OBJECT
public:
    explicit TitrationForm(Session& session, QWidget* parent = nullptr);
    [[nodiscard]] PlainForm& form() { return *m_form; }
    [[nodiscard]] QString answer() const;

private:
    void reckon();
    void keep();

    Session& m_session;
    PlainForm* m_form;
    FieldRow* m_paper;
    FieldRow* m_acid;
    FieldRow* m_alkali;
    FieldRow* m_normality;
    FieldRow* m_lot;
    Label* m_answer;
    QPushButton* m_keep;
    std::optional<core::AlkaliReserve> m_reserve;
};

} // namespace headcap::app
