#include "db/files/journal_note.h"

#include <array>
#include <charconv>
#include <cstdio>
#include <string_view>

#include <fcntl.h>
#include <unistd.h>

namespace headcap::db {
namespace {

constexpr const char* kName = "journal-head";
constexpr std::size_t kDigits = 20;
constexpr std::size_t kHashLength = 64;
constexpr std::size_t kLength = kDigits + 1 + kHashLength + 1;

std::optional<JournalNote> read(int file) {
    std::array<char, kLength> bytes{};
    if (::pread(file, bytes.data(), bytes.size(), 0) != static_cast<::ssize_t>(kLength)) {
        return std::nullopt;
    }
    const std::string_view text(bytes.data(), bytes.size());
    const auto first = text.find_first_not_of(' ');
    JournalNote note;
    const auto end = text.data() + kDigits;
    const auto number = std::from_chars(text.data() + first, end, note.sequence);
    if (first >= kDigits || number.ec != std::errc{} || number.ptr != end) {
        return std::nullopt;
    }
    note.hash = text.substr(kDigits + 1, kHashLength);
    return note;
}

} // namespace

void noteJournal(const std::filesystem::path& workshop, const JournalNote& head) {
    const int file = ::open((workshop / kName).c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (file < 0) {
        return;
    }
    const auto known = read(file);
    if (!known || known->sequence <= head.sequence) {
        std::array<char, kLength + 1> text{};
        std::snprintf(text.data(), text.size(), "%20lld %s\n",
                      static_cast<long long>(head.sequence), head.hash.c_str());
        // One write, so that another window never reads half of it.
        [[maybe_unused]] const auto written = ::pwrite(file, text.data(), kLength, 0);
    }
    ::close(file);
}

std::optional<JournalNote> notedJournal(const std::filesystem::path& workshop) {
    const int file = ::open((workshop / kName).c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) {
        return std::nullopt;
    }
    auto note = read(file);
    ::close(file);
    return note;
}

} // namespace headcap::db
