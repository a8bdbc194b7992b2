#include "core/catchwords/letter_forms.h"

namespace headcap::core {

bool isVowel(char32_t c) {
    return std::u32string_view(U"aeiouyvj").find(c) != std::u32string_view::npos;
}

bool isStrokeMark(char32_t c) {
    return c == 0x0303 || c == 0x0304 || c == 0x0305 || c == 0x0342 || c == 0x035E || c == 0x0360;
}

bool isHyphen(char32_t c) {
    return c == '-' || c == 0x2010 || c == 0x2011 || c == 0x2E17 || c == 0x00AD || c == 0x00AC ||
           c == 0x2E40 || c == '=' || c == 0x2013;
}

bool isLineEnd(char32_t c) {
    return c == '\n' || c == '\r' || c == 0x240A;
}

std::u32string_view levelled(char32_t c) {
    switch (c) {
    case 0x017F:
        return U"s";
    case 0xA75B:
    case 0xA75A:
        return U"r";
    case 0x00DF:
    case 0x1E9E:
        return U"ss";
    case 0x00E6:
    case 0x00C6:
        return U"ae";
    case 0x0153:
    case 0x0152:
        return U"oe";
    case 0x0119:
    case 0x0118:
        return U"ae";
    case 0x00F8:
    case 0x00D8:
        return U"oe";
    case 0x00FE:
    case 0x00DE:
        return U"th";
    case 0x0131:
        return U"i";
    case 0x0142:
    case 0x0141:
        return U"l\xE001";
    case 0xA75F:
    case 0xA75E:
        return U"v\xE001";
    case 0xA753:
    case 0xA752:
        return U"pro";
    case 0xA751:
    case 0xA750:
        return U"\xE003";
    case 0xA76F:
    case 0xA76E:
        return U"\xE004";
    case 0xA770:
        return U"\xE005";
    case 0xA759:
    case 0xA758:
        return U"\xE006";
    case 0xA757:
    case 0xA756:
        return U"q\xE001";
    case 0xA76B:
    case 0xA76A:
    case 0x0292:
    case 0x01B7:
        return U"\xE007";
    case 0x0111:
    case 0x0110:
    case 0xA77A:
    case 0xA779:
        return U"\xE008";
    case 0xA75D:
    case 0xA75C:
        return U"rum";
    case 0x204A:
    case '&':
        return U"\xE002";
    default:
        return {};
    }
}

char32_t nextCodePoint(std::string_view& utf8) {
    const auto byteAt = [&](std::size_t at) { return static_cast<unsigned char>(utf8[at]); };
    const unsigned char lead = byteAt(0);
    const std::size_t length = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (length == 1 || lead < 0xC2 || lead > 0xF4 || utf8.size() < length) {
        utf8.remove_prefix(1);
        return lead < 0x80 ? lead : U' ';
    }
    auto code = static_cast<char32_t>(lead & (0xFF >> (length + 1)));
    for (std::size_t at = 1; at < length; ++at)
        code = (code << 6) | (byteAt(at) & 0x3F);
    utf8.remove_prefix(length);
    return code;
}

} // namespace headcap::core
