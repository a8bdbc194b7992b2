#include "db/sqlite/damaged_database.h"

#include <algorithm>
#include <array>
#include <fstream>

#include "db/files/durable_file.h"
#include "db/sqlite/record_sql.h"

namespace headcap::db {
namespace {

namespace fs = std::filesystem;
using core::StoreError;

// Keys that follow one another and can't be read, after which no more are looked for.
constexpr std::int64_t kMostInARow = 2'000;
constexpr std::size_t kHeaderSize = 100;
constexpr std::uint64_t kMostPages = 1ULL << 26U;

using Header = std::array<unsigned char, kHeaderSize>;

std::uint64_t number(const Header& header, std::size_t at, std::size_t bytes) {
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < bytes; ++i) {
        value = value << 8U | header[at + i];
    }
    return value;
}

Header headerOf(const fs::path& file) {
    Header header{};
    std::ifstream in(file, std::ios::binary);
    in.read(reinterpret_cast<char*>(header.data()), header.size());
    return header;
}

std::uint64_t pageSizeOf(const Header& header) {
    const std::uint64_t size = number(header, 16, 2);
    return size == 1 ? 65'536 : size;
}

// SQLite refuses a file that is shorter than it says; empty pages it refuses one by one.
void fillUp(const fs::path& file) {
    const Header header = headerOf(file);
    const std::uint64_t page = pageSizeOf(header);
    const std::uint64_t pages = number(header, 28, 4);
    if (page >= 512 && page <= 65'536 && pages <= kMostPages &&
        fs::file_size(file) < page * pages) {
        fs::resize_file(file, page * pages);
    }
}

// The first page holds the schema, and where each table begins. The rest of the header is made to
// fit the file: it counts as many pages as there are.
void takeFirstPage(const fs::path& backup, const fs::path& into) {
    const std::uint64_t size = pageSizeOf(headerOf(backup));
    std::string page(size, '\0');
    std::ifstream(backup, std::ios::binary).read(page.data(), static_cast<std::streamsize>(size));
    std::uint64_t pages = (fs::file_size(into) + size - 1) / size;
    for (std::size_t i = 0; i < 4; ++i) {
        page[31 - i] = static_cast<char>(pages & 0xffU);
        pages >>= 8U;
        page[92 + i] = page[24 + i];     // the count holds
        page[32 + i] = page[36 + i] = 0; // no free pages are known
    }
    page[18] = page[19] = 2; // in WAL mode, for there may be a WAL
    std::fstream(into, std::ios::binary | std::ios::in | std::ios::out)
        .write(page.data(), static_cast<std::streamsize>(size));
}

} // namespace

DamagedDatabase::DamagedDatabase(const fs::path& database, const fs::path& copy,
                                 std::span<const fs::path> backups)
    : m_copy(copy) {
    if (!fs::exists(database)) {
        return;
    }
    const auto fresh = [&] {
        m_connection.reset();
        for (const char* suffix : {"", "-wal", "-shm"}) {
            fs::remove(copy.string() + suffix);
        }
        for (const char* suffix : {"", "-wal"}) {
            if (fs::exists(database.string() + suffix)) {
                (void)copyDurably(database.string() + suffix, copy.string() + suffix, {});
            }
        }
        fillUp(copy);
    };
    fresh();
    if (canOpen()) {
        return;
    }
    for (const fs::path& backup : backups) {
        fresh();
        takeFirstPage(backup, copy);
        if (canOpen()) {
            return;
        }
    }
    m_connection.reset();
}

DamagedDatabase::~DamagedDatabase() {
    m_connection.reset();
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm"}) {
        fs::remove(m_copy.string() + suffix, ignored);
    }
}

bool DamagedDatabase::canOpen() {
    try {
        m_connection = std::make_unique<Connection>(m_copy, Access::write, ConnectionSettings{});
        Query query(*m_connection, "SELECT count(*) FROM sqlite_schema WHERE name = 'journal'");
        return query.step() && query.number(0) == 1;
    } catch (const StoreError&) {
        return false;
    }
}

DamagedDatabase::Entry DamagedDatabase::entry(std::int64_t sequence) {
    try {
        auto row = entryRow(*m_connection, sequence);
        return {row ? Reading::there : Reading::notThere, std::move(row)};
    } catch (const StoreError&) {
        return {Reading::unreadable, std::nullopt};
    }
}

DamagedDatabase::End DamagedDatabase::lastEntry(std::int64_t after) {
    try {
        Query last(*m_connection, "SELECT sequence FROM journal ORDER BY sequence DESC LIMIT 1");
        return {last.step() ? last.number(0) : 0, false};
    } catch (const StoreError&) {
    }
    End end{after, true};
    for (std::int64_t at = after + 1; at <= end.sequence + kMostInARow; ++at) {
        if (entry(at).reading == Reading::there) {
            end.sequence = at;
        }
    }
    return end;
}

void DamagedDatabase::readRows(core::RecordKind kind,
                               const std::function<void(const core::AnyRecord&)>& take) {
    const std::string from = "SELECT " + columnList(kind, "t") + ", rowid FROM " +
                             sqlName(core::nameOf(kind)) + " t WHERE rowid ";
    const int rowid = static_cast<int>(core::columnsOf(kind).size());
    std::int64_t last = 0;
    const auto read = [&](const std::string& condition, std::int64_t key) {
        Query query(*m_connection, from + condition);
        query.with(key);
        while (query.step()) {
            // A page that stands in another's place can give its rows twice, and out of order.
            last = std::max(last, query.number(rowid));
            try {
                take(recordAt(query, kind));
            } catch (const StoreError&) { // a row that no record can be
            }
        }
    };
    // All that follow, up to a page that can't be read; then one by one until a row can be.
    for (std::int64_t misses = 0; misses < kMostInARow;) {
        const std::int64_t before = last + misses;
        try {
            misses == 0 ? read("> ? ORDER BY rowid", last) : read("= ?", before);
            if (misses == 0) {
                return;
            }
        } catch (const StoreError&) {
        }
        misses = misses > 0 && last == before ? 0 : misses + 1;
    }
}

} // namespace headcap::db
