#include "app/shell/workshop_view.h"

#include <map>

#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/look/scrolled_page.h"
#include "app/pages/proposal/tax_row.h"
#include "app/session/actions.h"
#include "app/stock/ways_on.h"

namespace headcap::app {

WorkshopView::WorkshopView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_edits(session),
      m_workshop(new RecordForm<core::Workshop>(session, tr("Workshop"))),
      m_people(new RecordList<core::Person>(
          session, m_edits,
          {tr("People"), tr("Add a person"),
           tr("Everybody who works here: each step, move and change carries a name.")},
          tr("Person"))) {
    buildForms();
    auto* down = scrolledPage(this, title(),
                              tr("As letters and reports name it, and who works here."), 1120);
    down->addSpacing(kGap);
    down->addWidget(new WaysOn(
        *this, {{ActionId::techniques, ViewId::techniques}, {ActionId::backups, ViewId::backups}}));
    addHeading(*down, tr("The workshop"));
    down->addWidget(m_workshop);
    down->addSpacing(kSection);
    down->addWidget(m_people);
    down->addSpacing(kSection);
    addFolder(*down);
    down->addStretch(1);
}

void WorkshopView::addFolder(QVBoxLayout& down) {
    auto* other = quietButton(wordsOf(ActionId::otherWorkshop) + QStringLiteral(" …"),
                              tipOf(ActionId::otherWorkshop));
    connect(other, &QPushButton::clicked, this, [this] { Q_EMIT otherWorkshopAsked({}); });
    auto* head = new QHBoxLayout;
    head->addWidget(new Label(Face::heading, Ink::ink, tr("Where it lies")), 1);
    head->addWidget(other);
    auto* folder = new Label(Face::body, Ink::ink,
                             QString::fromStdString(m_session.stores().upkeep.folder().string()));
    folder->setAccessibleName(tr("The folder of this workshop"));
    folder->setTextInteractionFlags(Qt::TextSelectableByMouse);
    down.addLayout(head);
    down.addWidget(new HairRule);
    down.addSpacing(kGap);
    down.addWidget(folder);
}

void WorkshopView::buildForms() {
    m_workshop->text(tr("Name"), &core::Workshop::name);
    m_workshop->text(tr("Telephone"), &core::Workshop::telephone);
    m_workshop->text(tr("Email"), &core::Workshop::email);
    m_workshop->text(tr("Currency"), &core::Workshop::currency).tip(tr("ISO 4217: EUR, GBP, USD"));
    m_workshop->lines(tr("Address"), &core::Workshop::address);
    m_workshop->lines(tr("Letterhead"), &core::Workshop::letterheadNote)
        .placeholder(tr("membership, registration"));
    m_workshop->value(tr("An hour"), &core::Workshop::hourlyRate)
        .placeholder(tr("what an hour of work costs"));
    bindTax(*m_workshop, &core::Workshop::taxPpm);
    m_workshop->check(tr("Rounding"), tr("tax line by line, or else on the sum"),
                      &core::Workshop::taxPerLine);
    m_workshop->lines(tr("Terms"), &core::Workshop::terms)
        .placeholder(tr("what every proposal says at its foot"));
    m_edits.watch(m_workshop);

    auto& form = m_people->form();
    form.text(tr("Name"), &core::Person::name);
    form.text(tr("Initials"), &core::Person::initials);
    form.text(tr("Role"), &core::Person::role).placeholder(tr("as the report names it"));
    form.check(tr("Works here"), tr("now"), &core::Person::active);
    form.lines(tr("Note"), &core::Person::note);
    m_people->describe = [](const core::Person& person) {
        return RowWords{.mark = fromCore(person.initials),
                        .title = fromCore(person.name),
                        .right = person.active ? fromCore(person.role) : tr("no longer here")};
    };
    m_people->make = [this]() -> std::optional<core::Person> {
        return core::Person{.id = m_session.ids().next<core::Person>()};
    };
    m_edits.alignLabels();
}

bool WorkshopView::enter(const Destination& destination) {
    refresh();
    if (destination.record && destination.record->kind == core::RecordKind::person) {
        m_people->startNew();
    } else {
        m_workshop->focusFirst();
    }
    return true;
}

void WorkshopView::refresh() {
    m_session.guarded([this] {
        const auto workshops = core::all<core::Workshop>(m_session.records());
        if (!workshops.empty()) {
            m_workshop->show(workshops.front().record, workshops.front().revision);
        } else if (!m_workshop->record()) {
            m_workshop->showDraft({.id = m_session.ids().next<core::Workshop>()});
        }
        std::vector<core::Person> people;
        std::map<core::Id<core::Person>, core::Revision> revisions;
        for (const auto& one : core::all<core::Person>(m_session.records())) {
            people.push_back(one.record);
            revisions[one.record.id] = one.revision;
        }
        m_people->show(people, [&](const core::Person& p) { return revisions.at(p.id); });
        // The first who is entered is the one who is working.
        if (!m_session.person() && people.size() == 1) {
            m_session.setPerson(people.front().id);
        }
    });
}

} // namespace headcap::app
