// What a document holds, made into slabs: each function adds one kind of block to the flow.
#pragma once

#include "app/print/layout/paginate.h"
#include "core/report/document.h"

namespace headcap::app::print {

// In the text column, beside a heading.
void addBlock(Flow& flow, const core::Paragraph& paragraph, double gap);
void addBlock(Flow& flow, const core::Statement& statement, double gap);
void addBlock(Flow& flow, const core::Caution& caution, double gap);
void addBlock(Flow& flow, const core::Facts& facts, double gap);
void addBlock(Flow& flow, const core::List& list, double gap);

// Across the whole block, below whatever hangs in the side column.
void addBlock(Flow& flow, const core::Table& table, double gap);
void addBlock(Flow& flow, const core::Figures& figures, double gap);

// In the text column above text, at the left of the block above what goes across.
void addSubheading(Flow& flow, const core::Subheading& subheading, double gap, bool aboveAcross);

// A heading and all below it.
void addSection(Flow& flow, const core::Section& section);

// How large a photograph is printed: as wide as its place, no higher than a page bears, and that
// share of it.
[[nodiscard]] QSizeF printedSize(const core::Figure& figure, double share = 1);

} // namespace headcap::app::print
