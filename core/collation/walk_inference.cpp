#include "core/collation/walk_inference.h"

#include <algorithm>
#include <optional>
#include <variant>

#include <fmt/format.h>

#include "core/collation/leaf_ref.h"
#include "core/values/small_letters.h"

namespace headcap::core {
namespace {

std::optional<bool> saidOf(TextRunsOn runsOn) {
    return runsOn == TextRunsOn::notRead ? std::nullopt : std::optional{runsOn == TextRunsOn::yes};
}

// A mark typed as people point at it, "2A3", in the form printers set: "Aa 3".
std::string asPrinted(const std::string& mark) {
    for (const std::string& text : {mark, mark + "1"}) {
        const auto ref = parseLeafRef(text);
        const auto* leaf = ref ? std::get_if<SignedLeaf>(&*ref) : nullptr;
        if (leaf == nullptr || leaf->signature.multiplier < 2 || leaf->signature.base.size() != 1) {
            continue;
        }
        std::string letters = leaf->signature.base;
        const char small = smallLetter(letters[0]);
        letters.append(static_cast<std::size_t>(leaf->signature.multiplier) - 1, small);
        return leaf->leaf == 1 ? letters : fmt::format("{} {}", letters, leaf->leaf);
    }
    return mark;
}

// Two rows a leaf. A leaf is taken to bear print unless it is noted as blank.
std::vector<PageRow> rowsOf(const std::vector<WalkEntry>& entries,
                            const std::vector<std::string>& marks,
                            const std::vector<std::string>& names) {
    std::vector<PageRow> rows;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const WalkEntry& leaf = entries[i];
        if (!rows.empty()) {
            rows.back().runsOn = saidOf(leaf.runsOn);
        }
        rows.push_back({.number = leaf.rectoNumber,
                        .signature = marks[i],
                        .catchword = leaf.rectoCatchword,
                        .firstWords = leaf.rectoFirstWords,
                        .name = names[2 * i],
                        .isPrinted = true});
        rows.push_back({.number = leaf.versoNumber,
                        .signature = {},
                        .catchword = leaf.versoCatchword,
                        .firstWords = leaf.versoFirstWords,
                        .name = names[2 * i + 1],
                        .isPrinted = true});
    }
    return rows;
}

std::string doubtOf(const InferredGathering& gathering) {
    const std::string name = gathering.signature.empty() ? "A gathering" : gathering.signature;
    const int first = (gathering.firstRow + 1) / 2;
    const int last = (gathering.lastRow + 1) / 2;
    const std::string where = fmt::format("leaves {} to {}", first, last);
    return gathering.marked
               ? fmt::format("{} ({}): {} leaves are not usual in this book.", name, where,
                             gathering.leaves)
               : fmt::format("{} ({}): no mark was read; its place is inferred.", name, where);
}

} // namespace

InferredWalk inferFrom(const std::vector<WalkEntry>& entries) {
    std::vector<WalkEntry> leaves = entries;
    std::ranges::stable_sort(leaves, {}, &WalkEntry::position);
    std::vector<std::string> marks;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < leaves.size(); ++i) {
        marks.push_back(asPrinted(leaves[i].signature));
        names.push_back(fmt::format("leaf {} recto", i + 1));
        names.push_back(fmt::format("leaf {} verso", i + 1));
    }
    InferredWalk out;
    out.leaves = leaves.size();
    if (leaves.empty()) {
        return out;
    }
    out.diagnosis = diagnoseLeaves(rowsOf(leaves, marks, names));
    for (const InferredGathering& gathering : out.diagnosis.gatherings) {
        if (gathering.sure) {
            ++out.gatheringsSure;
        } else {
            out.doubts.push_back(doubtOf(gathering));
        }
    }
    return out;
}

} // namespace headcap::core
