#include "app/shell/person_menu.h"

#include <QCoreApplication>
#include <QMenu>

#include "app/session/words.h"

namespace headcap::app {

QString personWords(const Session& session) {
    if (session.person()) {
        if (const auto person = core::find(session.records(), *session.person())) {
            return fromCore(person->record.name);
        }
    }
    return QCoreApplication::translate("people", "Who is working?");
}

bool popUpPeople(Session& session, QWidget& by) {
    auto* menu = new QMenu(&by);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    session.guarded([&] {
        for (const auto& one : core::all<core::Person>(session.records())) {
            if (!one.record.active) {
                continue;
            }
            QAction* choice = menu->addAction(fromCore(one.record.name));
            choice->setCheckable(true);
            choice->setChecked(session.person() == one.record.id);
            QObject::connect(choice, &QAction::triggered, &session,
                             [&session, id = one.record.id] { session.setPerson(id); });
        }
    });
    if (menu->isEmpty()) {
        delete menu;
        return false;
    }
    menu->popup(by.mapToGlobal(QPoint{0, by.height()}));
    return true;
}

} // namespace headcap::app
