// An invented report with every kind of block in it, and the signs of the trade.
#pragma once

#include <string>
#include <vector>

#include "core/report/document.h"

namespace headcap::app::print::test {

[[nodiscard]] core::Document sampleDocument(bool isDraft = true);

// A record that a block of a test's own document can name.
[[nodiscard]] core::RecordRef anyRecord();
[[nodiscard]] std::vector<core::Run> plainRun(const std::string& text);
[[nodiscard]] core::Document documentOf(std::vector<core::Block> blocks);
[[nodiscard]] core::Figure figureOf(int number, core::FigureWidth width, std::int64_t widthPx,
                                    std::int64_t heightPx);

// Every text of a document that a page must show, in order.
[[nodiscard]] std::vector<std::string> textsOf(const core::Document& document);

} // namespace headcap::app::print::test
