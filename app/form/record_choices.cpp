#include "app/form/record_choices.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/session/session.h"
#include "app/session/words.h"
#include "core/custody/hazards.h"
#include "core/custody/owner_words.h"
#include "core/materials/ledger_in_brief.h"
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

namespace {

constexpr std::size_t kOffered = 30;

std::vector<core::Item> newestBooks(const core::Stores& stores) {
    std::vector<core::Item> books;
    for (const core::JobLine& line : stores.jobs.page(0, kOffered)) {
        const auto job = core::find(stores.records, line.id);
        auto book = job ? core::find(stores.records, job->record.item) : std::nullopt;
        if (book && std::ranges::find(books, book->record.id, &core::Item::id) == books.end()) {
            books.push_back(std::move(book->record));
        }
    }
    return books;
}

std::vector<core::Item> booksWith(const core::Stores& stores, std::string_view words) {
    std::vector<core::Item> books;
    for (const core::RecordRef& ref :
         stores.search.findOf(core::RecordKind::item, words, kOffered)) {
        auto found = core::find(stores.records, core::Id<core::Item>{ref.id});
        if (found && !found->record.partOf) {
            books.push_back(std::move(found->record));
        }
    }
    return books;
}

// The title in what was offered, "title, date · owner": the index knows no dates.
QString titleIn(const QString& offered) {
    const QString heading = offered.section(QStringLiteral(" · "), 0, 0);
    const auto comma = heading.lastIndexOf(QStringLiteral(", "));
    return comma > 0 ? heading.left(comma) : heading;
}

// Without one twice. Those of one name hold the same words, and are found together.
std::vector<core::Owner> ownersWith(const core::Stores& stores, const QString& typed) {
    std::vector<core::Owner> owners;
    const auto addNamed = [&](const std::string& name) {
        for (auto& one : stores.records.allWith(core::RecordKind::owner, "name", name)) {
            owners.push_back(std::get<core::Owner>(std::move(one.record)));
        }
    };
    if (typed.trimmed().isEmpty()) {
        for (const std::string& name :
             stores.records.lately(core::RecordKind::owner, "name", kOffered)) {
            addNamed(name);
        }
        return owners;
    }
    // As it stands in the records, though the index parts words otherwise.
    addNamed(toCore(typed.trimmed()));
    for (const core::RecordRef& ref :
         stores.search.findOf(core::RecordKind::owner, toCore(typed), kOffered)) {
        const core::Id<core::Owner> id{ref.id};
        const auto owner = core::find(stores.records, id);
        if (owner && std::ranges::find(owners, id, &core::Owner::id) == owners.end()) {
            owners.push_back(owner->record);
        }
    }
    return owners;
}

} // namespace

std::vector<Choice> booksLike(Session& session, const QString& typed) {
    std::vector<Choice> choices;
    session.guarded([&] {
        const core::Stores& stores = session.stores();
        auto books =
            typed.trimmed().isEmpty() ? newestBooks(stores) : booksWith(stores, toCore(typed));
        if (books.empty()) {
            books = booksWith(stores, toCore(titleIn(typed)));
        }
        for (const core::Item& book : books) {
            const auto owner = core::find(stores.records, book.owner);
            choices.push_back(
                {book.id.text(), dotted({fromCore(core::headingOf(book)),
                                         owner ? fromCore(owner->record.name) : QString{}})});
        }
    });
    return choices;
}

std::vector<Choice> ownersLike(Session& session, const QString& typed) {
    std::vector<Choice> choices;
    session.guarded([&] {
        const auto owners = ownersWith(session.stores(), typed);
        for (const core::Owner& owner : owners) {
            choices.push_back({owner.id.text(), fromCore(core::ownerWords(owner, owners))});
        }
    });
    return choices;
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
            const auto shelf = core::shelfInBrief(session.records());
            for (const core::Lot& lot : shelf->lots) {
                if (!lot.finished) {
                    const core::Material* kind = shelf->material(lot.material);
                    choices.push_back(
                        {lot.id.text(), fromCore(core::lotName(lot, kind)) +
                                            standingOf(lot, kind, session.clock().today())});
                }
            }
        });
        return choices;
    };
}

} // namespace headcap::app
