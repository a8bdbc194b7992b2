// Why two leaves that stand together do not seem to follow one another: what was read of numbers,
// text, signatures and fold at the place, and the explanations that fit, the likeliest first, each
// with what speaks for and against it. Numbers alone are worth little: printers' numbers go wrong,
// and catchword, signature and fold check them (TRADE C; Cockerell 1901, ch. II).
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace headcap::core {

// At one turn, from the leaf before to the leaf looked at. What was not read is not known.
struct BreakEvidence {
    std::string before;              // "K1"; empty at the very beginning
    std::string after;               // "K3"
    std::optional<int> numbersAhead; // leaves by which the numbers run ahead of the leaves counted
    std::optional<bool> textRunsOn;  // by catchword, or by reading across the break
    std::optional<int> signaturesAhead; // leaves by which the marks run ahead; 0: in order
    std::optional<int> foldShort;       // leaves the gathering lacks of its call
    bool isRepeated = false;            // number and mark were read before, on an earlier leaf
    std::string belongsAfter; // by its own number and mark it belongs elsewhere: after this leaf
    std::string carries;      // what the leaves missing here would carry: "K2 (pp. 131–132)"
};

enum class BreakCause {
    misnumbering,       // the printer's numbers jump, nothing is lost
    leafLacking,        // numbers, text and fold say so
    lackingNotNumbered, // text and signatures break, the numbers run on
    fromAnotherCopy,    // the same, with the fold whole
    misbound,
    duplicate,
    missigned,
    wrongCatchword, // the printer's catchword does not meet the page; all else is in order
    cancel,         // a leaf was taken out or replaced by the printer
};

struct BreakExplanation {
    BreakCause cause = BreakCause::misnumbering;
    std::vector<std::string> supporting; // each a clause
    std::vector<std::string> opposing;
    int weight = 0; // for less against; only its order means anything
    std::string sentence;
    [[nodiscard]] bool isSure() const { return opposing.empty() && weight >= 4; }
};

// Those with more for than against; empty where nothing is out of order.
[[nodiscard]] std::vector<BreakExplanation> explainBreak(const BreakEvidence& at);

} // namespace headcap::core
