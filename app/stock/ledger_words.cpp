#include "app/stock/ledger_words.h"

#include <QCoreApplication>

#include "app/session/words.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("ledger", text);
}

} // namespace

tl::expected<core::Amount, core::TextError> amountTyped(const QString& text,
                                                        const core::Material* kind) {
    const std::string typed = toCore(text.trimmed());
    auto amount = core::parseAmount(typed);
    if (!amount && amount.error().problem == core::TextProblem::unitMissing && kind != nullptr) {
        const auto unit = static_cast<std::size_t>(kind->unit);
        amount =
            core::parseAmount(typed + ' ' + std::string{core::EnumNames<core::Unit>::kNames[unit]});
    }
    return amount;
}

QString ledgerSentence(core::LedgerProblem problem, const core::Material* kind) {
    using P = core::LedgerProblem;
    switch (problem) {
    case P::numberMissing:
        return tr("The lot has no number yet; give it the one on its label first.");
    case P::materialUnknown:
        return tr("The lot's kind is not known; choose one first.");
    case P::lotUnknown:
        return tr("A lot of the mix is not on the shelf; look at its number.");
    case P::amountNotAbove:
        return tr("An amount above nothing is needed.");
    case P::unitDiffers:
        return kind == nullptr ? tr("A lot is counted in one unit all its life.")
                               : tr("%1 is counted in %2; write the amount so.")
                                     .arg(fromCore(kind->name), words(kind->unit));
    case P::sourceMissing:
        return tr("Say what it was mixed or saved from first.");
    case P::reasonMissing:
        return tr("Say why it was thrown away.");
    case P::balanceUnknown:
        return tr("The entries of this lot do not add up; headcap verify says more.");
    }
    return {};
}

} // namespace headcap::app
