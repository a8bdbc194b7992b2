// Who is working here: chosen once, and every change and step carries the name.
#pragma once

#include "app/session/session.h"

class QWidget;

namespace headcap::app {

// The name of who is working, or the question.
[[nodiscard]] QString personWords(const Session& session);
// The people of the workshop, to choose from, by the widget; false where there is nobody yet.
bool popUpPeople(Session& session, QWidget& by);

} // namespace headcap::app
