// The forms of a lot and of a kind of material.
#include <QLineEdit>

#include "app/form/record_choices.h"
#include "app/shell/materials_view.h"
#include "core/materials/material_kinds.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

// A number with decimals that is kept whole: 8.20 as 820.
template <class Record>
FieldRow& decimal(RecordForm<Record>& form, const QString& label,
                  std::optional<std::int64_t> Record::*member, int places, const QString& hint) {
    return form
        .bind(
            label, new QLineEdit, false,
            [member, places](const Record& r) {
                return r.*member ? fromCore(core::decimalText(*(r.*member), places)) : QString{};
            },
            [member, places](Record& r, const QString& text) {
                if (text.trimmed().isEmpty()) {
                    r.*member = std::nullopt;
                    return QString{};
                }
                const auto value = core::parseDecimal(toCore(text.trimmed()), places);
                if (!value || *value < 0) {
                    return MaterialsView::tr("Write it as a number, without its unit.");
                }
                r.*member = *value;
                return QString{};
            })
        .placeholder(hint);
}

} // namespace

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
    decimal(form, tr("pH"), &R::phHundredths, 2, tr("of a cold extract: 8.20"));
    decimal(form, tr("Alkali reserve"), &R::alkaliReserveMmolKg, 3, tr("mol/kg: 0.450"));
    form.text(tr("Evidence"), &R::evidence).placeholder(tr("certificate, own test and its day"));
    form.check(tr("Kept back"), tr("rare: cut last"), &R::keptBack);
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
    form.usedText(tr("Fibre"), &R::fibre);
    form.usedText(tr("Tannage"), &R::tannage);
    form.bind(
            tr("Weight"), new QLineEdit, false,
            [](const R& r) {
                return r.grammageMgM2 > 0 ? fromCore(core::decimalText(r.grammageMgM2, 3))
                                          : QString{};
            },
            [](R& r, const QString& text) {
                const auto value = text.trimmed().isEmpty()
                                       ? tl::expected<std::int64_t, core::TextError>{0}
                                       : core::parseDecimal(toCore(text.trimmed()), 3);
                if (!value || *value < 0) {
                    return tr("Write it as a number, without its unit.");
                }
                r.grammageMgM2 = *value;
                return QString{};
            })
        .placeholder(tr("g/m²: 110"));
    form.value(tr("Thickness"), &R::thickness);
    form.value(tr("Solids"), &R::solids).placeholder(tr("of an adhesive: 20 % w/w"));
    decimal(form, tr("Density"), &R::densityMgMl, 3, tr("g/ml: 0.789"));
    decimal(form, tr("pH"), &R::phHundredths, 2, tr("of a cold extract: 8.20"));
    decimal(form, tr("Alkali reserve"), &R::alkaliReserveMmolKg, 3, tr("mol/kg: 0.450"));
    decimal(form, tr("Stretch across"), &R::stretchAcrossPpm, 4, tr("% when pasted: 1.5"));
    decimal(form, tr("Stretch along"), &R::stretchAlongPpm, 4, tr("% when pasted: 0.2"));
    form.value(tr("Price"), &R::price).placeholder(tr("of one sheet, gram, piece …"));
    form.text(tr("Standard"), &R::standard).placeholder(tr("met: ISO 9706"));
    form.text(tr("Evidence"), &R::evidence).placeholder(tr("certificate, own test and its day"));
    form.check(tr("Kept back"), tr("rare: cut last"), &R::keptBack);
    form.value(tr("Keeps for"), &R::shelfLifeDays)
        .placeholder(tr("days once opened or mixed; 0: keeps"));
    form.choice(tr("Comes off"), &R::reversibility);
    form.lines(tr("How"), &R::removal).placeholder(tr("how it is usually taken off again"));
    form.lines(tr("Caution"), &R::caution);
    form.lines(tr("Note"), &R::note);
    m_materials->describe = [](const R& material) {
        return RowWords{.title = fromCore(material.name),
                        .detail = material.removal.empty()
                                      ? QString{}
                                      : tr("comes off by: %1").arg(fromCore(material.removal)),
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
    connect(m_materials, &ListSection::currentMoved, this, &MaterialsView::showSheets);
}

} // namespace headcap::app
