// What belongs together on a line: a number and its unit, a day and its month, "lot" and its
// number. Their spaces become no-break spaces; the length of the text stays the same.
#pragma once

#include <QString>

namespace headcap::app::print {

[[nodiscard]] QString bindWords(QString text);

// Whether no line should end there: after the stroke of a unit, after the dash of a range.
[[nodiscard]] bool isBoundAcross(const QString& text, qsizetype at);

} // namespace headcap::app::print
