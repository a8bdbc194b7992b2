// Tab goes as the eye reads: through a sheet's layouts in their order, whenever its controls were
// made.
#pragma once

class QWidget;

namespace headcap::app {

void tabAsSet(QWidget& sheet);

} // namespace headcap::app
