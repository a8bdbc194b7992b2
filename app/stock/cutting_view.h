// Cutting: the pieces wanted, typed or proposed from a book; the sheets and offcuts of one
// material; the plan drawn to scale as soon as it is found, away from the window's thread; booked
// in one change. Beside it the swell of the spine, and the house values all of it goes by.
#pragma once

#include <memory>
#include <optional>
#include <set>

#include "app/shell/view.h"
#include "app/stock/plan_work.h"
#include "core/cutting/pieces_of_work.h"
#include "core/materials/cutting_booking.h"
#include "core/materials/sheet_stock.h"

class QPushButton;
class QTimer;

namespace headcap::app {

class CuttingPlanWidget;
class FieldRow;
class HouseValueList;
class Label;
class PieceList;
struct PlanHead;
class PlainForm;
class RuledList;
class Session;
class SwellForm;
class WorkProposer;

class CuttingView : public View {
    Q_OBJECT
public:
    explicit CuttingView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    bool print() override;
    [[nodiscard]] QString title() const override { return tr("Cutting"); }

    [[nodiscard]] PieceList& pieces() { return *m_pieces; }
    [[nodiscard]] WorkProposer& proposer() { return *m_proposer; }
    [[nodiscard]] QPushButton& bookButton() { return *m_book; }
    [[nodiscard]] const std::optional<core::CuttingToBook>& planned() const { return m_planned; }
    [[nodiscard]] bool isPlanning() const;
    [[nodiscard]] QString standing() const; // how the plan stands, a sentence

private:
    void layOut();
    void connectAll();
    void showSheets();
    void toggleSheet();
    void propose();
    // Turns to the first material that some of these pieces may be cut from; false: there is none.
    bool chooseMaterialFor(const std::vector<core::WorkPiece>& pieces);
    [[nodiscard]] const core::Material* material() const; // to cut from
    void planSoon();
    void plan();
    void showOutcome(const PlanWork::Outcome& outcome);
    void showPlan(const core::CutProblem& problem, const core::CutPlan& plan);
    void forget(const QString& why, bool isWrong = false);
    void book();
    void keepInSight(const QString& done);
    void startAnew();
    [[nodiscard]] core::CutProblem problem(std::vector<core::Id<core::Lot>>& lots) const;
    [[nodiscard]] std::optional<core::Id<core::Job>> job() const;
    [[nodiscard]] PlanHead planHead() const;
    // Lots of the plan that are not fit, and why; empty: all are.
    [[nodiscard]] QString unfitness() const;

    Session& m_session;
    core::Shelf m_shelf;
    std::vector<core::SheetOfLot> m_sheets;
    std::vector<core::Id<core::Material>> m_materials; // as the choice lists them
    std::set<core::Id<core::Lot>> m_spared;            // not to be cut
    std::optional<core::CutProblem> m_asked{};         // that is being planned, or was
    std::vector<core::Id<core::Lot>> m_lots;           // of its sheets
    std::optional<core::CuttingToBook> m_planned;
    bool m_isBooked = false; // the plan that stands there: it is cut by, and no more planned

    PlainForm* m_form;
    FieldRow* m_job;
    FieldRow* m_material;
    FieldRow* m_note;
    WorkProposer* m_proposer;
    PieceList* m_pieces;
    Label* m_others; // pieces of the work that are of other stock, with their sizes
    RuledList* m_sheetList;
    Label* m_noSheets;
    Label* m_standing;
    Label* m_against; // grain that would lie across the spine
    QPushButton* m_stop;
    QPushButton* m_book;
    CuttingPlanWidget* m_drawing;
    SwellForm* m_swell;
    HouseValueList* m_house;
    PlanWork* m_work;
    QTimer* m_soon;
};

} // namespace headcap::app
