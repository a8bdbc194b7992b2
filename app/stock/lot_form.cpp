#include "app/stock/lot_form.h"

#include <algorithm>
#include <memory>
#include <utility>

#include "app/form/form_groups.h"
#include "app/form/record_choices.h"
#include "app/stock/decimal_row.h"
#include "core/custody/custody.h"
#include "core/materials/kind_properties.h"

namespace headcap::app {
namespace {

using R = core::Lot;
using P = core::KindProperty;
using Such = std::function<bool(const R&)>;

QString tr(const char* text) {
    return QCoreApplication::translate("LotForm", text);
}

Such isAny() {
    return [](const R&) { return true; };
}

Such is(core::LotOrigin origin) {
    return [origin](const R& lot) { return lot.origin == origin; };
}

Such either(Such one, Such other) {
    return [one = std::move(one), other = std::move(other)](const R& lot) {
        return one(lot) || other(lot);
    };
}

Such both(Such one, Such other) {
    return [one = std::move(one), other = std::move(other)](const R& lot) {
        return one(lot) && other(lot);
    };
}

// What a lot that has just been begun is asked for; later only what it says is shown of it.
Such isNew(const RecordForm<R>& form) {
    const auto begun = std::make_shared<std::optional<core::Id<R>>>();
    return [&form, begun](const R& lot) {
        if (form.isDraft()) {
            *begun = lot.id;
        }
        return *begun == lot.id;
    };
}

class LotFormBuilder {
public:
    LotFormBuilder(RecordForm<R>& form, const LotFormMeans& means)
        : m_form(form), m_means(means), m_groups(*new FormGroups(form)), m_isNew(isNew(form)) {}

    void build() {
        m_form.pick(tr("Material"), &R::material, m_means.kinds)
            .placeholder(tr("of which kind it is; Down lists them"));
        m_form.text(tr("Number"), &R::number).placeholder(tr("on its label: 26-014"));
        m_form.choice(tr("It was"), &R::origin);
        howMuch();
        m_groups.begin(tr("Where it came from"));
        bought();
        saved();
        mixed();
        m_form.onlyWhen(m_form.pick(tr("Cut off lot"), &R::parent, lotsOf(m_means.session)),
                        is(core::LotOrigin::offcut));
        seldom(m_form.value(tr("Received"), &R::receivedOn), isAny(),
               either(is(core::LotOrigin::bought), is(core::LotOrigin::saved)));
        seldom(m_form.value(tr("Cost"), &R::cost), is(core::LotOrigin::bought), isAny());
        m_groups.begin(tr("Its sheets"));
        sheets();
        m_groups.begin(tr("How permanent it is"));
        permanence();
        m_groups.begin(tr("On the shelf"));
        shelf();
        m_groups.finish();
    }

private:
    // Asked where it is wanted; else behind "More …".
    void seldom(FieldRow& row, Such isSuch, Such isWanted) {
        m_groups.seldom<R>(m_form, row, std::move(isSuch), std::move(isWanted));
    }
    [[nodiscard]] Such ofKind(P property) const {
        return [kind = m_means.kind, property](const R& lot) {
            const core::Material* of = kind(lot.material);
            return of != nullptr && core::matters(property, of->kind);
        };
    }
    [[nodiscard]] Such inSheets() const {
        return [kind = m_means.kind](const R& lot) {
            const core::Material* of = kind(lot.material);
            return lot.grain != core::Grain::none ||
                   (of != nullptr && of->unit == core::Unit::sheet);
        };
    }

