// What the values of enumerations are called on screen.
#pragma once

#include <QString>
#include <QStringList>

#include "core/record/any_record.h"

namespace headcap::app {

// What a kind of record is called inside a sentence, with its article: "the finding".
[[nodiscard]] QString words(core::RecordKind value);

[[nodiscard]] QString words(core::OwnerKind value);
[[nodiscard]] QString words(core::ItemNature value);
[[nodiscard]] QString words(core::JobState value);
[[nodiscard]] QString words(core::EarlierRecords value);
[[nodiscard]] QString words(core::HazardState value);
[[nodiscard]] QString words(core::NoticeMeans value);
[[nodiscard]] QString words(core::NoticeSubject value);
[[nodiscard]] QString words(core::Activity value);
[[nodiscard]] QString words(core::Handling value);
[[nodiscard]] QString words(core::CollationKind value);
[[nodiscard]] QString words(core::CollationDecision value);
[[nodiscard]] QString words(core::SuppliedKind value);
[[nodiscard]] QString words(core::Verdict value);
[[nodiscard]] QString words(core::DecisionKind value);
[[nodiscard]] QString words(core::DecisionMeans value);
[[nodiscard]] QString words(core::StepKind value);
[[nodiscard]] QString words(core::Reversibility value);
[[nodiscard]] QString words(core::GrainAtSpine value);
[[nodiscard]] QString words(core::MaterialClass value);
[[nodiscard]] QString words(core::Unit value);
[[nodiscard]] QString words(core::LotOrigin value);
[[nodiscard]] QString words(core::Grain value);
[[nodiscard]] QString words(core::LedgerKind value);
[[nodiscard]] QString words(core::PhotoRole value);
[[nodiscard]] QString words(core::FigureWidth value);

// All values of an enumeration, in order.
template <class Enum>
[[nodiscard]] QStringList allWords() {
    QStringList all;
    for (std::size_t i = 0; i < core::EnumNames<Enum>::kNames.size(); ++i) {
        all << words(static_cast<Enum>(i));
    }
    return all;
}

// "Thursday 6 March 2031"; "14 March", with its year where that is not this one.
[[nodiscard]] QString fullDay(core::Day day);
[[nodiscard]] QString shortDay(core::Day day, core::Day today);
// Local time, "15:40".
[[nodiscard]] QString clockTime(core::Instant instant);

// "1 job", "3 jobs": both with %1 for the number.
[[nodiscard]] inline QString counted(int n, const QString& one, const QString& many) {
    return (n == 1 ? one : many).arg(n);
}

// "full calf · resewn": those that say something.
[[nodiscard]] inline QString dotted(QStringList parts) {
    parts.removeAll({});
    return parts.join(QStringLiteral(" · "));
}

[[nodiscard]] inline QString fromCore(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
[[nodiscard]] inline std::string toCore(const QString& text) {
    return text.toStdString();
}

} // namespace headcap::app
