#include "app/stock/kind_form.h"

#include "app/form/form_groups.h"
#include "app/stock/decimal_row.h"
#include "core/materials/kind_properties.h"
#include "core/materials/material_kinds.h"

namespace headcap::app {
namespace {

using R = core::Material;
using P = core::KindProperty;

QString tr(const char* text) {
    return QCoreApplication::translate("KindForm", text);
}

FieldRow& weightRow(RecordForm<R>& form) {
    return form
        .bind(
            tr("Weight"), new QLineEdit, false,
            [](const R& r) {
                return r.grammageMgM2 > 0 ? fromCore(core::decimalText(r.grammageMgM2, 3))
                                          : QString{};
            },
            [](R& r, const QString& text) {
                std::optional<std::int64_t> value;
                const QString error = readDecimal(text, 3, value);
                r.grammageMgM2 = error.isEmpty() ? value.value_or(0) : r.grammageMgM2;
                return error;
            })
        .placeholder(tr("g/m²: 110"));
}

class KindFormBuilder {
public:
    explicit KindFormBuilder(RecordForm<R>& form) : m_form(form), m_groups(*new FormGroups(form)) {}

    void build() {
        m_form.text(tr("Name"), &R::name).completed([] {
            QStringList names;
            for (const core::MaterialKind& kind : core::materialKinds()) {
                names << fromCore(kind.name);
            }
            return names;
        });
        m_form.choice(tr("Kind"), &R::kind);
        m_form.choice(tr("Counted in"), &R::unit);
        m_groups.begin(tr("What it is"));
        substance();
        m_groups.begin(tr("How permanent it is"));
        permanence();
        m_groups.begin(tr("In the work"));
        work();
        m_groups.begin(tr("On the shelf"));
        wanted(m_form.value(tr("Keeps for"), &R::shelfLifeDays)
                   .placeholder(tr("days once opened or mixed; 0: keeps")),
               P::shelfLife);
        m_form.value(tr("Price"), &R::price).placeholder(tr("of one sheet, gram, piece …"));
        m_form.check(tr("Kept back"), tr("rare: cut last"), &R::keptBack);
        m_form.lines(tr("Note"), &R::note);
        m_groups.finish();
    }

private:
    void wanted(FieldRow& row, P property) {
        m_groups.seldom<R>(
            m_form, row, [](const R&) { return true; },
            [property](const R& kind) { return core::matters(property, kind.kind); });
    }
    void substance() {
        m_form.lines(tr("Made of"), &R::composition);
        wanted(m_form.usedText(tr("Fibre"), &R::fibre), P::fibre);
        wanted(m_form.usedText(tr("Tannage"), &R::tannage), P::tannage);
        wanted(weightRow(m_form), P::weight);
        wanted(m_form.value(tr("Thickness"), &R::thickness), P::thickness);
        wanted(m_form.value(tr("Solids"), &R::solids).placeholder(tr("20 % w/w")), P::solids);
        wanted(decimalRow(m_form, tr("Density"), &R::densityMgMl, 3, tr("g/ml: 0.789")),
               P::density);
    }
    void permanence() {
        wanted(m_form.text(tr("Standard"), &R::standard).placeholder(tr("met: ISO 9706")),
               P::permanence);
        wanted(m_form.text(tr("Evidence"), &R::evidence)
                   .placeholder(tr("certificate, own test and its day")),
               P::permanence);
        wanted(decimalRow(m_form, tr("pH"), &R::phHundredths, 2, tr("of a cold extract: 8.20")),
               P::permanence);
        wanted(decimalRow(m_form, tr("Alkali reserve"), &R::alkaliReserveMmolKg, 3,
                          tr("mol/kg: 0.450")),
               P::permanence);
    }
    void work() {
        wanted(decimalRow(m_form, tr("Stretch across"), &R::stretchAcrossPpm, 4,
                          tr("% when pasted: 1.5")),
               P::stretch);
        wanted(decimalRow(m_form, tr("Stretch along"), &R::stretchAlongPpm, 4,
                          tr("% when pasted: 0.2")),
               P::stretch);
        m_form.choice(tr("Comes off"), &R::reversibility);
        m_form.lines(tr("How"), &R::removal).placeholder(tr("how it is usually taken off again"));
        m_form.lines(tr("Caution"), &R::caution);
    }

    RecordForm<R>& m_form;
    FormGroups& m_groups; // the form's child
};

} // namespace

void buildKindForm(RecordForm<core::Material>& form) {
    KindFormBuilder{form}.build();
    // A kind of the vocabulary brings what is known of it with its name.
    form.setAlso([](const R& before, const R& after, core::Change& change) {
        auto* written =
            change.writes.empty() ? nullptr : std::get_if<R>(&change.writes.back().record);
        if (written != nullptr) {
            *written = core::materialNamed(before, after);
        }
    });
}

} // namespace headcap::app
