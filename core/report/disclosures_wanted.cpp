#include <set>

#include "core/report/wanted.h"

namespace headcap::core {
namespace {

using report::Wanted;

void wantOpen(Wanted& wanted, const JobFile& file) {
    for (const Hazard& hazard : file.hazards) {
        if (hazard.state == HazardState::notTested || hazard.state == HazardState::suspected) {
            wanted.say("disclosures_f", hazard);
        }
    }
    for (const FollowUp& followUp : file.followUps) {
        if (!followUp.doneOn) {
            wanted.say("disclosures_f", followUp, {followUp.what, followUp.why});
        }
    }
}

void wantPeople(Wanted& wanted, const JobFile& file) {
    std::set<Id<Person>> people;
    for (const Step& step : file.steps) {
        people.insert(step.who);
    }
    const auto also = [&](const auto& records) {
        for (const auto& record : records) {
            if (record.who) {
                people.insert(*record.who);
            }
        }
    };
    also(file.examinations);
    also(file.tests);
    also(file.collations);
    also(file.collationFindings);
    also(file.walks);
    also(file.proposals);
    for (const Id<Person>& id : people) {
        if (const Person* person = file.person(id)) {
            wanted.say("people", *person, {person->name});
        }
    }
}

} // namespace

std::string report::trimmed(const std::string& text) {
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(kBlanks);
    return begin == std::string::npos
               ? ""
               : text.substr(begin, text.find_last_not_of(kBlanks) - begin + 1);
}

std::string report::lotNumber(const JobFile& file, const std::optional<Id<Lot>>& id) {
    const Lot* lot = file.lot(id);
    return lot ? lot->number : "";
}

std::vector<Disclosure> disclosuresOf(const JobFile& file) {
    Wanted wanted;
    report::wantBook(wanted, file);
    report::wantTreatment(wanted, file);
    report::wantLeaves(wanted, file);
    wantOpen(wanted, file);
    for (const Photograph& photograph : file.photographs) {
        if (photograph.inReport) {
            wanted.say("figures", photograph, {photograph.caption, photograph.place});
        }
    }
    wantPeople(wanted, file);
    return wanted.take();
}

} // namespace headcap::core
