#include "tests/fuzz/reader_trials.h"

#include <array>
#include <cstdio>
#include <cstdlib>

#include <nlohmann/json.hpp>

#include "core/catchwords/catchword_answer.h"
#include "core/catchwords/leaf_diagnosis.h"
#include "core/collation/collate.h"
#include "core/collation/leaf_places.h"
#include "core/collation/plates.h"
#include "core/cutting/plan_json.h"
#include "core/materials/mix_text.h"
#include "core/record/any_record.h"
#include "core/treatment/step_line.h"
#include "core/values/amount.h"
#include "core/values/book_date.h"
#include "core/values/digest.h"
#include "core/values/edtf.h"
#include "core/values/fold.h"
#include "core/values/measure_text.h"
#include "core/values/money.h"
#include "core/values/roman.h"
#include "core/values/spoken_time.h"
#include "core/values/strength.h"

namespace headcap::fuzz {
namespace {

using namespace core;

const Day kToday{std::chrono::year{2031}, std::chrono::March, std::chrono::day{6}};

// What is printed reads back, and prints the same.
template <class Parse, class Print>
void roundTrip(std::string_view bytes, const char* what, Parse parse, Print print) {
    const auto first = parse(bytes);
    if (!first) {
        return;
    }
    const std::string text = print(*first);
    const auto again = parse(std::string_view{text});
    if (!again || !(*again == *first)) {
        wrong(what, bytes);
    }
}

void collation(std::string_view bytes) {
    const std::size_t cut = bytes.find('\t');
    const CollateRequest request{
        std::string(bytes.substr(0, cut)),
        cut == bytes.npos ? std::string() : std::string(bytes.substr(cut + 1)), ""};
    const CollateAnswer answer = collate(request);
    if (answer.leaves.size() > static_cast<std::size_t>(kMostLeavesInBook)) {
        wrong("too many leaves", bytes);
    }
    for (std::size_t i = 0; i < answer.leaves.size(); ++i) {
        const auto& other = answer.leaves[i].conjugate;
        if (other && answer.leaves[*other].conjugate != i) {
            wrong("a conjugate that is not", bytes);
        }
    }
    (void)toJson(answer, request).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

void leaves(std::string_view bytes) {
    (void)parsePlatePlace(bytes);
    roundTrip(
        bytes, "a leaf", [](std::string_view t) { return parseLeafRef(t); },
        [](const LeafRef& ref) { return toText(ref); });
    roundTrip(
        bytes, "leaves", [](std::string_view t) { return parseLeafSet(t); },
        [](const LeafSet& set) { return toText(set); });
}

void measures(std::string_view bytes) {
    roundTrip(
        bytes, "an amount", [](std::string_view t) { return parseAmount(t); },
        [](const Amount& amount) { return toText(amount); });
    roundTrip(
        bytes, "a strength", [](std::string_view t) { return parseStrength(t); },
        [](const Strength& strength) { return toText(strength); });
    (void)parseLength(bytes);
    (void)parseMoney(bytes, "EUR");
    (void)romanNumber(bytes);
}

void times(std::string_view bytes) {
    roundTrip(
        bytes, "a day", [](std::string_view t) { return dayFromIso(t); },
        [](const Day& day) { return isoText(day); });
    roundTrip(
        bytes, "an instant", [](std::string_view t) { return instantFromIso(t); },
        [](const Instant& instant) { return isoText(instant); });
    roundTrip(
        bytes, "minutes", [](std::string_view t) { return parseMinutes(t); },
        [](const Minutes& minutes) { return toText(minutes); });
    if (const auto day = parseDay(bytes, kToday); day && !day->ok()) {
        wrong("a day that is none", bytes);
    }
}

void bookDates(std::string_view bytes) {
    roundTrip(
        bytes, "an EDTF date", [](std::string_view t) { return parseEdtf(t); },
        [](const Edtf& edtf) { return edtfText(edtf); });
    if (const auto date = parseBookDate(bytes)) {
        (void)toText(*date);
        if (!parseEdtf(date->edtf)) {
            wrong("a book's date that is no EDTF", bytes);
        }
        if (const auto span = yearsOf(*date); span && span->first > span->last) {
            wrong("years that run back", bytes);
        }
    }
}

void tables(std::string_view bytes) {
    const TextTable table(bytes);
    if (const auto answer = compareCatchwords(table)) {
        (void)toJson(*answer).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
    }
    if (!checkPageColumns(table)) {
        for (const PagesOfBook& book : readPages(table)) {
            const auto found = diagnoseLeaves(book.pages);
            (void)toJson(found).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
        }
    }
}

void plans(std::string_view bytes) {
    // Reading alone: a plan of any size may be asked for, and its making takes its time.
    (void)readCutProblem(bytes);
}

void records(std::string_view bytes) {
    const auto json = nlohmann::json::parse(bytes, nullptr, false);
    if (!json.is_object()) {
        return;
    }
    for (std::size_t i = 0; i < kRecordKindCount; ++i) {
        const auto kind = static_cast<RecordKind>(i);
        const auto record = recordFrom(kind, json);
        if (!record) {
            continue;
        }
        const auto again = recordFrom(kind, toJson(*record));
        if (!again || !(*again == *record)) {
            wrong("a record of the journal", bytes);
        }
        const auto fromColumns = recordFrom(kind, valuesOf(*record));
        if (!fromColumns || !(*fromColumns == *record)) {
            wrong("a record's columns", bytes);
        }
    }
}

void lines(std::string_view bytes) {
    static const Shelf kShelf;
    static const std::vector<Person> kPeople;
    const StepLine line = readStepLine(bytes, {.shelf = kShelf, .people = kPeople});
    std::size_t at = 0;
    for (const LineSpan& span : line.spans) {
        if (span.begin < at || span.end < span.begin || span.end > bytes.size()) {
            wrong("what was understood lies outside the line", bytes);
        }
        at = span.end;
    }
    (void)parseMixParts(bytes, kShelf);
    (void)foldForSearch(bytes);
    (void)Uuid::fromText(bytes);
    (void)Digest::fromHex(bytes);
}

constexpr std::array kFormulas{"A-C8 D4",     "π2 A-Z8 2A-2C8 χ1\t[4], 1-413, [1] p.",
                               "A8(-A1)",     "8°: A-B4 (B3+1)",
                               "[1-4]8 5(6)", "i-x, 1-380 p., [4] leaves of plates"};
constexpr std::array kLeaves{
    "C4r", "2A3v", "π2", "f. 112v", "p. 223", "pl. 7", "B2, C1-C4, 3 plates", "K7.2", "[]AA3v"};
constexpr std::array kMeasures{"0.4 g",  "12,5 ml", "2 sheets",    "5 3/4 in",
                               "148 mm", "2 % w/v", "1250.50 EUR", "mdccxlii"};
constexpr std::array kTimes{"2031-03-05T09:10:00.000Z",
                            "14 March",
                            "tomorrow",
                            "in 2 weeks",
                            "1 h 20",
                            "2031-03-05",
                            "fri",
                            "1:20"};
constexpr std::array kBookDates{"1612",
                                "ca. 1590",
                                "1702-1741",
                                "16th century",
                                "1612-03/1613",
                                "156u",
                                "[1667,1668,1670..1672]",
                                "1984?/2004~"};
constexpr std::array kTables{
    "page\tsignature\tcatchword\tfirst_words\n1\tA\tthe\tthe end\n2\t\tof\tof all\n",
    "book\tpage\tsignature\tcatchword\tfirst_words\nx\ti\tA2\t\u017fome\tsome\n"};
constexpr std::array kPlans{
    R"({"stock":[{"name":"a","width_mm":700,"height_mm":500,"count":2}],"pieces":[{"name":"p","width_mm":100,"height_mm":50,"count":4}]})",
    R"({"kerf_mm":1,"stock":[],"pieces":[]})"};
constexpr std::array kRecords{
    R"({"id":"01890a5d-ac96-774b-bcce-b302099a8057","name":"Una","initials":"UT","role":"","active":true,"note":""})",
    R"({"id":"01890a5d-ac96-774b-bcce-b302099a8057","kind":"private","name":"Kell","contact":"","authority":"","address":"","email":"","telephone":"","note":""})"};
constexpr std::array kLines{"guarded K7 with paste 26-014 0.4 g 20 min", "washed A1-A8 2 h",
                            "3 g 26-014 + 10 ml 26-040", "pressed overnight"};

} // namespace

std::span<const Reader> readers() {
    static const std::array<Reader, 9> kReaders{{{"collation", kFormulas, collation},
                                                 {"leaves", kLeaves, leaves},
                                                 {"measures", kMeasures, measures},
                                                 {"times", kTimes, times},
                                                 {"book dates", kBookDates, bookDates},
                                                 {"tables", kTables, tables},
                                                 {"cutting plans", kPlans, plans},
                                                 {"records", kRecords, records},
                                                 {"lines", kLines, lines}}};
    return kReaders;
}

void wrong(std::string_view what, std::string_view bytes) {
    std::fprintf(stderr, "%.*s, from these %zu bytes:\n", static_cast<int>(what.size()),
                 what.data(), bytes.size());
    std::fwrite(bytes.data(), 1, bytes.size(), stderr);
    std::fputc('\n', stderr);
    std::abort();
}

} // namespace headcap::fuzz
