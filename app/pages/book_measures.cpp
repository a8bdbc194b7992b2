#include "app/pages/book_measures.h"

#include <QCoreApplication>

#include "core/materials/leaf_weight.h"
#include "core/values/length_words.h"

namespace headcap::app {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("BookMeasures", words);
}

// "190 mm", "7 1/2 in"; "8" alone is a format.
bool isSize(const std::string& text) {
    const bool hasUnit = text.find_first_of("mci\"") != std::string::npos;
    return hasUnit && core::parseLength(text).has_value();
}

} // namespace

FieldRow& addFormat(BookForm& form) {
    return form
        .bind(
            tr("Format"), new QLineEdit, false,
            [](const core::Item& item) { return fromCore(item.format); },
            [](core::Item& item, const QString& text) {
                const std::string typed = toCore(text.trimmed());
                if (isSize(typed)) {
                    return tr("That is a size. The format is how its sheets were folded: 8°, 4to.");
                }
                item.format = typed;
                return QString{};
            })
        .placeholder(QStringLiteral("8°"))
        .completed([] {
            return QString::fromUtf8("2° 4° 6° 8° 12° 16° 18° 24° 32° 64°").split(u' ') +
                   QStringList{tr("broadside"), tr("oblong 4°"), tr("oblong 8°")};
        });
}

FieldRow& addSide(BookForm& form, const QString& label,
                  std::optional<core::Length> core::Item::*side) {
    using Length = Reader<core::Length>;
    return form
        .bind(
            label, new QLineEdit, false,
            [side](const core::Item& item) {
                return item.*side ? fromCore(core::asMeasured(*(item.*side))) : QString{};
            },
            [side](core::Item& item, const QString& text) {
                const std::string typed = toCore(text.trimmed());
                const auto read = Length::read(typed, {});
                if (!typed.empty() && !read) {
                    return sentence(read.error(), Length::kReading);
                }
                item.*side = typed.empty() ? std::nullopt : std::optional{*read};
                return QString{};
            })
        .understood([](const QString& text) {
            const auto read = Length::read(toCore(text.trimmed()), {});
            return read ? fromCore(core::toText(core::toHalfMillimetre(*read))) : QString{};
        })
        .tip(example(Length::kReading));
}

FieldRow& addLeafWeight(BookForm& form) {
    return form
        .bind(
            tr("A leaf weighs"), new QLineEdit, false,
            [](const core::Item& item) {
                return item.leafMgM2 ? fromCore(core::leafWeightText(*item.leafMgM2)) : QString{};
            },
            [](core::Item& item, const QString& text) {
                if (text.trimmed().isEmpty()) {
                    item.leafMgM2 = std::nullopt;
                    return QString{};
                }
                const auto weight = core::parseLeafWeight(toCore(text.trimmed()));
                if (!weight) {
                    return tr("Write it as 120 g/m², or as 5.25 g of 250 x 175 mm.");
                }
                item.leafMgM2 = *weight;
                return QString{};
            })
        .placeholder(tr("120 g/m², or 5.25 g of 250 x 175 mm"))
        .understood([](const QString& text) {
            const auto weight = core::parseLeafWeight(toCore(text.trimmed()));
            return weight ? fromCore(core::leafWeightText(*weight)) : QString{};
        });
}

} // namespace headcap::app
