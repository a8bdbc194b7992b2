#include "db/sqlite/search_index.h"

#include <algorithm>
#include <functional>

#include "core/values/fold.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/search_sql.h"

namespace headcap::db {
namespace {

// Counting every hit of a common word is what takes long.
constexpr std::int64_t kMostCounted = 1'000;
constexpr std::int64_t kMostLookedThrough = 5'000;
constexpr std::size_t kLineLength = 160;

// Every word, the last as a beginning, in FTS5's own language.
std::string matchFor(const std::vector<std::string>& words) {
    std::string match;
    for (const std::string& word : words) {
        match += (match.empty() ? "\"" : " AND \"") + word + '"';
    }
    return match + '*';
}

bool holdsAny(const std::string& folded, const std::vector<std::string>& words) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return folded.find(word) != std::string::npos;
    });
}

// The text cut to a line, at the end of a character.
std::string asLine(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    if (text.size() <= kLineLength) {
        return text;
    }
    std::size_t end = kLineLength;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
        --end;
    }
    return text.substr(0, end) + "…";
}

// The first field that holds a word that was asked for; else the first.
std::string lineOf(const core::AnyRecord& record, const std::vector<std::string>& words) {
    static const std::string kBetween = " · ";
    const std::string text = core::searchTextOf(record);
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(kBetween, at), text.size());
        std::string field = text.substr(at, end - at);
        if (holdsAny(core::foldForSearch(field), words)) {
            return asLine(std::move(field));
        }
        at = end + kBetween.size();
    }
    return asLine(text.substr(0, text.find(kBetween)));
}

std::string placeOf(const core::AnyRecord& record) {
    return std::visit(
        [](const auto& r) -> std::string {
            if constexpr (requires { r.place; }) {
                return r.place;
            } else if constexpr (requires { r.leaves; }) {
                return r.leaves;
            } else {
                return {};
            }
        },
        record);
}

std::string titleOf(Connection& connection, const core::Id<core::Item>& id) {
    const auto found = findRecord(connection, refOf(id));
    if (!found) {
        return {};
    }
    const auto& item = std::get<core::Item>(found->record);
    return item.shortTitle.empty() ? item.title : item.shortTitle;
}

core::SearchHit hitFor(Connection& connection, const core::AnyRecord& record,
                       const std::vector<std::string>& words) {
    core::SearchHit hit{core::refOf(record)};
    hit.job = core::jobOf(record);
    hit.place = placeOf(record);
    hit.text = lineOf(record, words);
    if (hit.job) {
        if (const auto found = findRecord(connection, refOf(*hit.job))) {
            const auto& job = std::get<core::Job>(found->record);
            hit.jobNumber = job.number;
            hit.item = titleOf(connection, job.item);
        }
    } else if (const auto* item = std::get_if<core::Item>(&record)) {
        hit.item = titleOf(connection, item->id);
    } else if (const auto* work = std::get_if<core::Work>(&record)) {
        hit.item = titleOf(connection, work->item);
    } else if (const auto* hazard = std::get_if<core::Hazard>(&record)) {
        hit.item = titleOf(connection, hazard->item);
    }
    return hit;
}

// FTS5 parts words at signs of other scripts that wordsOf takes for letters, and an index without
// positions knows no phrases: no record holds such a word, and the work is not done.
bool matched(const std::function<void()>& work) {
    try {
        work();
        return true;
    } catch (const core::StoreError& error) {
        if (error.code() == core::StoreError::Code::internal) {
            return false;
        }
        throw;
    }
}

void countHits(Connection& connection, const std::string& match, core::SearchAnswer& answer) {
    Query count(connection,
                "SELECT count(*) FROM (SELECT 1 FROM search WHERE search MATCH ? LIMIT ?)");
    count.with(match).with(kMostCounted + 1);
    count.step();
    answer.total = static_cast<std::size_t>(std::min(count.number(0), kMostCounted));
    answer.totalCapped = count.number(0) > kMostCounted;
}

} // namespace

core::SearchAnswer SqliteSearchIndex::find(std::string_view words, std::size_t limit) const {
    const auto asked = wordsOf(core::foldForSearch(words));
    core::SearchAnswer answer;
    if (asked.empty()) {
        return answer;
    }
    const std::string match = matchFor(asked);
    const auto reader = m_readers.lend();
    if (!matched([&] { countHits(*reader, match, answer); })) {
        return {};
    }
    Query hits(*reader, "SELECT t.kind, t.record_id FROM (SELECT rowid FROM search WHERE search "
                        "MATCH ? ORDER BY rowid DESC LIMIT ?) s JOIN search_text t ON t.id = "
                        "s.rowid ORDER BY t.id DESC");
    hits.with(match).with(static_cast<std::int64_t>(limit));
    while (hits.step()) {
        const auto kind = core::recordKindNamed(hits.text(0));
        const auto id = core::Uuid::fromText(hits.text(1));
        const auto found =
            kind && id ? findRecord(*reader, core::RecordRef{*kind, *id}) : std::nullopt;
        if (found) {
            answer.hits.push_back(hitFor(*reader, found->record, asked));
        }
    }
    return answer;
}

std::vector<core::RecordRef>
SqliteSearchIndex::findOf(core::RecordKind kind, std::string_view words, std::size_t limit) const {
    const auto asked = wordsOf(core::foldForSearch(words));
    std::vector<core::RecordRef> refs;
    if (asked.empty()) {
        return refs;
    }
    const auto reader = m_readers.lend();
    (void)matched([&] {
        Query hits(*reader, "SELECT t.record_id FROM (SELECT rowid FROM search WHERE search MATCH "
                            "? ORDER BY rowid DESC LIMIT ?) s JOIN search_text t ON t.id = "
                            "s.rowid WHERE t.kind = ? ORDER BY t.id DESC LIMIT ?");
        hits.with(matchFor(asked)).with(kMostLookedThrough).with(core::nameOf(kind));
        hits.with(static_cast<std::int64_t>(limit));
        while (hits.step()) {
            if (const auto id = core::Uuid::fromText(hits.text(0))) {
                refs.push_back({kind, *id});
            }
        }
    });
    return refs;
}

} // namespace headcap::db
