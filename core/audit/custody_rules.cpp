#include "core/audit/rules.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/custody/job_states.h"
#include "core/custody/release_list.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

void title(const AuditContext& at, const AuditSink& found) {
    if (at.file.item.title.empty()) {
        found(at.file.item, "The book has no title, nor a word that identifies it.");
    }
}

void measurements(const AuditContext& at, const AuditSink& found) {
    const Item& item = at.file.item;
    const bool measured = item.height && item.width && item.thickness;
    if (item.nature == ItemNature::volume && !measured) {
        found(item, "Height, width and thickness of the book are not all noted.");
    }
}

void authority(const AuditContext& at, const AuditSink& found) {
    if (at.file.owner.kind != OwnerKind::privateOwner && at.file.owner.authority.empty()) {
        found(at.file.owner, fmt::format("Who may decide for {}, and by what right, is not noted.",
                                         at.file.owner.name));
    }
}

void earlierRecords(const AuditContext& at, const AuditSink& found) {
    if (at.file.job.earlierRecords == EarlierRecords::notAsked) {
        found(at.file.job, "Nobody has asked for earlier reports and photographs of this book.");
    }
}

void value(const AuditContext& at, const AuditSink& found) {
    if (!at.file.job.value) {
        found(at.file.job, "The owner's value for the book while it is in the house is not noted.");
    }
}

bool isGivenBack(JobState state) {
    return state == JobState::returned;
}

void piecesAtReturn(const AuditContext& at, const AuditSink& found) {
    if (!isGivenBack(at.file.job.state)) {
        return;
    }
    for (const Piece& piece : at.file.pieces) {
        if (piece.returned.empty()) {
            found(piece, fmt::format("{} came with the book, and what became of it at return is "
                                     "not noted.",
                                     capitalised(nameOf(piece))));
        }
    }
}

void piecesBeforeReturn(const AuditContext& at, const AuditSink& found) {
    if (isGivenBack(at.file.job.state) || !hasReached(at.file.job.state, JobState::passed)) {
        return;
    }
    for (const Piece& piece : at.file.pieces) {
        if (piece.returned.empty()) {
            found(piece, fmt::format("{} came with the book: it goes back with it, or the record "
                                     "says where it went.",
                                     capitalised(nameOf(piece))));
        }
    }
}

constexpr auto kMust = AuditSeverity::mustSettle;
constexpr auto kWorth = AuditSeverity::worthKnowing;
constexpr std::array kRules{
    AuditRule{"book_identified", Page::book, kMust, "AIC Commentary 24", title},
    AuditRule{"book_measurements", Page::book, kWorth, "AIC Commentary 24", measurements},
    AuditRule{"owner_authority", Page::book, kWorth, "AIC Commentary 5, 26", authority},
    AuditRule{"earlier_records", Page::book, kWorth, "AIC Commentary 5, 25", earlierRecords},
    AuditRule{"value_in_the_house", Page::book, kWorth, "common practice", value},
    AuditRule{"piece_unaccounted", Page::book, kMust, "AIC Commentary 25", piecesAtReturn},
    AuditRule{"piece_to_return", Page::book, kWorth, "AIC Commentary 25", piecesBeforeReturn},
};

} // namespace

std::span<const AuditRule> custodyRules() {
    return kRules;
}

} // namespace headcap::core
