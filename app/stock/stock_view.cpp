#include "app/stock/stock_view.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/ruled_table.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/scrolled_page.h"
#include "app/session/actions.h"
#include "app/stock/fit_height.h"
#include "app/stock/label_chooser.h"
#include "app/stock/plain_form.h"
#include "app/stock/stock_rows.h"
#include "app/work/sheet_paper.h"
#include "core/report/stock_sheet.h"

namespace headcap::app {
namespace {

constexpr int kMost = 520;

void put(RuledTable& table, std::vector<TableRow> rows) {
    table.show(std::move(rows));
    fitHeight(table, kMost);
}

} // namespace

StockView::StockView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_desk(new PaperDesk(session, this)),
      m_labels(new LabelChooser(session)) {
    auto* down = scrolledPage(this, title(),
                              tr("What there is, what there was, where it went; and its labels."));
    addHeading(*down, tr("Labels"));
    down->addWidget(m_labels);
    auto* form = new PlainForm;
    m_day = &form->line(tr("On the day"), tr("today, or any day: 31 Dec"));
    addHeading(*down, tr("Stock"));
    auto* save = quietButton(tr("Stock list as PDF …"),
                             tr("Of the day shown; %1 prints it").arg(keyText(ActionId::print)));
    connect(save, &QPushButton::clicked, this, &StockView::saveStockList);
    auto* across = new QHBoxLayout;
    across->setSpacing(kSpace);
    across->addWidget(form, 1);
    across->addWidget(save, 0, Qt::AlignTop);
    down->addLayout(across);
    m_reading = new Label(Face::small, Ink::quiet, tr("The ledger is being added up …"));
    down->addWidget(m_reading);
    m_stock = addTable(*down, {},
                       new RuledTable(tr("Stock on the day"),
                                      {.mark = 88, .right = 120, .title = 5, .middle = {3, 3}}));
    m_ending = addTable(*down, tr("Goes off or runs out"),
                        new RuledTable(tr("Goes off or runs out"),
                                       {.mark = 88, .right = 120, .title = 5, .middle = {3, 3}}));
    m_use = addTable(*down, tr("Used, by kind and year"),
                     new RuledTable(tr("Used, by kind and year"),
                                    {.mark = 0, .right = 120, .title = 4, .middle = {5}}));
    m_saved = addTable(*down, tr("Paper saved, and where it went"),
                       new RuledTable(tr("Paper saved, and where it went"),
                                      {.mark = 88, .right = 88, .title = 5, .middle = {6}}));
    m_noSaved = new Label(Face::body, Ink::quiet,
                          tr("No paper has been saved from other bindings yet. A lot that was "
                             "says so under Materials and lots, with why it was free to use."));
    m_noSaved->setRunning();
    down->addWidget(m_noSaved);
    down->addStretch(1);
    connect(m_day, &FieldRow::edited, this, &StockView::showStock);
}

RuledTable* StockView::addTable(QVBoxLayout& down, const QString& heading, RuledTable* table) {
    if (!heading.isEmpty()) {
        addHeading(down, heading);
    } else {
        down.addSpacing(kGap);
    }
    down.addWidget(table);
    connect(table, &RuledTable::opened, this, [this, table] { open(*table); });
    return table;
}

bool StockView::enter(const Destination& destination) {
    refresh();
    m_session.guarded([&] {
        if (destination.record && destination.record->kind == core::RecordKind::lot) {
            if (const auto lot =
                    core::find(m_session.records(), core::Id<core::Lot>{destination.record->id})) {
                m_labels->choose(fromCore(lot->record.number));
            }
        } else if (destination.job) {
            if (const auto job = core::find(m_session.records(), *destination.job)) {
                m_labels->choose(fromCore(job->record.number));
            }
        }
    });
    m_labels->form().focusFirst();
    return true;
}

// The ledger of twenty years takes seconds to add up: elsewhere, and shown when it is done.
void StockView::refresh() {
    m_labels->refresh();
    m_reading->setVisible(m_shelf == nullptr);
    struct Read {
        core::Day day;
        std::shared_ptr<const core::Shelf> shelf;
        std::vector<TableRow> stock, ending, use, saved;
    };
    m_aside.ask(
        [&records = m_session.records(), &clock = m_session.clock(), day = dayShown()] {
            core::IdSource keys{clock}; // of rows that are no record
            Read read{.day = day,
                      .shelf = std::make_shared<const core::Shelf>(core::loadShelf(records))};
            read.stock = stockRows(*read.shelf, day, clock);
            read.ending = endingRows(*read.shelf, clock.today(), clock, keys);
            read.use = useRows(*read.shelf, clock, keys);
            read.saved = savedRows(*read.shelf, records);
            return read;
        },
        [this](Read read) {
            m_shelf = std::move(read.shelf);
            m_reading->hide();
            if (read.day == dayShown()) {
                put(*m_stock, std::move(read.stock));
            } else { // another was asked for meanwhile
                showStock();
            }
            put(*m_ending, std::move(read.ending));
            put(*m_use, std::move(read.use));
            m_noSaved->setVisible(read.saved.empty());
            m_saved->setVisible(!read.saved.empty());
            put(*m_saved, std::move(read.saved));
        });
}

void StockView::showStock() {
    if (m_shelf == nullptr) {
        refresh();
        return;
    }
    m_ofDay.ask([shelf = m_shelf, &clock = m_session.clock(),
                 day = dayShown()] { return stockRows(*shelf, day, clock); },
                [this](std::vector<TableRow> rows) { put(*m_stock, std::move(rows)); });
}

std::shared_ptr<const core::Shelf> StockView::wholeShelf() {
    if (m_shelf == nullptr) {
        m_shelf = std::make_shared<const core::Shelf>(core::loadShelf(m_session.records()));
    }
    return m_shelf;
}

core::Day StockView::dayShown() {
    const core::Day today = m_session.clock().today();
    return valueOf<core::Day>(*m_day, {.today = today}).value_or(today);
}

core::Document StockView::stockList() {
    std::string workshop;
    for (const auto& one : core::all<core::Workshop>(m_session.records())) {
        workshop = one.record.name;
    }
    return core::stockSheet(*wholeShelf(), dayShown(), workshop, m_session.clock());
}

void StockView::saveStockList() {
    m_session.guarded([this] {
        saveSheet(m_session, *m_desk, stockList(),
                  tr("stock %1").arg(fromCore(core::isoText(dayShown()))));
    });
}

void StockView::open(const RuledTable& table) {
    const auto id = table.current();
    bool isLot = false;
    m_session.guarded(
        [&] { isLot = id && core::find(m_session.records(), core::Id<core::Lot>{*id}); });
    if (isLot) {
        Q_EMIT goAsked(
            {.view = ViewId::materials, .record = core::RecordRef{core::RecordKind::lot, *id}});
    }
}

bool StockView::print() {
    if (!m_labels->labels().empty()) {
        return m_labels->print();
    }
    m_session.guarded([this] { printSheet(m_session, stockList(), this); });
    return true;
}

} // namespace headcap::app
