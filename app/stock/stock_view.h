// The shelf as a whole: stock on a day, what goes off or runs out, use by kind and year, saved
// paper and where each piece went; and labels to be printed. Enter on a lot goes to it.
#pragma once

#include <memory>

#include "app/session/aside.h"
#include "app/shell/view.h"
#include "core/materials/shelf.h"
#include "core/report/document.h"

class QVBoxLayout;

namespace headcap::app {

class FieldRow;
class Label;
class LabelChooser;
class PaperDesk;
class RuledTable;
class Session;

class StockView : public View {
    Q_OBJECT
public:
    explicit StockView(Session& session, QWidget* parent = nullptr);
    // A lot or a job as the record: its label.
    bool enter(const Destination& destination) override;
    void refresh() override;
    bool print() override;
    // Of the day that is shown.
    [[nodiscard]] core::Document stockList();
    void saveStockList();
    [[nodiscard]] QString title() const override { return tr("Stock and labels"); }
    [[nodiscard]] RuledTable& stock() { return *m_stock; }
    [[nodiscard]] RuledTable& saved() { return *m_saved; }
    [[nodiscard]] FieldRow& day() { return *m_day; }
    [[nodiscard]] LabelChooser& labels() { return *m_labels; }
    // The ledger is being added up.
    [[nodiscard]] bool isReading() const { return m_aside.isReading() || m_ofDay.isReading(); }

private:
    void showStock();
    [[nodiscard]] core::Day dayShown();
    void open(const RuledTable& table);
    RuledTable* addTable(QVBoxLayout& down, const QString& heading, RuledTable* table);

    Session& m_session;
    [[nodiscard]] std::shared_ptr<const core::Shelf> wholeShelf();

    Aside m_aside{m_session, this};               // the whole ledger
    Aside m_ofDay{m_session, this};               // the stock of another day, out of it
    std::shared_ptr<const core::Shelf> m_shelf{}; // with its whole ledger, once it was read
    PaperDesk* m_desk;
    Label* m_reading;
    LabelChooser* m_labels;
    FieldRow* m_day;
    RuledTable* m_stock;
    RuledTable* m_ending;
    RuledTable* m_use;
    RuledTable* m_saved;
    Label* m_noSaved;
};

} // namespace headcap::app
