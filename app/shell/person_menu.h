// Who is working here: chosen once, and every change and step carries the name.
#pragma once

#include <functional>

#include "app/session/session.h"
#include "app/shell/view.h"

class QWidget;

namespace headcap::app {

// Where somebody is entered who works here.
[[nodiscard]] Destination toAddPerson(Session& session);
// The name of who is working, or the question.
[[nodiscard]] QString personWords(Session& session);
// The people of the workshop, to choose from, under a button or in the corner of a view; and the
// way to where they are entered.
void popUpPeople(Session& session, QWidget& by, const std::function<void()>& toAdd);

} // namespace headcap::app
