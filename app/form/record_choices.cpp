#include "app/form/record_choices.h"

#include <map>

#include "core/custody/hazards.h"
#include "core/record/job_file.h"
#include "core/treatment/techniques.h"

namespace headcap::app {
namespace {

template <class Record, class Words>
Choices of(Session& session, Words words) {
    return [&session, words] {
        std::vector<Choice> choices;
        session.guarded([&] {
            for (const auto& one : core::all<Record>(session.records())) {
                const QString text = words(one.record);
                if (!text.isEmpty()) {
                    choices.push_back({one.record.id.text(), text});
                }
            }
        });
        return choices;
    };
}

} // namespace

Choices peopleOf(Session& session) {
    return of<core::Person>(session, [](const core::Person& person) {
        return person.active ? fromCore(person.name) : QString{};
    });
}

Choices ownersOf(Session& session) {
    return of<core::Owner>(session, [](const core::Owner& owner) { return fromCore(owner.name); });
}

Choices booksOf(Session& session) {
    return of<core::Item>(session, [](const core::Item& item) {
        return item.partOf ? QString{} : fromCore(core::headingOf(item));
    });
}

Choices hazardTerms() {
    return [] {
        std::vector<Choice> choices;
        for (const core::HazardKind& kind : core::hazardKinds()) {
            choices.push_back({kind.key, fromCore(kind.name)});
        }
        return choices;
    };
}

Choices techniqueTerms() {
    return [] {
        std::vector<Choice> choices;
        for (const core::Technique& technique : core::techniques()) {
            choices.push_back({technique.key, fromCore(technique.name)});
        }
        return choices;
    };
}

Choices lotsOf(Session& session) {
    return [&session] {
        std::vector<Choice> choices;
        session.guarded([&] {
            std::map<core::Id<core::Material>, std::string> names;
            for (const auto& one : core::all<core::Material>(session.records())) {
                names.emplace(one.record.id, one.record.name);
            }
            for (const auto& one : core::all<core::Lot>(session.records())) {
                if (!one.record.finished) {
                    choices.push_back(
                        {one.record.id.text(),
                         QStringLiteral("%1, %2").arg(fromCore(one.record.number),
                                                      fromCore(names[one.record.material]))});
                }
            }
        });
        return choices;
    };
}

} // namespace headcap::app
