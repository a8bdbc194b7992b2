// Materials and lots: what is on the shelf with the balance of each lot and how it stands with its
// date, the ledger of the chosen one, and the kinds of material the workshop uses.
#pragma once

#include "app/form/record_form.h"
#include "app/form/record_list.h"
#include "app/session/aside.h"
#include "app/shell/view.h"
#include "core/materials/shelf_index.h"

class QPushButton;

namespace headcap::app {

class LotMovements;
class LotPapers;
class LotWhereabouts;
namespace papers {
class AttachmentList;
class DataSheetButton;
} // namespace papers

class MaterialsView : public View {
    Q_OBJECT
public:
    explicit MaterialsView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    [[nodiscard]] bool leave() override { return m_edits.leave(); }
    void refresh() override;
    [[nodiscard]] QString title() const override { return tr("Materials and lots"); }

    [[nodiscard]] papers::AttachmentList& sheets() { return *m_sheets; }
    [[nodiscard]] bool isReading() const { return m_aside.isReading(); }

private:
    void layOut();
    void focusFirst();
    void buildLots();
    void buildMaterials();
    void showMovements();
    void showSheets();
    [[nodiscard]] RowWords lotWords(const core::Lot& lot) const;
    [[nodiscard]] std::optional<core::Lot> newLot();
    // In one sentence why it could not be entered.
    [[nodiscard]] QString takeIn(const core::Lot& lot, const QString& text);

    Session& m_session;
    PageEdits m_edits;
    RecordList<core::Lot>* m_lots;
    QPushButton* m_done; // shows what is done with as well
    LotMovements* m_movements;
    LotWhereabouts* m_whereabouts;
    LotPapers* m_lotPapers;
    papers::DataSheetButton* m_lotSheet;
    RecordList<core::Material>* m_materials;
    papers::AttachmentList* m_sheets; // of the chosen kind
    core::Shelf m_shelf;
    std::optional<core::ShelfIndex> m_index{};
    Aside m_aside; // reads the chosen lot's story
};

} // namespace headcap::app