    // Goes into the ledger and leaves the form.
    void howMuch() {
        // Read as the form is saved, and entered once the lot is kept.
        const auto typed = std::make_shared<QString>();
        FieldRow& row = m_form.bind(
            tr("How much"), new QLineEdit, false, [](const R&) { return QString{}; },
            [typed](R&, const QString& text) {
                *typed = text.trimmed();
                return QString{};
            });
        row.placeholder(tr("came in: 500 g, 10 sheets"));
        m_form.onlyWhen(row, [isEmpty = m_means.isEmpty](const R& lot) {
            const bool comes =
                lot.origin == core::LotOrigin::bought || lot.origin == core::LotOrigin::saved;
            return comes && isEmpty(lot);
        });
        QObject::connect(
            &row, &FieldRow::left, &m_form, [&row, &form = m_form, typed, takeIn = m_means.takeIn] {
                const QString text = std::exchange(*typed, {});
                if (text.isEmpty() || !form.record() || form.isDraft()) {
                    return;
                }
                if (const QString error = takeIn(*form.record(), text); !error.isEmpty()) {
                    row.rewrite(text);
                    row.setError(error);
                }
            });
    }
    void bought() {
        const Such isBought = is(core::LotOrigin::bought);
        m_form.onlyWhen(m_form.usedText(tr("Supplier"), &R::supplier), isBought);
        seldom(m_form.usedText(tr("Maker"), &R::maker), isBought, m_isNew);
        seldom(m_form.text(tr("Product"), &R::product), isBought, m_isNew);
        seldom(m_form.text(tr("Batch"), &R::batch), isBought, m_isNew);
    }
    void saved() {
        const Such isSaved = is(core::LotOrigin::saved);
        m_form.onlyWhen(m_form.lines(tr("Saved from"), &R::savedFrom)
                            .placeholder(tr("the binding it was saved from")),
                        isSaved);
        m_form.onlyWhen(m_form.pick(tr("In job"), &R::savedIn, jobs())
                            .placeholder(tr("the job it was saved in")),
                        isSaved);
        m_form.onlyWhen(m_form.text(tr("Free to use"), &R::whyFree)
                            .placeholder(tr("why it could be used elsewhere")),
                        isSaved);
        seldom(m_form.text(tr("Watermark"), &R::watermark), ofKind(P::watermark), isSaved);
    }
    void mixed() {
        const Such isMixed = is(core::LotOrigin::mixed);
        seldom(m_form.usedText(tr("Recipe"), &R::recipe), isMixed, m_isNew);
        seldom(m_form.value(tr("Strength"), &R::strength).placeholder(tr("4 % w/v")),
               either(isMixed, ofKind(P::solids)), both(isMixed, m_isNew));
        m_form.onlyWhen(m_form.value(tr("Mixed on"), &R::mixedOn), isMixed);
        seldom(m_form.pick(tr("Mixed by"), &R::mixedBy, peopleOf(m_means.session)), isMixed,
               m_isNew);
    }
    void sheets() {
        m_form.onlyWhen(m_form.value(tr("Sheet width"), &R::sheetWidth), inSheets());
        m_form.onlyWhen(m_form.value(tr("Sheet height"), &R::sheetHeight), inSheets());
        m_form.onlyWhen(m_form.choice(tr("Grain"), &R::grain), inSheets());
    }
    void permanence() {
        const Such isAsked = ofKind(P::permanence);
        seldom(decimalRow(m_form, tr("pH"), &R::phHundredths, 2, tr("of a cold extract: 8.20")),
               isAny(), isAsked);
        seldom(decimalRow(m_form, tr("Alkali reserve"), &R::alkaliReserveMmolKg, 3,
                          tr("mol/kg: 0.450")),
               isAny(), isAsked);
        seldom(m_form.text(tr("Evidence"), &R::evidence)
                   .placeholder(tr("certificate, own test and its day")),
               isAny(), isAsked);
    }
    void shelf() {
        const Such goesOff = ofKind(P::shelfLife);
        seldom(m_form.value(tr("Opened"), &R::openedOn), isAny(), [goesOff](const R& lot) {
            return lot.origin == core::LotOrigin::bought && goesOff(lot);
        });
        seldom(m_form.value(tr("Good until"), &R::goodUntil), isAny(),
               either(goesOff, is(core::LotOrigin::mixed)));
        seldom(m_form.usedText(tr("Kept at"), &R::keptAt), isAny(), m_isNew);
        seldom(m_form.check(tr("Kept back"), tr("rare: used last"), &R::keptBack), isAny(),
               m_isNew);
        m_form.check(tr("Done with"), tr("used up or thrown away; no longer offered"),
                     &R::finished);
        seldom(m_form.lines(tr("Note"), &R::note), isAny(), m_isNew);
    }
    // Those in the house, and the one that it says already.
    [[nodiscard]] Choices jobs() const {
        return [&form = m_form, &session = m_means.session] {
            std::vector<Choice> choices;
            session.guarded([&] {
                for (const core::JobLine& line : session.stores().jobs.inTheHouse()) {
                    choices.push_back({line.id.text(), fromCore(line.number + ", " + line.title)});
                }
                const auto said = form.record() ? form.record()->savedIn : std::nullopt;
                const auto job = said ? core::find(session.records(), *said) : std::nullopt;
                if (job &&
                    std::ranges::find(choices, said->text(), &Choice::key) == choices.end()) {
                    choices.push_back({said->text(), fromCore(job->record.number)});
                }
            });
            return choices;
        };
    }

    RecordForm<R>& m_form;
    const LotFormMeans& m_means;
    FormGroups& m_groups; // the form's child
    Such m_isNew;
};

} // namespace

void buildLotForm(RecordForm<core::Lot>& form, const LotFormMeans& means) {
    LotFormBuilder{form, means}.build();
}

} // namespace headcap::app
