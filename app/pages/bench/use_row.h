// One material in a step that is being written: the lot, typed or scanned, and how much; behind
// "More" what it is for, where it sits, whether it stays and how it comes off, filled in from the
// lot. A lot that is not fit asks for the reason; a sheet that follows the spine, how its grain
// lies.
#pragma once

#include <functional>

#include <QWidget>

#include "app/form/record_form.h"
#include "core/materials/fitness.h"
#include "core/materials/shelf.h"
#include "core/treatment/step.h"

class QPushButton;

namespace headcap::app {

namespace papers {
class DataSheetButton;
}

class UseRow : public QWidget {
    Q_OBJECT
public:
    // What a use is for, by the step that is being written.
    using Purpose = std::function<core::FitnessPurpose(const core::MaterialUse&)>;
    // The shelf is that of the editor, and outlives the row.
    UseRow(Session& session, const core::Shelf& shelf, const core::MaterialUse& use,
           Purpose purpose, QWidget* parent = nullptr);

    [[nodiscard]] core::MaterialUse taken();
    [[nodiscard]] RecordForm<core::MaterialUse>& form() const { return *m_form; }
    [[nodiscard]] bool isEmpty() const;
    // The step has become another: what it asks for is shown.
    void follow();
    // The reason that is still asked for, with its sentence; none: null.
    [[nodiscard]] FieldRow* owedReason();

Q_SIGNALS:
    void removeAsked();

private:
    void build();
    void addLot();
    void fillFromLot();
    void showMore(bool isShown);
    [[nodiscard]] QString standingOf(const QString& text) const;
    [[nodiscard]] const core::Lot* lotOf(const QString& text) const;
    [[nodiscard]] std::vector<core::FitnessPoint> fitness(const core::Lot& lot) const;
    [[nodiscard]] bool asksReason(const core::Lot* lot) const;
    [[nodiscard]] core::FitnessPurpose purpose() const;
    [[nodiscard]] bool asksGrain(const core::Lot* lot) const;

    Session& m_session;
    const core::Shelf& m_shelf;
    Purpose m_purpose;
    RecordForm<core::MaterialUse>* m_form;
    FieldRow* m_lot = nullptr;
    FieldRow* m_grain = nullptr;
    FieldRow* m_reason = nullptr;
    std::vector<FieldRow*> m_filled; // role, stays, removal: from the lot
    std::vector<QString> m_fillings; // as they were filled in
    std::vector<FieldRow*> m_further;
    papers::DataSheetButton* m_sheet;
    QPushButton* m_more;
};

} // namespace headcap::app
