#include "demo-data/loader/teller.h"

#include <algorithm>

#include <fmt/format.h>

#include "demo-data/loader/data_error.h"
#include "demo-data/loader/field_slots.h"

namespace headcap::demo {
namespace {

constexpr std::string_view refusalWord(core::Refusal::Code code) {
    using Code = core::Refusal::Code;
    switch (code) {
    case Code::changedSince:
        return "has changed since";
    case Code::missing:
        return "is no longer there";
    case Code::keyTaken:
        return "has a key that is taken";
    case Code::numberTaken:
        return "has a number that is taken";
    case Code::stillNamed:
        return "is still named";
    case Code::neverDeleted:
        return "is never deleted";
    case Code::neverChanged:
        return "is never changed";
    case Code::namesNothing:
        return "names a record that is not there";
    case Code::breaksRule:
        return "breaks a rule of the schema";
    case Code::cannotUndo:
        return "can't be undone";
    case Code::nothingToUndo:
        return "is not there to be undone";
    }
    return "";
}

std::string sentenceOf(const core::Refusal& refusal) {
    return fmt::format("{} {} {}",
                       refusal.record ? core::nameOf(refusal.record->kind) : "the change",
                       refusalWord(refusal.code), refusal.detail);
}

} // namespace

Teller::Teller(const Story& story, const DemoDays& days, StoryClock& clock,
               core::RecordStore& store, KeptFiles& files)
    : m_story(story), m_days(days), m_clock(clock), m_store(store), m_files(files), m_ids(clock),
      m_defaults(story.defaults()) {}

void Teller::tell(const Group& group) {
    m_clock.set(group.at);
    const Moment moment = m_story.momentOf(group, m_names);
    try {
        core::Change change{.sentence = {}};
        addRecords(group, moment, change);
        addUpdates(group, moment, change);
        change.sentence = moment.toldText(group.text("say"));
        if (change.sentence.empty()) {
            throw DataError{"a change without its sentence"};
        }
        if (const auto who = m_names.find(moment.scope, moment.who)) {
            change.who = core::Id<core::Person>{who->id};
        }
        if (change.writes.empty()) {
            return;
        }
        if (const auto kept = m_store.apply(change); !kept) {
            throw DataError{sentenceOf(kept.error())};
        }
    } catch (const DataError& error) {
        throw DataError{
            fmt::format("{}, {}: {}", group.file->name, group.text("when"), error.what())};
    }
}

// Names and keys come first, so that the records of one change may name each other.
void Teller::gather(core::RecordKind kind, const Json& objects, const ToldRecord* parent,
                    const std::string& scope, Told& told) {
    if (!objects.is_array()) {
        throw DataError{fmt::format("{} must be a list", core::nameOf(kind))};
    }
    for (const Json& object : objects) {
        told.push_back(std::make_unique<ToldRecord>(
            ToldRecord{kind, &object, core::RecordRef{kind, m_ids.nextUuid()}, parent}));
        const ToldRecord* made = told.back().get();
        const bool isField =
            slotNamed(kind, "key") != nullptr; // some kinds have a key of their own
        if (const auto key = object.find("key"); key != object.end() && !isField) {
            m_names.learn(scope, key->get<std::string>(), made->ref);
        }
        for (const auto& [member, value] : object.items()) {
            if (const auto child = kindNamed(member); child && value.is_array()) {
                gather(*child, value, made, scope, told);
            }
        }
    }
}

Json Teller::filesOf(const ToldRecord& told, const std::string& scope) {
    const auto file = [&](const char* member) {
        return member == std::string_view{"picture"}
                   ? m_files.picture(scope, told.object->at(member).get<std::string>())
                   : m_files.paper(scope, told.object->at(member).get<std::string>());
    };
    if (told.kind == core::RecordKind::photograph && told.object->contains("picture")) {
        const KeptFile kept = file("picture");
        return {{"digest", kept.digest.hex()}, {"media_type", kept.mediaType},
                {"file_name", kept.fileName},  {"bytes", kept.bytes},
                {"width_px", kept.widthPx},    {"height_px", kept.heightPx}};
    }
    if (told.kind == core::RecordKind::attachment && told.object->contains("paper")) {
        const KeptFile kept = file("paper");
        return {{"digest", kept.digest.hex()},
                {"media_type", kept.mediaType},
                {"file_name", kept.fileName},
                {"bytes", kept.bytes}};
    }
    return Json::object();
}

void Teller::addRecords(const Group& group, const Moment& moment, core::Change& change) {
    Told told;
    const auto adds = group.content->find("add");
    if (adds == group.content->end()) {
        return;
    }
    for (const auto& [name, objects] : adds->items()) {
        const auto kind = kindNamed(name);
        if (!kind) {
            throw DataError{"there is no kind " + name};
        }
        gather(*kind, objects, nullptr, moment.scope, told);
    }
    for (const auto& one : told) {
        const core::AnyRecord record =
            readRecord(*one, m_defaults, moment, filesOf(*one, moment.scope));
        if (const auto* job = std::get_if<core::Job>(&record)) {
            m_names.learnNumber(one->ref, job->number);
        } else if (const auto* lot = std::get_if<core::Lot>(&record)) {
            m_names.learnNumber(one->ref, lot->number);
        }
        change.add(record);
        addLedger(record, moment, change);
    }
}

void Teller::addLedger(const core::AnyRecord& record, const Moment& moment, core::Change& change) {
    const auto entry = [&](const core::Id<core::Lot>& lot, core::LedgerKind kind,
                           const core::Amount& amount) {
        core::LedgerEntry made{.id = m_ids.next<core::LedgerEntry>(),
                               .lot = lot,
                               .at = m_clock.now(),
                               .who = std::nullopt,
                               .kind = kind,
                               .amount = amount.negated(),
                               .use = std::nullopt,
                               .contraryOf = std::nullopt};
        if (const auto who = m_names.find(moment.scope, moment.who)) {
            made.who = core::Id<core::Person>{who->id};
        }
        return made;
    };
    if (const auto* use = std::get_if<core::MaterialUse>(&record)) {
        if (use->lot && use->amount) {
            auto made = entry(*use->lot, core::LedgerKind::used, *use->amount);
            made.use = use->id;
            change.add(made);
        }
    } else if (const auto* part = std::get_if<core::LotPart>(&record)) {
        change.add(entry(part->source, core::LedgerKind::mixedOut, part->amount));
    }
}

void Teller::addUpdates(const Group& group, const Moment& moment, core::Change& change) {
    std::vector<core::Found> changed;
    const auto changing = [&](const std::string& name) -> core::Found& {
        core::Found found = stored(name, moment);
        const auto ref = core::refOf(found.record);
        const auto at = std::ranges::find_if(
            changed, [&](const core::Found& one) { return core::refOf(one.record) == ref; });
        return at != changed.end() ? *at : changed.emplace_back(std::move(found));
    };
    if (const auto updates = group.content->find("update"); updates != group.content->end()) {
        for (const auto& [name, fields] : updates->items()) {
            core::Found& found = changing(name);
            found.record = changedRecord(found.record, fields, moment);
        }
    }
    if (const auto move = group.content->find("moves"); move != group.content->end()) {
        core::Found& found = changing(moment.job);
        const auto from = std::get<core::Job>(found.record).state;
        const std::string to = move->at("to").get<std::string>();
        found.record = changedRecord(found.record, {{"state", to}}, moment);
        const Json told = {{"from_state", core::nameOf(from)},
                           {"to_state", to},
                           {"why", move->value("why", std::string{})}};
        change.add(
            readRecord({core::RecordKind::stateChange, &told,
                        core::RecordRef{core::RecordKind::stateChange, m_ids.nextUuid()}, nullptr},
                       m_defaults, moment));
    }
    for (core::Found& found : changed) {
        change.update(std::move(found.record), found.revision);
    }
}

core::Found Teller::stored(const std::string& name, const Moment& moment) const {
    const auto ref = m_names.find(moment.scope, name);
    auto found = ref ? m_store.find(*ref) : std::nullopt;
    if (!found) {
        throw DataError{"no record is named " + name + " yet"};
    }
    return *found;
}

} // namespace headcap::demo
