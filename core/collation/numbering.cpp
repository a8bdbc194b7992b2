#include "core/collation/numbering.h"

namespace headcap::core {
namespace {

// Sides in the order of the book, two a leaf.
class Sides {
public:
    Sides(const std::vector<Leaf>& leaves, bool skipBlanks)
        : m_leaves(leaves), m_skipBlanks(skipBlanks), m_out(leaves.size()) {
        passBlanks();
    }

    void page(std::optional<LaidNumber> number) {
        if (m_leaf >= m_leaves.size()) {
            return;
        }
        (m_verso ? m_out[m_leaf].verso : m_out[m_leaf].recto) = number;
        if (m_verso) {
            leaf();
        } else {
            m_verso = true;
        }
    }

    void folio(std::optional<LaidNumber> number) {
        wholeLeaf();
        if (m_leaf < m_leaves.size()) {
            m_out[m_leaf].recto = number;
            leaf();
        }
    }

    void wholeLeaf() {
        if (m_verso) {
            leaf();
        }
    }

    std::vector<LeafNumbers> take() { return std::move(m_out); }

private:
    void leaf() {
        m_verso = false;
        ++m_leaf;
        passBlanks();
    }

    void passBlanks() {
        while (m_skipBlanks && m_leaf < m_leaves.size() && m_leaves[m_leaf].blank) {
            ++m_leaf;
        }
    }

    const std::vector<Leaf>& m_leaves;
    bool m_skipBlanks;
    std::vector<LeafNumbers> m_out;
    std::size_t m_leaf = 0;
    bool m_verso = false;
};

} // namespace

std::vector<LeafNumbers> layNumbers(const std::vector<Leaf>& leaves, const Extent& extent,
                                    bool skipBlanks) {
    Sides sides(leaves, skipBlanks);
    int part = 0;
    for (const ExtentRun& run : extent.runs) {
        if (run.part != part) {
            sides.wholeLeaf(); // a volume begins on a recto
            part = run.part;
        }
        if (run.unit == ExtentUnit::columns) {
            continue;
        }
        const bool folios = run.unit == ExtentUnit::leaves || run.foliated;
        const int places =
            run.foliated && run.unit == ExtentUnit::pages ? run.count / 2 : run.count;
        for (int i = 0; i < places; ++i) {
            std::optional<LaidNumber> number;
            if (run.first) {
                number = LaidNumber{*run.first, folios, run.inferred};
                number->number.value += i;
            }
            folios ? sides.folio(number) : sides.page(number);
        }
    }
    return sides.take();
}

std::string toText(const LaidNumber& number) {
    const std::string text = toText(number.number);
    return number.inferred ? "[" + text + "]" : text;
}

} // namespace headcap::core
