// How much of what: so much of a strength wanted, from a stock of another or from what is weighed
// out dry. Answers while it is typed, and says what is missing.
#pragma once

#include <QWidget>

#include "app/session/session.h"
#include "core/materials/strengths.h"

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;

class StrengthCalculator : public QWidget {
    Q_OBJECT
public:
    explicit StrengthCalculator(Session& session, QWidget* parent = nullptr);
    [[nodiscard]] PlainForm& form() { return *m_form; }
    [[nodiscard]] QString answer() const;

private:
    void reckon();
    void fromTheDry(const core::Strength& wanted, const core::Amount& solvent);
    void refuse(core::StrengthProblem problem);

    Session& m_session;
    PlainForm* m_form;
    FieldRow* m_stock;
    FieldRow* m_wanted;
    FieldRow* m_total;
    FieldRow* m_density;
    Label* m_answer;
};

} // namespace headcap::app
