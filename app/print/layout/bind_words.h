// What belongs together on a line: a number and its unit, a day and its month, "lot" and its
// number. Their spaces become no-break spaces; the length of the text stays the same.
#pragma once

#include <QString>

namespace headcap::app::print {

[[nodiscard]] QString bindWords(QString text);

} // namespace headcap::app::print
