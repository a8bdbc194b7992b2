// The body of a view that is one scrolled page: its title, the line of what it is for, and below
// them what the view adds.
#pragma once

#include <QString>

class QVBoxLayout;
class QWidget;

namespace headcap::app {

[[nodiscard]] QVBoxLayout* scrolledPage(QWidget* view, const QString& title, const QString& purpose,
                                        int widest = 1280);
// The view is its sheet, scrolled where it is taller.
void scrollIn(QWidget* view, QWidget* sheet);
// A heading with its hair rule.
void addHeading(QVBoxLayout& down, const QString& words);

} // namespace headcap::app
