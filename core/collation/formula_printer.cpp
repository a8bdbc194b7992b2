#include <algorithm>
#include <string>
#include <vector>

#include "core/collation/formula.h"

namespace headcap::core {
namespace {

constexpr const char* kTo = "–";
constexpr const char* kOut = "−";

class Printer {
public:
    explicit Printer(const MakeUp& makeUp) : m_makeUp(makeUp), m_guests(makeUp.gatherings.size()) {
        for (std::size_t i = 0; i < makeUp.gatherings.size(); ++i) {
            if (const auto& inside = makeUp.gatherings[i].inside) {
                m_guests[inside->host].push_back(i);
            } else {
                m_top.push_back(i);
            }
        }
    }

    std::string print() const {
        std::string out;
        for (std::size_t i = 0; i < m_top.size();) {
            const bool newPart = i > 0 && at(i).part != at(i - 1).part;
            out += newPart ? "; " : i > 0 ? " " : "";
            const std::size_t length = runLength(i);
            out += length > 1 ? run(i, length) : gathering(m_top[i]);
            i += length;
        }
        return out + (m_makeUp.continues ? "+" : "");
    }

private:
    const Gathering& at(std::size_t i) const { return m_makeUp.gatherings[m_top[i]]; }

    bool isPlain(std::size_t i) const {
        const Gathering& one = at(i);
        return one.only.empty() && !one.singletons && one.cancelled.empty() &&
               one.lacking.empty() && one.replaced.empty() && one.blank.empty() &&
               one.added.empty() && m_guests[m_top[i]].empty() && !one.signature.quoted &&
               !one.signature.parenthesised && one.signature.kind != SignatureKind::unsignedLeaves;
    }

    bool follows(std::size_t first, std::size_t i) const {
        const Signature& model = at(first).signature;
        const Alphabet alphabet = alphabetOf(model);
        const std::optional<int> start = ordinal(model, alphabet);
        if (!start || !isPlain(i) || at(i).part != at(first).part ||
            at(i).signature.inferred != model.inferred) {
            return false;
        }
        const std::optional<Signature> due =
            signatureAt(model, *start + static_cast<int>(i - first), alphabet);
        return due && sameMark(*due, at(i).signature);
    }

    // How many gatherings from `first` on are one range: the same count throughout, or counts in
    // turn that come round at least twice.
    std::size_t runLength(std::size_t first) const {
        if (!isPlain(first)) {
            return 1;
        }
        std::size_t end = first + 1;
        while (end < m_top.size() && follows(first, end)) {
            ++end;
        }
        std::size_t same = 1;
        while (first + same < end && at(first + same).called == at(first).called) {
            ++same;
        }
        for (std::size_t period = 2; same == 1 && period <= 3; ++period) {
            std::size_t length = period;
            while (first + length < end &&
                   at(first + length).called == at(first + length - period).called) {
                ++length;
            }
            bool known = true;
            for (std::size_t i = first; i < first + period && i < end; ++i) {
                known = known && at(i).called > 0;
            }
            if (known && length >= 2 * period && first + length <= end) {
                return length;
            }
        }
        return same;
    }

    std::string run(std::size_t first, std::size_t length) const {
        const Gathering& from = at(first);
        Signature last = at(first + length - 1).signature;
        Signature start = from.signature;
        const bool inferred = start.inferred;
        start.inferred = last.inferred = false;
        last.prefix.clear();
        std::string counts = count(from.called);
        for (std::size_t i = 1; i < 3 && from.called != at(first + 1).called; ++i) {
            const bool round = i == 2 && at(first + 2).called == from.called &&
                               at(first + 3).called == at(first + 1).called &&
                               alternates(first, length);
            if (round) {
                break;
            }
            counts += "/" + count(at(first + i).called);
        }
        const std::string range = toText(start) + kTo + toText(last);
        if (!inferred) {
            return range + counts;
        }
        const bool inside = start.kind == SignatureKind::number || start.base == "x";
        return inside ? "[" + range + counts + "]" : "[" + range + "]" + counts;
    }

    bool alternates(std::size_t first, std::size_t length) const {
        for (std::size_t i = 2; i < length; ++i) {
            if (at(first + i).called != at(first + i - 2).called) {
                return false;
            }
        }
        return true;
    }

