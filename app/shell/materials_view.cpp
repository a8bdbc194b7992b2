#include "app/shell/materials_view.h"

#include <algorithm>
#include <iterator>
#include <map>

#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/scrolled_page.h"
#include "app/papers/attachment_list.h"
#include "app/papers/data_sheets.h"
#include "app/shell/lot_movements.h"
#include "app/stock/lot_papers.h"
#include "app/stock/lot_story.h"
#include "app/stock/lot_whereabouts.h"
#include "app/stock/ways_on.h"
#include "core/materials/free_lot_number.h"
#include "core/materials/ledger_in_brief.h"
#include "core/materials/material_kinds.h"
#include "core/materials/shelf_life.h"
#include "core/values/amount_words.h"

namespace headcap::app {
namespace {

template <class Record>
struct Kept {
    std::vector<Record> records;
    std::map<core::Id<Record>, core::Revision> revisions;
};

template <class Record>
Kept<Record> keptOf(std::vector<core::Stored<Record>> stored) {
    Kept<Record> kept;
    for (auto& one : stored) {
        kept.revisions[one.record.id] = one.revision;
        kept.records.push_back(std::move(one.record));
    }
    return kept;
}

// What may be taken; with what is done with behind it, where that is asked for.
Kept<core::Lot> lotsOf(const core::RecordStore& store, bool withDone) {
    Kept<core::Lot> lots;
    for (const bool isDone : withDone ? std::vector{false, true} : std::vector{false}) {
        auto some = keptOf(core::typed<core::Lot>(store.allWith(
            core::RecordKind::lot, core::fieldName(&core::Lot::finished), std::int64_t{isDone})));
        lots.revisions.merge(some.revisions);
        std::ranges::move(some.records, std::back_inserter(lots.records));
    }
    return lots;
}

QString ageWords(core::LotAge age, const std::optional<core::Day>& until, core::Day today) {
    if (age == core::LotAge::overdue) {
        return MaterialsView::tr("past its date");
    }
    if (until && age != core::LotAge::keeps) {
        return MaterialsView::tr("good until %1").arg(shortDay(*until, today));
    }
    return {};
}

} // namespace

MaterialsView::MaterialsView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_edits(session),
      m_lots(new RecordList<core::Lot>(
          session, m_edits,
          {tr("On the shelf"), tr("Add a lot"),
           tr("Each lot with its number: bought, saved from an old binding, mixed, or cut off "
              "another. Make its kind of material below first.")},
          tr("Lot"))),
      m_done(quietButton({}, tr("Lots that were used up or thrown away"))),
      m_movements(new LotMovements(session)), m_whereabouts(new LotWhereabouts(session)),
      m_lotPapers(new LotPapers(session, m_edits)),
      m_lotSheet(new papers::DataSheetButton(session)),
      m_materials(new RecordList<core::Material>(
          session, m_edits,
          {tr("Kinds of material"), tr("Add a kind"),
           tr("What the workshop uses: how it is counted, how long it keeps, how it comes off.")},
          tr("Material"))),
      m_sheets(new papers::AttachmentList(
          session, m_edits,
          {tr("Safety data sheets"), tr("Attach a sheet"),
           tr("Of the kind chosen above: the maker's safety data sheet, a certificate. It opens "
              "from each of its lots and from the bench.")})),
      m_aside(session, this) {
    buildLots();
    buildMaterials();
    connect(m_whereabouts, &LotWhereabouts::goAsked, this, &View::goAsked);
    m_edits.alignLabels();
    m_done->setCheckable(true);
    connect(m_done, &QPushButton::toggled, this, [this] { refresh(); });
    layOut();
}

void MaterialsView::layOut() {
    auto* down = scrolledPage(
        this, title(), tr("What is on the shelf, how much is left, and where it went."), 1280);
    down->addSpacing(kGap);
    down->addWidget(new WaysOn(*this, {{ActionId::mixing, ViewId::mixing},
                                       {ActionId::cutting, ViewId::cutting},
                                       {ActionId::stockList, ViewId::stock}}));
    // Beside the list, however long that is.
    m_lots->addBelowForm(m_movements);
    m_lots->addBelowForm(m_whereabouts);
    for (QWidget* section : {static_cast<QWidget*>(m_lots), static_cast<QWidget*>(m_lotSheet),
                             static_cast<QWidget*>(m_lotPapers), static_cast<QWidget*>(m_materials),
                             static_cast<QWidget*>(m_sheets)}) {
        down->addSpacing(kSection);
        down->addWidget(section);
        if (section == m_lots) {
            down->addWidget(m_done, 0, Qt::AlignLeft);
        }
    }
    down->addStretch(1);
}

RowWords MaterialsView::lotWords(const core::Lot& lot) const {
    const core::Material* kind = m_index->material(lot.material);
    const core::Day today = m_session.clock().today();
    const core::LotAge age = core::ageOf(lot, kind, today);
    const auto balance = m_index->balanceOf(lot);
    QStringList detail{words(lot.origin), fromCore(lot.supplier), fromCore(lot.savedFrom),
                       fromCore(lot.recipe), ageWords(age, core::goodUntilOf(lot, kind), today)};
    const bool isOpen = age == core::LotAge::overdue || !balance || balance->count < 0;
    const auto piece = core::pieceName(kind != nullptr ? kind->kind : core::MaterialClass::paper);
    const QString left =
        balance ? fromCore(core::aboutWords(*balance, piece)) : tr("does not add up");
    return RowWords{.mark = fromCore(lot.number),
                    .title = kind != nullptr ? fromCore(kind->name) : tr("kind not known"),
                    .detail = dotted(detail),
                    .right = lot.finished ? tr("done with") : left,
                    .rightInk = lot.finished ? Ink::quiet
                                : isOpen     ? Ink::must
                                             : Ink::ink};
}

std::optional<core::Lot> MaterialsView::newLot() {
    if (m_shelf.materials.empty()) {
        m_materials->startNew(); // a lot is of a kind
        return std::nullopt;
    }
    std::optional<std::string> number;
    m_session.guarded(
        [&] { number = core::freeLotNumber(m_session.records(), m_session.clock().today()); });
    return core::Lot{.id = m_session.ids().next<core::Lot>(),
                     .number = number.value_or(std::string{}),
                     .material = m_session.ids().next<core::Material>(), // to be said
                     .receivedOn = m_session.clock().today()};
}

// Its papers at once; its story when it is read, and until then what stood there, in which nothing
// can be entered.
void MaterialsView::showMovements() {
    const auto chosen = m_lots->list().current();
    const auto lot = chosen ? std::optional{core::Id<core::Lot>{*chosen}} : std::nullopt;
    const core::Lot* known = lot ? m_shelf.lot(*lot) : nullptr;
    m_lotPapers->showLot(known);
    m_lotSheet->setKind(known == nullptr ? std::nullopt : std::optional{known->material});
    m_movements->setEnabled(lot == m_movements->lot());
    m_aside.ask(
        [&store = m_session.records(), lot] {
            return lot ? readLotStory(store, *lot) : std::shared_ptr<const LotStory>{};
        },
        [this](const std::shared_ptr<const LotStory>& story) {
            m_whereabouts->show(story.get());
            m_movements->show(m_shelf, story.get(), m_whereabouts->uses());
            m_movements->setEnabled(true);
        });
}

void MaterialsView::showSheets() {
    const auto chosen = m_materials->list().current();
    const core::Material* kind =
        chosen ? m_shelf.material(core::Id<core::Material>{*chosen}) : nullptr;
    m_sheets->setVisible(kind != nullptr);
    if (kind == nullptr) {
        return;
    }
    const core::RecordRef ref = core::refOf(kind->id);
    m_sheets->setSubject({ref, std::nullopt}, {{papers::keyOf(ref), fromCore(kind->name)}});
    std::vector<core::Attachment> sheets;
    std::map<core::Id<core::Attachment>, core::Revision> revisions;
    for (const auto& one : papers::sheetsOf(m_session, kind->id)) {
        sheets.push_back(one.record);
        revisions[one.record.id] = one.revision;
    }
    m_sheets->show(sheets, [&](const core::Attachment& a) { return revisions.at(a.id); });
}

// On an empty shelf one begins with the kind.
void MaterialsView::focusFirst() {
    ListSection& first = m_shelf.materials.empty() ? static_cast<ListSection&>(*m_materials)
                                                   : static_cast<ListSection&>(*m_lots);
    QWidget* at = &first.list();
    if (first.list().model()->rowCount() == 0) {
        const auto ways = first.findChildren<QPushButton*>();
        const auto add = std::ranges::find_if(
            ways, [&](const QPushButton* way) { return way->isVisibleTo(&first); });
        at = add == ways.end() ? at : *add;
    }
    at->setFocus(Qt::TabFocusReason); // as by the key, a list then shows its row
}

bool MaterialsView::enter(const Destination& destination) {
    if (destination.record) {
        m_session.guarded([&] {
            const auto shelf = core::shelfInBrief(m_session.records());
            const core::Lot* asked = shelf->lot(core::Id<core::Lot>{destination.record->id});
            if (asked != nullptr && asked->finished) {
                m_done->setChecked(true);
            }
        });
    }
    refresh();
    if (!destination.record) {
        focusFirst();
        return true;
    }
    return m_lots->goTo(destination.record->id) || m_materials->goTo(destination.record->id);
}

void MaterialsView::refresh() {
    m_session.guarded([this] {
        m_shelf = *core::shelfInBrief(m_session.records());
        m_index.emplace(m_shelf);
        const auto lots = lotsOf(m_session.records(), m_done->isChecked());
        const auto done = std::ranges::count(m_shelf.lots, true, &core::Lot::finished);
        m_done->setVisible(done > 0);
        m_done->setText(m_done->isChecked()
                            ? tr("Hide what is done with")
                            : counted(static_cast<int>(done), tr("And %1 lot that is done with …"),
                                      tr("And %1 lots that are done with …")));
        const auto materials = keptOf(core::all<core::Material>(m_session.records()));
        m_lots->show(lots.records, [&](const core::Lot& l) { return lots.revisions.at(l.id); });
        m_materials->show(materials.records,
                          [&](const core::Material& m) { return materials.revisions.at(m.id); });
        showMovements();
        showSheets();
    });
}

} // namespace headcap::app
