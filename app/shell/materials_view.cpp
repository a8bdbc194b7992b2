#include "app/shell/materials_view.h"

#include <map>

#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/scrolled_page.h"
#include "app/shell/lot_movements.h"
#include "app/stock/lot_whereabouts.h"
#include "app/stock/ways_on.h"
#include "core/custody/job_states.h"
#include "core/materials/shelf_life.h"

namespace headcap::app {
namespace {

template <class Record>
struct Kept {
    std::vector<Record> records;
    std::map<core::Id<Record>, core::Revision> revisions;
};

template <class Record>
Kept<Record> allOf(const core::RecordStore& store) {
    Kept<Record> kept;
    for (auto& one : core::all<Record>(store)) {
        kept.revisions[one.record.id] = one.revision;
        kept.records.push_back(std::move(one.record));
    }
    return kept;
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
      m_movements(new LotMovements(session)), m_whereabouts(new LotWhereabouts(session)),
      m_materials(new RecordList<core::Material>(
          session, m_edits,
          {tr("Kinds of material"), tr("Add a kind"),
           tr("What the workshop uses: how it is counted, how long it keeps, how it comes off.")},
          tr("Material"))) {
    buildLots();
    buildMaterials();
    connect(m_whereabouts, &LotWhereabouts::goAsked, this, &View::goAsked);
    m_edits.alignLabels();
    layOut();
}

void MaterialsView::layOut() {
    auto* down = scrolledPage(
        this, title(), tr("What is on the shelf, how much is left, and where it went."), 1280);
    down->addSpacing(kGap);
    down->addWidget(new WaysOn(*this, {{ActionId::mixing, ViewId::mixing},
                                       {ActionId::cutting, ViewId::cutting},
                                       {ActionId::stockList, ViewId::stock}}));
    for (QWidget* section :
         {static_cast<QWidget*>(m_lots), static_cast<QWidget*>(m_movements),
          static_cast<QWidget*>(m_whereabouts), static_cast<QWidget*>(m_materials)}) {
        down->addSpacing(kSection);
        down->addWidget(section);
    }
    down->addStretch(1);
}

RowWords MaterialsView::lotWords(const core::Lot& lot) const {
    const core::Material* kind = m_shelf.material(lot.material);
    const core::Day today = m_session.clock().today();
    const core::LotAge age = core::ageOf(lot, kind, today);
    const auto balance = m_shelf.balanceOf(lot.id);
    QStringList detail{words(lot.origin), fromCore(lot.supplier), fromCore(lot.savedFrom),
                       fromCore(lot.recipe), ageWords(age, core::goodUntilOf(lot, kind), today)};
    detail.removeAll({});
    const bool isOpen = age == core::LotAge::overdue || !balance || balance->count < 0;
    return RowWords{.mark = fromCore(lot.number),
                    .title = kind != nullptr ? fromCore(kind->name) : tr("kind not known"),
                    .detail = detail.join(QStringLiteral(" · ")),
                    .right = lot.finished ? tr("done with")
                             : balance    ? fromCore(core::toText(*balance))
                                          : tr("does not add up"),
                    .rightInk = lot.finished ? Ink::quiet
                                : isOpen     ? Ink::must
                                             : Ink::ink};
}

std::optional<core::Lot> MaterialsView::newLot() {
    if (m_shelf.materials.empty()) {
        m_session.say({Notice::Kind::refused, tr("Add the kind of material first, below.")});
        return std::nullopt;
    }
    const auto year = m_session.clock().today().year();
    const auto number = core::nextLotNumber(
        m_session.records().greatest(core::RecordKind::lot, "number", core::lotNumberPrefix(year)),
        year);
    return core::Lot{.id = m_session.ids().next<core::Lot>(),
                     .number = number.value_or(std::string{}),
                     .material = m_shelf.materials.front().id,
                     .receivedOn = m_session.clock().today()};
}

void MaterialsView::showMovements() {
    const auto chosen = m_lots->list().current();
    const auto lot = chosen ? std::optional{core::Id<core::Lot>{*chosen}} : std::nullopt;
    m_movements->show(m_shelf, lot);
    m_session.guarded([&] { m_whereabouts->show(lot); });
}

bool MaterialsView::enter(const Destination& destination) {
    refresh();
    if (!destination.record) {
        m_lots->list().setFocus();
        return true;
    }
    return m_lots->goTo(destination.record->id) || m_materials->goTo(destination.record->id);
}

void MaterialsView::refresh() {
    m_session.guarded([this] {
        m_shelf = core::loadShelf(m_session.records());
        const auto lots = allOf<core::Lot>(m_session.records());
        const auto materials = allOf<core::Material>(m_session.records());
        m_lots->show(lots.records, [&](const core::Lot& l) { return lots.revisions.at(l.id); });
        m_materials->show(materials.records,
                          [&](const core::Material& m) { return materials.revisions.at(m.id); });
        showMovements();
    });
}

} // namespace headcap::app
