#include "db/sqlite/search_sql.h"

#include <set>

#include "core/values/fold.h"
#include "db/sqlite/errors.h"
#include "db/sqlite/record_sql.h"

namespace headcap::db {
namespace {

using core::RecordKind;
using core::RecordRef;

void mustWrite(Connection& connection, Query& query) {
    if (const int code = query.tryWrite(); code != 0) {
        throwStoreError(code, "writing the search index: " + connection.message());
    }
}

struct TextRow {
    std::int64_t id = 0;
    std::string words{};
};

std::optional<TextRow> textRow(Connection& connection, const RecordRef& ref) {
    Query query(connection, "SELECT id, words FROM search_text WHERE record_id = ?");
    query.with(ref.id.text());
    return query.step() ? std::optional{TextRow{query.number(0), query.text(1)}} : std::nullopt;
}

void indexRow(Connection& connection, std::int64_t id, const std::string& words) {
    Query query(connection, "INSERT INTO search(rowid, words) VALUES(?, ?)");
    query.with(id).with(words);
    mustWrite(connection, query);
}

// FTS5 over another table forgets a row only when told the words it was given.
void forgetRow(Connection& connection, const TextRow& row) {
    Query query(connection, "INSERT INTO search(search, rowid, words) VALUES('delete', ?, ?)");
    query.with(row.id).with(row.words);
    mustWrite(connection, query);
}

void addText(Connection& connection, const RecordRef& ref, const std::string& words) {
    Query add(connection, "INSERT INTO search_text(kind, record_id, words) VALUES(?, ?, ?)");
    add.with(core::nameOf(ref.kind)).with(ref.id.text()).with(words);
    mustWrite(connection, add);
    Query id(connection, "SELECT last_insert_rowid()");
    id.step();
    indexRow(connection, id.number(0), words);
}

void setText(Connection& connection, const RecordRef& ref, const std::string& words) {
    const auto row = textRow(connection, ref);
    if (!row) {
        if (!words.empty()) {
            addText(connection, ref, words);
        }
        return;
    }
    if (row->words == words) {
        return;
    }
    forgetRow(connection, *row);
    if (words.empty()) {
        Query remove(connection, "DELETE FROM search_text WHERE id = ?");
        remove.with(row->id);
        mustWrite(connection, remove);
        return;
    }
    Query update(connection, "UPDATE search_text SET words = ? WHERE id = ?");
    update.with(words).with(row->id);
    mustWrite(connection, update);
    indexRow(connection, row->id, words);
}

void append(std::string& text, const std::string& more) {
    if (!more.empty()) {
        text += text.empty() ? more : " · " + more;
    }
}

bool sameWords(const Touched& touched) {
    return touched.before && touched.after &&
           core::searchTextOf(*touched.before) == core::searchTextOf(*touched.after);
}

// Whether a byte of UTF-8 text belongs to a word. Signs outside ASCII were folded away or stand in
// words of other scripts, but for those of wordBreakAt.
bool isWordByte(unsigned char c) {
    return c >= 0x80 || (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// The length of a sign that parts words at the beginning of the text: Latin-1 signs, general
// punctuation, symbols and dingbats, CJK punctuation.
std::size_t wordBreakAt(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
    };
    if (byte(0) == 0xC2 && byte(1) != 0xAA && byte(1) != 0xB5 && byte(1) != 0xBA) {
        return 2;
    }
    if (byte(0) == 0xC3 && (byte(1) == 0x97 || byte(1) == 0xB7)) {
        return 2;
    }
    const bool generalPunctuation = byte(0) == 0xE2 && byte(1) >= 0x80 && byte(1) <= 0x81;
    const bool symbols = byte(0) == 0xE2 && byte(1) >= 0x86 && byte(1) <= 0xAF;
    const bool cjkPunctuation = byte(0) == 0xE3 && byte(1) == 0x80;
    return generalPunctuation || symbols || cjkPunctuation ? 3 : 0;
}

} // namespace

std::vector<std::string> wordsOf(std::string_view folded) {
    std::vector<std::string> words;
    std::string word;
    const auto finish = [&] {
        if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    };
    for (std::size_t i = 0; i < folded.size();) {
        if (const std::size_t length = wordBreakAt(folded.substr(i)); length > 0) {
            finish();
            i += length;
        } else if (isWordByte(static_cast<unsigned char>(folded[i]))) {
            word += folded[i++];
        } else {
            finish();
            ++i;
        }
    }
    finish();
    return words;
}

std::string indexedWords(Connection& connection, const core::AnyRecord& record) {
    std::string text = core::searchTextOf(record);
    if (const auto* job = std::get_if<core::Job>(&record)) {
        if (const auto item = findRecord(connection, refOf(job->item))) {
            append(text, core::searchTextOf(item->record));
        }
        if (const auto owner = findRecord(connection, refOf(job->owner))) {
            append(text, core::searchTextOf(owner->record));
        }
    }
    return core::foldForSearch(text);
}

void updateSearch(Connection& connection, const TouchedRecords& touched) {
    std::set<RecordRef> jobs;
    for (const auto& [ref, what] : touched) {
        if (ref.kind == RecordKind::job && what.after) {
            jobs.insert(ref);
            continue;
        }
        if (sameWords(what)) {
            continue;
        }
        setText(connection, ref, what.after ? indexedWords(connection, *what.after) : "");
        if (ref.kind == RecordKind::item || ref.kind == RecordKind::owner) {
            for (const auto& job :
                 recordsWith(connection, RecordKind::job, core::nameOf(ref.kind), ref.id.text())) {
                jobs.insert(refOf(job.record));
            }
        }
    }
    for (const RecordRef& ref : jobs) {
        if (const auto job = findRecord(connection, ref)) {
            setText(connection, ref, indexedWords(connection, job->record));
        }
    }
}

void rebuildSearchIndex(Connection& connection) {
    connection.run("INSERT INTO search(search) VALUES('delete-all')");
    connection.run("DELETE FROM search_text");
    // Keys ascend with the time of their making, and newer rows are found first.
    std::string everyKey;
    for (const std::string_view kind : core::EnumNames<RecordKind>::kNames) {
        everyKey += (everyKey.empty() ? "" : " UNION ALL ") + std::string{"SELECT '"} +
                    std::string{kind} + "' AS kind, \"id\" AS id FROM " + sqlName(kind);
    }
    Query keys(connection, "SELECT kind, id FROM (" + everyKey + ") ORDER BY id");
    while (keys.step()) {
        const auto kind = core::recordKindNamed(keys.text(0));
        const auto id = core::Uuid::fromText(keys.text(1));
        if (!kind || !id) {
            continue;
        }
        const RecordRef ref{*kind, *id};
        if (const auto found = findRecord(connection, ref)) {
            if (const std::string words = indexedWords(connection, found->record); !words.empty()) {
                addText(connection, ref, words);
            }
        }
    }
}

} // namespace headcap::db
