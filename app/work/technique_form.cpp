#include "app/work/technique_form.h"

#include <QCoreApplication>

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("technique", text);
}

// Empty where it is not known, or nothing sets.
FieldRow& minutesIfAny(TechniqueForm& form, const QString& label,
                       core::Minutes core::HouseTechnique::*member) {
    using R = core::HouseTechnique;
    using Minutes = Reader<core::Minutes>;
    return form
        .bind(
            label, new QLineEdit, false,
            [member](const R& r) {
                return r.*member == core::Minutes{0} ? QString{} : printed(r.*member);
            },
            [member](R& r, const QString& text) {
                const std::string typed = toCore(text.trimmed());
                const auto read = Minutes::read(typed, {});
                if (!typed.empty() && !read) {
                    return sentence(read.error(), Minutes::kReading);
                }
                r.*member = typed.empty() ? core::Minutes{0} : *read;
                return QString{};
            })
        .understood([](const QString& text) {
            const auto read = Minutes::read(toCore(text.trimmed()), {});
            return read ? printed(*read) : QString{};
        })
        .tip(example(Minutes::kReading));
}

void addWhat(TechniqueForm& form) {
    using R = core::HouseTechnique;
    form.text(tr("Name"), &R::name).placeholder(tr("as the proposal and the report call it"));
    form.choice(tr("Kind"), &R::kind)
        .tip(tr("What a step of it is logged as: a treatment, a removal, an examination …"));
    form.lines(tr("Said as"), &R::said)
        .placeholder(tr("as it is written in the bench line, one way a line: tipped in"))
        .tip(tr("The words by which the bench line knows it, one way a line"));
    form.text(tr("Done to"), &R::doneTo).placeholder(tr("leaves, boards, spine"));
    form.lines(tr("Usually with"), &R::materials).placeholder(tr("materials, one a line"));
    minutesIfAny(form, tr("Usually takes"), &R::minutes)
        .placeholder(tr("12 min; empty: not known"));
    form.text(tr("That is for"), &R::minutesBasis)
        .placeholder(tr("a leaf, a board, a book"))
        .tip(tr("What the usual time is the time of"));
    minutesIfAny(form, tr("Sets"), &R::sets)
        .placeholder(tr("setting, drying or pressing: 2 h; empty: nothing sets"));
}

void addCare(TechniqueForm& form) {
    using R = core::HouseTechnique;
    form.choice(tr("Undone"), &R::reversibility);
    form.lines(tr("How"), &R::undoing).placeholder(tr("how it is taken off or undone"));
    form.lines(tr("Done before"), &R::before)
        .placeholder(tr("what must have been done, one a line: the ink tested"))
        .tip(tr("Said as “First: …” where the work begins, and asked for by the audit"));
    form.lines(tr("Checks"), &R::checks)
        .placeholder(tr("what is looked at when it is done, one a line"));
    form.lines(tr("Cautions"), &R::cautions).placeholder(tr("one a line"));
    form.check(tr("The record"), tr("asks for the material: something is put into the book"),
               &R::adds);
    form.check(tr("Moisture"), tr("reaches the leaves"), &R::wets);
    form.check(tr("The inks"), tr("are tested before"), &R::testsMedia);
    form.check(tr("The book"), tr("is taken down: collated first, and the owner told"),
               &R::disbinds);
    form.lines(tr("Advice"), &R::advice)
        .placeholder(tr("for the care of a book so treated; the report gives it"));
    form.lines(tr("Source"), &R::source).placeholder(tr("where it is from, one a line"));
    form.check(tr("Offered"), tr("no longer: what was done with it keeps its name"), &R::retired);
}

} // namespace

TechniqueForm* makeTechniqueForm(Session& session) {
    auto* form = new TechniqueForm(session, tr("Technique"));
    addWhat(*form);
    addCare(*form);
    form->setDescription([](const core::HouseTechnique& one) { return fromCore(one.name); });
    return form;
}

} // namespace headcap::app
