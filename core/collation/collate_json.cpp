#include <nlohmann/json.hpp>

#include "core/collation/collate.h"

namespace headcap::core {
namespace {

using Json = nlohmann::ordered_json;

template <class T>
Json orNull(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json textOrNull(const std::string& text) {
    return text.empty() ? Json(nullptr) : Json(text);
}

const char* groundText(Ground ground) {
    switch (ground) {
    case Ground::extent:
        return "extent";
    case Ground::request:
        return "request";
    case Ground::prose:
        return "prose set aside";
    case Ground::formula:
        break;
    }
    return "formula";
}

std::string leafName(const Gathering& gathering, int leaf) {
    SignedLeaf ref{gathering.signature, leaf};
    ref.signature.inferred = false;
    return toText(LeafRef(ref));
}

// The leaves taken out and those this copy lacks, in order.
Json lacking(const Gathering& gathering) {
    std::vector<int> leaves = gathering.cancelled;
    leaves.insert(leaves.end(), gathering.lacking.begin(), gathering.lacking.end());
    std::sort(leaves.begin(), leaves.end());
    Json out = Json::array();
    for (const int leaf : leaves) {
        out.push_back(leafName(gathering, leaf));
    }
    return out;
}

Json gatherings(const CollateAnswer& answer) {
    const std::vector<Gathering>& all = answer.makeUp.gatherings;
    std::vector<Json> added(all.size(), Json::array());
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const AddedLeaves& leaves : all[i].added) {
            for (int n = 1; n <= leaves.count; ++n) {
                SignedLeaf ref{all[i].signature, std::max(leaves.after, 1), n};
                ref.signature.inferred = false;
                added[i].push_back(toText(LeafRef(ref)));
            }
        }
        if (all[i].inside) {
            added[all[i].inside->host].push_back(toText(all[i].signature));
        }
    }
    Json out = Json::array();
    for (std::size_t i = 0; i < all.size(); ++i) {
        out.push_back({{"signature", toText(all[i].signature)},
                       {"leaves", orNull(idealLeaves(all[i]))},
                       {"inferred", all[i].signature.inferred},
                       {"lacking", lacking(all[i])},
                       {"added", std::move(added[i])}});
    }
    return out;
}

Json leaves(const CollateAnswer& answer) {
    Json out = Json::array();
    for (std::size_t i = 0; i < answer.leaves.size(); ++i) {
        const Leaf& leaf = answer.leaves[i];
        const LeafNumbers& numbers = answer.numbers[i];
        const auto number = [](const std::optional<LaidNumber>& laid) {
            return laid ? Json(toText(*laid)) : Json(nullptr);
        };
        out.push_back({{"index", i + 1},
                       {"ref", toText(LeafRef(refOf(answer.makeUp, leaf)))},
                       {"gathering", toText(answer.makeUp.gatherings[leaf.gathering].signature)},
                       {"position", leaf.position},
                       {"conjugate", leaf.conjugate ? Json(*leaf.conjugate + 1) : Json(nullptr)},
                       {"recto_number", number(numbers.recto)},
                       {"verso_number", number(numbers.verso)}});
    }
    return out;
}

Json extent(const CollateAnswer& answer) {
    if (!answer.extent) {
        return nullptr;
    }
    const ExtentAnswer& one = *answer.extent;
    return {{"statement", one.statement},
            {"leaf_total", orNull(one.leafTotal)},
            {"page_total", orNull(one.pageTotal)},
            {"agrees", one.agrees},
            {"assumed_from_extent", one.assumedFromExtent},
            {"difference", orNull(one.difference)},
            {"explanation", textOrNull(one.explanation)}};
}

// Bytes to characters.
std::size_t characters(std::string_view text, std::size_t bytes) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < bytes && i < text.size(); ++i) {
        count += (static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80U ? 1 : 0;
    }
    return count;
}

} // namespace

nlohmann::ordered_json toJson(const CollateAnswer& answer, const CollateRequest& request) {
    Json assumptions = Json::array();
    for (const Assumption& one : answer.assumptions) {
        assumptions.push_back({{"what", one.what}, {"from", groundText(one.from)}});
    }
    Json problems = Json::array();
    for (const ReadingProblem& one : answer.problems) {
        const std::string& text =
            one.inExtent && answer.extent ? answer.extent->statement : request.formula;
        problems.push_back({{"at", characters(text, one.at)},
                            {"message", (one.inExtent ? "in the extent: " : "") + one.message}});
    }
    const auto pages = [](std::optional<int> total) {
        return total ? std::optional(2 * *total) : std::nullopt;
    };
    return {{"formula", answer.formula},
            {"format", textOrNull(answer.format)},
            {"leaf_total", orNull(answer.leafTotal)},
            {"present_total", orNull(answer.presentTotal)},
            {"page_total", orNull(pages(answer.leafTotal))},
            {"gatherings", gatherings(answer)},
            {"leaves", leaves(answer)},
            {"assumptions", std::move(assumptions)},
            {"extent", extent(answer)},
            {"problems", std::move(problems)}};
}

} // namespace headcap::core
