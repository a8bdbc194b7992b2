#include "app/shell/person_menu.h"

#include <QAbstractButton>
#include <QActionGroup>
#include <QCoreApplication>
#include <QMenu>

#include "app/look/grid.h"
#include "app/session/actions.h"
#include "app/session/words.h"

namespace headcap::app {

Destination toAddPerson(Session& session) {
    return {.view = ViewId::workshop, .record = core::refOf(session.ids().next<core::Person>())};
}

QString personWords(Session& session) {
    QString words = QCoreApplication::translate("people", "Who is working?");
    session.guarded([&] {
        if (session.person()) {
            if (const auto person = core::find(session.records(), *session.person())) {
                words = QCoreApplication::translate("people", "At work: %1")
                            .arg(fromCore(person->record.name));
            }
        }
    });
    return words;
}

void popUpPeople(Session& session, QWidget& by, const std::function<void()>& toAdd) {
    auto* menu = new QMenu(&by);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    auto* oneOf = new QActionGroup(menu); // one person is at work here
    session.guarded([&] {
        for (const auto& one : core::all<core::Person>(session.records())) {
            if (!one.record.active) {
                continue;
            }
            QAction* choice = menu->addAction(
                fromCore(one.record.name).replace(u'&', QLatin1String("&&"))); // no mnemonic
            choice->setCheckable(true);
            oneOf->addAction(choice);
            choice->setChecked(session.person() == one.record.id);
            QObject::connect(choice, &QAction::triggered, &session,
                             [&session, id = one.record.id] { session.setPerson(id); });
        }
    });
    QAction* add = menu->addAction(QCoreApplication::translate("people", "Add a person …"));
    QObject::connect(add, &QAction::triggered, &by, toAdd);
    // Under the button that says who works; else in the upper right, over no field and no caution.
    const bool isButton = qobject_cast<QAbstractButton*>(&by) != nullptr;
    const QPoint under{0, by.height()};
    const QPoint corner{by.width() - menu->sizeHint().width() - kPageMargin, 28 * kGrid};
    menu->popup(by.mapToGlobal(isButton ? under : corner));
    menu->setActiveAction(menu->actions().front()); // Enter takes it
}

} // namespace headcap::app