    static std::string count(int called) {
        return called > 0 ? superscript(called) : std::string();
    }

    static std::string leaves(const Gathering& one) {
        std::vector<int> numbers = one.only;
        for (int leaf = 1; one.only.empty() && leaf <= one.called; ++leaf) {
            numbers.push_back(leaf);
        }
        const bool unbroken =
            numbers.back() - numbers.front() + 1 == static_cast<int>(numbers.size()) &&
            numbers.size() > 2;
        if (one.only.empty() && unbroken && one.singletons) {
            return subscript(1) + "₋" + subscript(one.called);
        }
        std::string out;
        for (std::size_t i = 0; i < numbers.size(); ++i) {
            if (one.singletons && unbroken && i == 1) {
                return out + "₋" + subscript(numbers.back());
            }
            out += (i == 0 ? "" : one.singletons ? "," : ".") + subscript(numbers[i]);
        }
        return out;
    }

    std::string gathering(std::size_t index) const {
        const Gathering& one = m_makeUp.gatherings[index];
        std::string out = toBracketedText(one.signature);
        const bool bare = one.signature.inferred && out == toText(one.signature);
        const bool inside = one.signature.kind == SignatureKind::number && one.called > 0 &&
                            one.only.empty() && !one.singletons && out.ends_with(']');
        if (!one.only.empty() || (one.singletons && one.called > 1)) {
            out += leaves(one);
        } else if (one.called == 1 && one.signature.kind == SignatureKind::unsignedLeaves) {
            out += "1";
        } else if (inside) { // "[7⁸]", as DCRMR writes wholly unsigned books
            out.insert(out.size() - 1, count(one.called));
        } else {
            out += count(one.called);
        }
        if (bare) { // its count inside the bracket: "[x⁴]"
            out = "[" + out + (one.called == 0 ? " ]" : "]");
        }
        const std::string changed = changes(index);
        return changed.empty() ? out : out + "(" + changed + ")";
    }

    static std::string leaf(const Gathering& one, int number) {
        SignedLeaf ref{one.signature, number};
        ref.signature.inferred = ref.signature.quoted = false;
        return toText(LeafRef(ref));
    }

    // "A1,4": the mark once; under a number its leaves stand below the line.
    static std::string leafList(const Gathering& one, const std::vector<int>& numbers) {
        std::string out;
        for (const int number : numbers) {
            const bool again = !out.empty() && one.signature.kind != SignatureKind::number;
            out += (out.empty() ? "" : ",") + (again ? std::to_string(number) : leaf(one, number));
        }
        return out;
    }

    std::string changes(std::size_t index) const {
        const Gathering& one = m_makeUp.gatherings[index];
        std::string out;
        const auto put = [&](const std::string& text) { out += (out.empty() ? "" : ", ") + text; };
        for (const bool unplaced : {true, false}) {
            for (const AddedLeaves& added : one.added) {
                if ((added.after == 0) == unplaced) {
                    put(addition(one, added));
                }
            }
        }
        if (!one.cancelled.empty()) {
            put(kOut + leafList(one, one.cancelled));
        }
        if (!one.replaced.empty()) {
            put("±" + leafList(one, one.replaced));
        }
        if (!one.lacking.empty()) {
            put(leafList(one, one.lacking) + " lacking");
        }
        if (!one.blank.empty()) {
            put(leafList(one, one.blank) + " blank");
        }
        for (const std::size_t guest : m_guests[index]) {
            const int after = m_makeUp.gatherings[guest].inside->after;
            put((after > 0 ? leaf(one, after) : std::string()) + "+" + gathering(guest));
        }
        return out;
    }

    static std::string addition(const Gathering& one, const AddedLeaves& added) {
        std::string out = (added.after > 0 ? leaf(one, added.after) : std::string()) + "+";
        for (int i = 1; i <= added.count; ++i) {
            out += (i == 1 ? "" : added.conjugate ? "." : ",") + std::to_string(i);
        }
        return out;
    }

    const MakeUp& m_makeUp;
    std::vector<std::vector<std::size_t>> m_guests;
    std::vector<std::size_t> m_top;
};

} // namespace

std::string toFormula(const MakeUp& makeUp) {
    return Printer(makeUp).print();
}

} // namespace headcap::core
