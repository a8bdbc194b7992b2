#include "app/session/words.h"

#include <array>

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include "app/session/dates.h"

namespace headcap::app {
namespace {

template <class Enum>
using Words = std::array<const char*, core::EnumNames<Enum>::kNames.size()>;

template <class Enum>
QString said(const Words<Enum>& all, Enum value) {
    return QCoreApplication::translate("words", all[static_cast<std::size_t>(value)]);
}

} // namespace

QString words(core::RecordKind value) {
    static constexpr Words<core::RecordKind> kWords{
        QT_TRANSLATE_NOOP("words", "the workshop"),
        QT_TRANSLATE_NOOP("words", "the person"),
        QT_TRANSLATE_NOOP("words", "the owner"),
        QT_TRANSLATE_NOOP("words", "the book"),
        QT_TRANSLATE_NOOP("words", "the work"),
        QT_TRANSLATE_NOOP("words", "the job"),
        QT_TRANSLATE_NOOP("words", "the change of state"),
        QT_TRANSLATE_NOOP("words", "the piece"),
        QT_TRANSLATE_NOOP("words", "the move"),
        QT_TRANSLATE_NOOP("words", "the hazard"),
        QT_TRANSLATE_NOOP("words", "the notice"),
        QT_TRANSLATE_NOOP("words", "the follow-up"),
        QT_TRANSLATE_NOOP("words", "the attachment"),
        QT_TRANSLATE_NOOP("words", "the examination"),
        QT_TRANSLATE_NOOP("words", "the finding"),
        QT_TRANSLATE_NOOP("words", "the test"),
        QT_TRANSLATE_NOOP("words", "the collation"),
        QT_TRANSLATE_NOOP("words", "the collation finding"),
        QT_TRANSLATE_NOOP("words", "the facsimile"),
        QT_TRANSLATE_NOOP("words", "the proposal"),
        QT_TRANSLATE_NOOP("words", "the option"),
        QT_TRANSLATE_NOOP("words", "the line of the proposal"),
        QT_TRANSLATE_NOOP("words", "the decision"),
        QT_TRANSLATE_NOOP("words", "the step"),
        QT_TRANSLATE_NOOP("words", "the use of a material"),
        QT_TRANSLATE_NOOP("words", "the material"),
        QT_TRANSLATE_NOOP("words", "the lot"),
        QT_TRANSLATE_NOOP("words", "the part of the mix"),
        QT_TRANSLATE_NOOP("words", "the ledger entry"),
        QT_TRANSLATE_NOOP("words", "the photograph"),
        QT_TRANSLATE_NOOP("words", "the issued report"),
        QT_TRANSLATE_NOOP("words", "the walk through the book"),
        QT_TRANSLATE_NOOP("words", "the look at the leaf"),
        QT_TRANSLATE_NOOP("words", "the plate called for"),
        QT_TRANSLATE_NOOP("words", "the line of the leaf sheet"),
        QT_TRANSLATE_NOOP("words", "the cutting"),
        QT_TRANSLATE_NOOP("words", "the part of the cutting"),
        QT_TRANSLATE_NOOP("words", "the recipe"),
        QT_TRANSLATE_NOOP("words", "the part of the recipe"),
        QT_TRANSLATE_NOOP("words", "the house value"),
        QT_TRANSLATE_NOOP("words", "the technique of the house"),
        QT_TRANSLATE_NOOP("words", "the clock"),
        QT_TRANSLATE_NOOP("words", "the setting time"),
        QT_TRANSLATE_NOOP("words", "the check of the step"),
        QT_TRANSLATE_NOOP("words", "the row of the release list"),
        QT_TRANSLATE_NOOP("words", "the explanation"),
        QT_TRANSLATE_NOOP("words", "the return"),
    };
    return said(kWords, value);
}

QString words(core::OwnerKind value) {
    static constexpr Words<core::OwnerKind> kWords{QT_TRANSLATE_NOOP("words", "private owner"),
                                                   QT_TRANSLATE_NOOP("words", "institution"),
                                                   QT_TRANSLATE_NOOP("words", "dealer")};
    return said(kWords, value);
}

QString words(core::ItemNature value) {
    static constexpr Words<core::ItemNature> kWords{QT_TRANSLATE_NOOP("words", "one volume"),
                                                    QT_TRANSLATE_NOOP("words", "a set of volumes"),
                                                    QT_TRANSLATE_NOOP("words", "a batch")};
    return said(kWords, value);
}

QString words(core::JobState value) {
    static constexpr Words<core::JobState> kWords{
        QT_TRANSLATE_NOOP("words", "received"),     QT_TRANSLATE_NOOP("words", "surveyed"),
        QT_TRANSLATE_NOOP("words", "proposed"),     QT_TRANSLATE_NOOP("words", "approved"),
        QT_TRANSLATE_NOOP("words", "at the bench"), QT_TRANSLATE_NOOP("words", "passed"),
        QT_TRANSLATE_NOOP("words", "reported"),     QT_TRANSLATE_NOOP("words", "returned"),
        QT_TRANSLATE_NOOP("words", "on hold"),      QT_TRANSLATE_NOOP("words", "declined"),
        QT_TRANSLATE_NOOP("words", "withdrawn")};
    return said(kWords, value);
}

QString words(core::EarlierRecords value) {
    static constexpr Words<core::EarlierRecords> kWords{
        QT_TRANSLATE_NOOP("words", "not asked for yet"), QT_TRANSLATE_NOOP("words", "asked for"),
        QT_TRANSLATE_NOOP("words", "received"), QT_TRANSLATE_NOOP("words", "there are none")};
    return said(kWords, value);
}

QString words(core::HazardState value) {
    static constexpr Words<core::HazardState> kWords{
        QT_TRANSLATE_NOOP("words", "not tested"), QT_TRANSLATE_NOOP("words", "suspected"),
        QT_TRANSLATE_NOOP("words", "confirmed"), QT_TRANSLATE_NOOP("words", "cleared")};
    return said(kWords, value);
}

QString words(core::NoticeMeans value) {
    static constexpr Words<core::NoticeMeans> kWords{
        QT_TRANSLATE_NOOP("words", "by letter"), QT_TRANSLATE_NOOP("words", "by email"),
        QT_TRANSLATE_NOOP("words", "by telephone"), QT_TRANSLATE_NOOP("words", "in person")};
    return said(kWords, value);
}

QString words(core::NoticeSubject value) {
    static constexpr Words<core::NoticeSubject> kWords{
        QT_TRANSLATE_NOOP("words", "receipt"),       QT_TRANSLATE_NOOP("words", "collation"),
        QT_TRANSLATE_NOOP("words", "condition"),     QT_TRANSLATE_NOOP("words", "hazard"),
        QT_TRANSLATE_NOOP("words", "proposal"),      QT_TRANSLATE_NOOP("words", "change of plan"),
        QT_TRANSLATE_NOOP("words", "incident"),      QT_TRANSLATE_NOOP("words", "ready for return"),
        QT_TRANSLATE_NOOP("words", "something else")};
    return said(kWords, value);
}

QString words(core::Activity value) {
    static constexpr Words<core::Activity> kWords{QT_TRANSLATE_NOOP("words", "not known"),
                                                  QT_TRANSLATE_NOOP("words", "stable"),
                                                  QT_TRANSLATE_NOOP("words", "active")};
    return said(kWords, value);
}

QString words(core::Handling value) {
    static constexpr Words<core::Handling> kWords{QT_TRANSLATE_NOOP("words", "may be handled"),
                                                  QT_TRANSLATE_NOOP("words", "with care"),
                                                  QT_TRANSLATE_NOOP("words", "not to be handled")};
    return said(kWords, value);
}

QString words(core::CollationKind value) {
    static constexpr Words<core::CollationKind> kWords{
        QT_TRANSLATE_NOOP("words", "lacking"),
        QT_TRANSLATE_NOOP("words", "loose"),
        QT_TRANSLATE_NOOP("words", "detached"),
        QT_TRANSLATE_NOOP("words", "misbound"),
        QT_TRANSLATE_NOOP("words", "duplicated"),
        QT_TRANSLATE_NOOP("words", "cancel"),
        QT_TRANSLATE_NOOP("words", "inserted"),
        QT_TRANSLATE_NOOP("words", "supplied"),
        QT_TRANSLATE_NOOP("words", "facsimile"),
        QT_TRANSLATE_NOOP("words", "misnumbered"),
        QT_TRANSLATE_NOOP("words", "missigned"),
        QT_TRANSLATE_NOOP("words", "torn with loss"),
        QT_TRANSLATE_NOOP("words", "torn"),
        QT_TRANSLATE_NOOP("words", "trimmed into text"),
        QT_TRANSLATE_NOOP("words", "blank lacking"),
        QT_TRANSLATE_NOOP("words", "folded plate"),
        QT_TRANSLATE_NOOP("words", "something else")};
    return said(kWords, value);
}

QString words(core::CollationDecision value) {
    static constexpr Words<core::CollationDecision> kWords{
        QT_TRANSLATE_NOOP("words", "undecided"),      QT_TRANSLATE_NOOP("words", "left as it is"),
        QT_TRANSLATE_NOOP("words", "to be supplied"), QT_TRANSLATE_NOOP("words", "sought"),
        QT_TRANSLATE_NOOP("words", "made good"),      QT_TRANSLATE_NOOP("words", "not needed")};
    return said(kWords, value);
}

QString words(core::SuppliedKind value) {
    static constexpr Words<core::SuppliedKind> kWords{QT_TRANSLATE_NOOP("words", "facsimile"),
                                                      QT_TRANSLATE_NOOP("words", "original leaf")};
    return said(kWords, value);
}

QString words(core::Verdict value) {
    static constexpr Words<core::Verdict> kWords{
        QT_TRANSLATE_NOOP("words", "not established"), QT_TRANSLATE_NOOP("words", "same setting"),
        QT_TRANSLATE_NOOP("words", "pages agree, setting not established"),
        QT_TRANSLATE_NOOP("words", "contradicted")};
    return said(kWords, value);
}

QString words(core::DecisionKind value) {
    static constexpr Words<core::DecisionKind> kWords{
        QT_TRANSLATE_NOOP("words", "approved"), QT_TRANSLATE_NOOP("words", "approved with limits"),
        QT_TRANSLATE_NOOP("words", "declined"), QT_TRANSLATE_NOOP("words", "asked for more")};
    return said(kWords, value);
}

QString words(core::DecisionMeans value) {
    static constexpr Words<core::DecisionMeans> kWords{
        QT_TRANSLATE_NOOP("words", "by signature"), QT_TRANSLATE_NOOP("words", "by letter"),
        QT_TRANSLATE_NOOP("words", "by email"), QT_TRANSLATE_NOOP("words", "spoken")};
    return said(kWords, value);
}

QString words(core::StepKind value) {
    static constexpr Words<core::StepKind> kWords{
        QT_TRANSLATE_NOOP("words", "treatment"), QT_TRANSLATE_NOOP("words", "examination"),
        QT_TRANSLATE_NOOP("words", "removal"), QT_TRANSLATE_NOOP("words", "uncovering"),
        QT_TRANSLATE_NOOP("words", "incident")};
    return said(kWords, value);
}

QString words(core::Reversibility value) {
    static constexpr Words<core::Reversibility> kWords{
        QT_TRANSLATE_NOOP("words", "not known"), QT_TRANSLATE_NOOP("words", "can be undone"),
        QT_TRANSLATE_NOOP("words", "can be undone with care"),
        QT_TRANSLATE_NOOP("words", "can't be undone")};
    return said(kWords, value);
}

QString words(core::GrainAtSpine value) {
    static constexpr Words<core::GrainAtSpine> kWords{
        QT_TRANSLATE_NOOP("words", "not said"), QT_TRANSLATE_NOOP("words", "along the spine"),
        QT_TRANSLATE_NOOP("words", "across the spine"), QT_TRANSLATE_NOOP("words", "has none")};
    return said(kWords, value);
}

QString words(core::MaterialClass value) {
    static constexpr Words<core::MaterialClass> kWords{
        QT_TRANSLATE_NOOP("words", "paper"),
        QT_TRANSLATE_NOOP("words", "tissue"),
        QT_TRANSLATE_NOOP("words", "board"),
        QT_TRANSLATE_NOOP("words", "leather"),
        QT_TRANSLATE_NOOP("words", "vellum"),
        QT_TRANSLATE_NOOP("words", "cloth"),
        QT_TRANSLATE_NOOP("words", "thread"),
        QT_TRANSLATE_NOOP("words", "dry adhesive"),
        QT_TRANSLATE_NOOP("words", "prepared adhesive"),
        QT_TRANSLATE_NOOP("words", "solvent"),
        QT_TRANSLATE_NOOP("words", "consolidant"),
        QT_TRANSLATE_NOOP("words", "ink"),
        QT_TRANSLATE_NOOP("words", "consumable")};
    return said(kWords, value);
}

QString words(core::Unit value) {
    static constexpr Words<core::Unit> kWords{
        QT_TRANSLATE_NOOP("words", "grams"),  QT_TRANSLATE_NOOP("words", "millilitres"),
        QT_TRANSLATE_NOOP("words", "mm²"),    QT_TRANSLATE_NOOP("words", "metres"),
        QT_TRANSLATE_NOOP("words", "sheets"), QT_TRANSLATE_NOOP("words", "pieces")};
    return said(kWords, value);
}

QString words(core::LotOrigin value) {
    static constexpr Words<core::LotOrigin> kWords{
        QT_TRANSLATE_NOOP("words", "bought"),
        QT_TRANSLATE_NOOP("words", "saved from another binding"),
        QT_TRANSLATE_NOOP("words", "mixed here"), QT_TRANSLATE_NOOP("words", "offcut")};
    return said(kWords, value);
}

QString words(core::Grain value) {
    static constexpr Words<core::Grain> kWords{QT_TRANSLATE_NOOP("words", "none"),
                                               QT_TRANSLATE_NOOP("words", "along the height"),
                                               QT_TRANSLATE_NOOP("words", "along the width")};
    return said(kWords, value);
}

QString words(core::LedgerKind value) {
    static constexpr Words<core::LedgerKind> kWords{
        QT_TRANSLATE_NOOP("words", "received"),      QT_TRANSLATE_NOOP("words", "saved"),
        QT_TRANSLATE_NOOP("words", "mixed"),         QT_TRANSLATE_NOOP("words", "taken for a mix"),
        QT_TRANSLATE_NOOP("words", "used"),          QT_TRANSLATE_NOOP("words", "cut"),
        QT_TRANSLATE_NOOP("words", "thrown away"),   QT_TRANSLATE_NOOP("words", "counted"),
        QT_TRANSLATE_NOOP("words", "contrary entry")};
    return said(kWords, value);
}

QString words(core::PhotoRole value) {
    static constexpr Words<core::PhotoRole> kWords{
        QT_TRANSLATE_NOOP("words", "before"), QT_TRANSLATE_NOOP("words", "during"),
        QT_TRANSLATE_NOOP("words", "after"), QT_TRANSLATE_NOOP("words", "detail")};
    return said(kWords, value);
}

QString words(core::FigureWidth value) {
    static constexpr Words<core::FigureWidth> kWords{QT_TRANSLATE_NOOP("words", "half the page"),
                                                     QT_TRANSLATE_NOOP("words", "the whole page")};
    return said(kWords, value);
}

QString fullDay(core::Day day) {
    return QLocale{QLocale::English}.toString(dateOf(day), QStringLiteral("dddd d MMMM yyyy"));
}

QString shortDay(core::Day day, core::Day today) {
    const QString format =
        day.year() == today.year() ? QStringLiteral("d MMMM") : QStringLiteral("d MMMM yyyy");
    return QLocale{QLocale::English}.toString(dateOf(day), format);
}

QString clockTime(core::Instant instant) {
    return QDateTime::fromMSecsSinceEpoch(instant.time_since_epoch().count())
        .toString(QStringLiteral("HH:mm"));
}

} // namespace headcap::app
