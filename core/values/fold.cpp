#include "core/values/fold.h"

#include <memory>
#include <optional>
#include <unordered_map>

#include <unicode/locid.h>
#include <unicode/normalizer2.h>
#include <unicode/translit.h>
#include <unicode/unistr.h>

#include "core/values/contract.h"
#include "core/values/fold_table.h"
#include "core/values/small_letters.h"

namespace headcap::core {
namespace {

// What most texts are: ASCII, with the middle dots that stand between the fields of a record and
// are levelled away. Nothing where the text holds anything else.
std::optional<std::string> foldedPlain(std::string_view text) {
    constexpr std::string_view kMiddleDot = "\u00B7";
    std::string folded;
    folded.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (text.substr(i).starts_with(kMiddleDot)) {
            i += kMiddleDot.size() - 1;
        } else if (static_cast<unsigned char>(c) >= 0x80) {
            return std::nullopt;
        } else {
            folded += smallLetter(c);
        }
    }
    return folded;
}

// Marks that are levelled: accents and superscript letters of the alphabets, Hebrew points, the
// middle dot of Catalan and of numerals. Not the vowel signs of scripts that spell with them.
bool isLevelledMark(UChar32 c) {
    return (c >= 0x0300 && c <= 0x036F) || (c >= 0x1AB0 && c <= 0x1AFF) ||
           (c >= 0x1DC0 && c <= 0x1DFF) || (c >= 0x20D0 && c <= 0x20FF) ||
           (c >= 0xFE20 && c <= 0xFE2F) || (c >= 0x0591 && c <= 0x05C7 && c != 0x05BE) ||
           c == 0x00B7;
}

// ICU's transliterators are not safe to share between threads: each thread has its own, and
// keeps what it found for each letter, for the transliterator is sixty times dearer than the rest.
class Folder {
public:
    Folder() {
        UErrorCode error = U_ZERO_ERROR;
        m_caseFold = icu::Normalizer2::getNFKCCasefoldInstance(error);
        m_decompose = icu::Normalizer2::getNFDInstance(error);
        m_compose = icu::Normalizer2::getNFCInstance(error);
        m_latinToAscii.reset(
            icu::Transliterator::createInstance("Latin-ASCII", UTRANS_FORWARD, error));
        HEADCAP_CONTRACT(U_SUCCESS(error) && m_latinToAscii);
    }

    std::string fold(std::string_view utf8) {
        auto source = icu::UnicodeString::fromUTF8(
            icu::StringPiece(utf8.data(), static_cast<std::int32_t>(utf8.size())));
        // The raised sign for "us" has the compatibility form "con", which is another word.
        source.findAndReplace(u"\uA770", u"us");
        UErrorCode error = U_ZERO_ERROR;
        const icu::UnicodeString apart =
            m_decompose->normalize(m_caseFold->normalize(source, error), error);
        icu::UnicodeString levelled;
        for (std::int32_t i = 0; i < apart.length(); i = apart.moveIndex32(i, 1)) {
            const UChar32 c = apart.char32At(i);
            if (c < 0x80) {
                levelled.append(c);
            } else if (!isLevelledMark(c)) {
                levelled.append(ofLetter(c));
            }
        }
        const icu::UnicodeString whole = m_compose->normalize(levelled, error);
        HEADCAP_CONTRACT(U_SUCCESS(error));
        std::string out;
        whole.toUTF8String(out);
        return out;
    }

private:
    const icu::UnicodeString& ofLetter(UChar32 c) {
        const auto known = m_letters.find(c);
        if (known != m_letters.end()) {
            return known->second;
        }
        icu::UnicodeString text;
        if (const std::string_view own = printersLetter(static_cast<char32_t>(c)); !own.empty()) {
            text = icu::UnicodeString::fromUTF8(
                icu::StringPiece(own.data(), static_cast<std::int32_t>(own.size())));
        } else {
            text.append(c);
            m_latinToAscii->transliterate(text);
            text.toLower(icu::Locale::getRoot());
        }
        return m_letters.emplace(c, std::move(text)).first->second;
    }

    const icu::Normalizer2* m_caseFold = nullptr;
    const icu::Normalizer2* m_decompose = nullptr;
    const icu::Normalizer2* m_compose = nullptr;
    std::unique_ptr<icu::Transliterator> m_latinToAscii;
    std::unordered_map<UChar32, icu::UnicodeString> m_letters;
};

} // namespace

std::string foldForSearch(std::string_view utf8) {
    if (auto plain = foldedPlain(utf8)) {
        return *std::move(plain);
    }
    thread_local Folder folder;
    return folder.fold(utf8);
}

} // namespace headcap::core
