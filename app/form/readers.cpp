#include "app/form/readers.h"

#include "core/values/decimal.h"

namespace headcap::app {

tl::expected<std::int64_t, core::TextError> Reader<std::int64_t>::read(std::string_view text,
                                                                       const ReadingContext&) {
    const auto number = core::parseDecimal(text, 0);
    if (number && *number < 0) {
        return tl::unexpected(core::TextError{core::TextProblem::outOfRange, 0});
    }
    return number;
}

} // namespace headcap::app
