#include "core/values/fold_table.h"

#include <algorithm>
#include <array>

namespace headcap::core {
namespace {

struct Letter {
    char32_t printed;
    std::string_view typed;
};

constexpr auto kLetters = std::to_array<Letter>({
    {U'\u204A', "&"},   // Tironian et
    {U'\uA733', "aa"},  // aa
    {U'\uA735', "ao"},  // ao
    {U'\uA737', "au"},  // au
    {U'\uA739', "av"},  // av
    {U'\uA73B', "av"},  // av with bar
    {U'\uA73D', "ay"},  // ay
    {U'\uA73F', "con"}, // reversed c with dot
    {U'\uA741', "k"},   // k with stroke
    {U'\uA743', "k"},   // k with diagonal stroke
    {U'\uA745', "k"},   // k with both
    {U'\uA749', "l"},   // l with high stroke
    {U'\uA74B', "o"},   // o with long stroke overlay
    {U'\uA74D', "o"},   // o with loop
    {U'\uA74F', "oo"},  // oo
    {U'\uA751', "per"}, // p with stroke through descender
    {U'\uA753', "pro"}, // p with flourish
    {U'\uA755', "p"},   // p with squirrel tail
    {U'\uA757', "q"},   // q with stroke through descender
    {U'\uA759', "q"},   // q with diagonal stroke
    {U'\uA75B', "r"},   // r rotunda
    {U'\uA75D', "rum"}, // rum rotunda
    {U'\uA75F', "v"},   // v with diagonal stroke
    {U'\uA761', "vy"},  // vy
    {U'\uA763', "z"},   // Visigothic z
    {U'\uA765', "th"},  // thorn with stroke
    {U'\uA767', "th"},  // thorn with stroke through descender
    {U'\uA76B', "et"},  // et
    {U'\uA76D', "is"},  // is
    {U'\uA76F', "con"}, // con
    {U'\uA77A', "d"},   // insular d
    {U'\uA77C', "f"},   // insular f
    {U'\u1D79', "g"},   // insular g
    {U'\uA77F', "g"},   // turned insular g
    {U'\uA783', "r"},   // insular r
    {U'\uA785', "s"},   // insular s
    {U'\uA787', "t"},   // insular t
    {U'\u01BF', "w"},   // wynn
    {U'\u021D', "gh"},  // yogh
    {U'\u0254', "c"},   // open o, typed for the reversed c
    {U'\u2184', "c"},   // reversed c of the apostrophus
});
static_assert(std::ranges::all_of(kLetters, [](const Letter& l) { return !l.typed.empty(); }));

} // namespace

std::string_view printersLetter(char32_t letter) {
    const auto found = std::ranges::find(kLetters, letter, &Letter::printed);
    return found == kLetters.end() ? std::string_view{} : found->typed;
}

} // namespace headcap::core
