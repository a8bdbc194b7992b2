#include "app/form/record_choices.h"

#include <QCoreApplication>

#include <map>

#include "core/custody/hazards.h"
#include "core/materials/shelf.h"
#include "core/materials/shelf_life.h"
#include "core/record/job_file.h"

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
        return person.active ? fromCore(person.name)
                             : QCoreApplication::translate("form", "%1, no longer here")
                                   .arg(fromCore(person.name));
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

Choices techniqueTerms(Session& session) {
    return [&session] {
        std::vector<Choice> choices;
        session.guarded([&] {
            const auto inForce = core::loadTechniques(session.records());
            for (const core::Technique& technique : inForce.offered()) {
                choices.push_back({technique.key, fromCore(technique.name)});
            }
        });
        return choices;
    };
}

QString volumeName(const core::Item& volume) {
    return fromCore(volume.volumeLabel.empty() ? volume.title : volume.volumeLabel);
}

Choices volumesOf(std::function<const core::JobFile*()> file) {
    return [file = std::move(file)] {
        std::vector<Choice> choices;
        if (const core::JobFile* now = file()) {
            for (const core::Item& part : now->parts) {
                choices.push_back({part.id.text(), volumeName(part)});
            }
        }
        return choices;
    };
}

namespace {

// How a lot stands with its date, where that is worth saying.
QString standingOf(const core::Lot& lot, const core::Material* kind, core::Day today) {
    switch (core::ageOf(lot, kind, today)) {
    case core::LotAge::overdue:
        return QStringLiteral(" · ") + QCoreApplication::translate("form", "past its date");
    case core::LotAge::nearDate:
        return QStringLiteral(" · ") + QCoreApplication::translate("form", "near its date");
    case core::LotAge::keeps:
    case core::LotAge::fresh:
        break;
    }
    return {};
}

} // namespace

Choices lotsOf(Session& session) {
    return [&session] {
        std::vector<Choice> choices;
        session.guarded([&] {
            std::map<core::Id<core::Material>, core::Material> kinds;
            for (auto& one : core::all<core::Material>(session.records())) {
                kinds.emplace(one.record.id, std::move(one.record));
            }
            for (const auto& one : core::all<core::Lot>(session.records())) {
                const core::Lot& lot = one.record;
                const auto kind = kinds.find(lot.material);
                const core::Material* known = kind == kinds.end() ? nullptr : &kind->second;
                if (!lot.finished) {
                    choices.push_back(
                        {lot.id.text(), fromCore(core::lotName(lot, known)) +
                                            standingOf(lot, known, session.clock().today())});
                }
            }
        });
        return choices;
    };
}

} // namespace headcap::app
