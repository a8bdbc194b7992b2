// What a signature is made of beside its prefix and multiplier: letters, a number, a symbol, π or
// χ, marks made of brackets. Internal to the signature's reader.
#pragma once

#include <optional>
#include <string>

#include "core/collation/glyphs.h"
#include "core/collation/signature.h"

namespace headcap::core {

struct SignatureBase {
    SignatureKind kind = SignatureKind::letters;
    std::string text;
    int times = 1; // how often the letter or symbol stands: 3 in Aaa, **
    bool parenthesised = false;
    bool inferred = false;
};

[[nodiscard]] std::optional<SignatureBase> readSignatureBase(GlyphCursor& cursor);

} // namespace headcap::core
