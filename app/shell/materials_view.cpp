#include "app/shell/materials_view.h"

#include <map>

#include <QScrollArea>
#include <QVBoxLayout>

#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/shell/lot_movements.h"
#include "core/custody/job_states.h"
#include "core/materials/material_kinds.h"
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
      m_movements(new LotMovements(session)),
      m_materials(new RecordList<core::Material>(
          session, m_edits,
          {tr("Kinds of material"), tr("Add a kind"),
           tr("What the workshop uses: how it is counted, how long it keeps, how it comes off.")},
          tr("Material"))) {
    buildLots();
    buildMaterials();
    m_edits.alignLabels();
    layOut();
}

void MaterialsView::layOut() {
    auto* sheet = new QWidget;
    sheet->setMaximumWidth(1280);
    auto* down = new QVBoxLayout(sheet);
    down->setContentsMargins(15 * kGrid, 8 * kGrid, 15 * kGrid, kSection);
    down->setSpacing(0);
    down->addWidget(new Label(Face::title, Ink::ink, title()));
    down->addWidget(new Label(Face::small, Ink::quiet,
                              tr("What is on the shelf, how much is left, and where it went.")));
    for (QWidget* section : {static_cast<QWidget*>(m_lots), static_cast<QWidget*>(m_movements),
                             static_cast<QWidget*>(m_materials)}) {
        down->addSpacing(kSection);
        down->addWidget(section);
    }
    down->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(sheet);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
}

void MaterialsView::buildLots() {
    using R = core::Lot;
    auto& form = m_lots->form();
    form.text(tr("Number"), &R::number).placeholder(tr("on its label: 26-014"));
    form.pick(tr("Material"), &R::material, [this] {
        std::vector<Choice> kinds;
        for (const core::Material& kind : m_shelf.materials) {
            kinds.push_back({kind.id.text(), fromCore(kind.name)});
        }
        return kinds;
    });
    form.choice(tr("It was"), &R::origin);
    const auto is = [](core::LotOrigin origin) {
        return [origin](const R& lot) { return lot.origin == origin; };
    };
    const auto isBought = is(core::LotOrigin::bought);
    const auto isSaved = is(core::LotOrigin::saved);
    const auto isMixed = is(core::LotOrigin::mixed);
    const auto isSheet = [this](const R& lot) {
        const core::Material* kind = m_shelf.material(lot.material);
        return kind != nullptr && kind->unit == core::Unit::sheet;
    };
    form.onlyWhen(form.usedText(tr("Supplier"), &R::supplier), isBought);
    form.onlyWhen(form.usedText(tr("Maker"), &R::maker), isBought);
    form.onlyWhen(form.text(tr("Product"), &R::product), isBought);
    form.onlyWhen(form.text(tr("Batch"), &R::batch), isBought);
    form.onlyWhen(form.value(tr("Cost"), &R::cost), isBought);
    form.onlyWhen(form.lines(tr("Saved from"), &R::savedFrom)
                      .placeholder(tr("the binding it was saved from")),
                  isSaved);
    form.onlyWhen(
        form.text(tr("Free to use"), &R::whyFree).placeholder(tr("why it could be used elsewhere")),
        isSaved);
    form.onlyWhen(form.text(tr("Watermark"), &R::watermark), isSaved);
    form.onlyWhen(form.value(tr("Mixed on"), &R::mixedOn), isMixed);
    form.onlyWhen(form.pick(tr("Mixed by"), &R::mixedBy, peopleOf(m_session)), isMixed);
    form.onlyWhen(form.usedText(tr("Recipe"), &R::recipe), isMixed);
    form.onlyWhen(form.value(tr("Strength"), &R::strength).placeholder(tr("4 % w/v")), isMixed);
    form.onlyWhen(form.pick(tr("Cut off lot"), &R::parent, lotsOf(m_session)),
                  is(core::LotOrigin::offcut));
    form.value(tr("Received"), &R::receivedOn);
    form.value(tr("Opened"), &R::openedOn);
    form.value(tr("Good until"), &R::goodUntil);
    form.usedText(tr("Kept at"), &R::keptAt);
    form.onlyWhen(form.value(tr("Sheet width"), &R::sheetWidth), isSheet);
    form.onlyWhen(form.value(tr("Sheet height"), &R::sheetHeight), isSheet);
    form.onlyWhen(form.choice(tr("Grain"), &R::grain), isSheet);
    form.check(tr("Done with"), tr("used up or thrown away; no longer offered"), &R::finished);
    form.lines(tr("Note"), &R::note);
    m_lots->describe = [this](const R& lot) { return lotWords(lot); };
    m_lots->make = [this] { return newLot(); };
    connect(m_lots, &ListSection::currentMoved, this, &MaterialsView::showMovements);
}

void MaterialsView::buildMaterials() {
    using R = core::Material;
    auto& form = m_materials->form();
    form.text(tr("Name"), &R::name).completed([] {
        QStringList names;
        for (const core::MaterialKind& kind : core::materialKinds()) {
            names << fromCore(kind.name);
        }
        return names;
    });
    form.choice(tr("Kind"), &R::kind);
    form.choice(tr("Counted in"), &R::unit);
    form.lines(tr("Made of"), &R::composition);
    form.value(tr("Thickness"), &R::thickness);
    form.text(tr("Standard"), &R::standard).placeholder(tr("met, and the evidence for it"));
    form.value(tr("Keeps for"), &R::shelfLifeDays)
        .placeholder(tr("days once opened or mixed; 0: keeps"));
    form.choice(tr("Comes off"), &R::reversibility);
    form.lines(tr("How"), &R::removal).placeholder(tr("how it is usually taken off again"));
    form.lines(tr("Caution"), &R::caution);
    form.lines(tr("Note"), &R::note);
    m_materials->describe = [](const R& material) {
        return RowWords{.title = fromCore(material.name),
                        .detail = fromCore(material.removal),
                        .right = words(material.kind)};
    };
    // A kind of the vocabulary brings what is known of it with its name.
    m_materials->form().setAlso([](const R& before, const R& after, core::Change& change) {
        if (before.name == after.name) {
            return;
        }
        for (const core::MaterialKind& kind : core::materialKinds()) {
            auto* added =
                change.writes.empty() ? nullptr : std::get_if<R>(&change.writes.back().record);
            if (kind.name == after.name && added != nullptr && before.name.empty()) {
                *added = core::materialFrom(kind, after.id);
            }
        }
    });
    m_materials->make = [this]() -> std::optional<R> { return R{.id = m_session.ids().next<R>()}; };
    m_materials->list().setMarkWidth(0);
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
    m_movements->show(m_shelf, chosen ? std::optional{core::Id<core::Lot>{*chosen}} : std::nullopt);
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
