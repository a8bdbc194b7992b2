#include "app/shell/keys_view.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/collation/leaf_sheet_view.h"
#include "app/pages/collation/walk_keys.h"
#include "app/session/actions.h"
#include "app/session/actions_by_key.h"

namespace headcap::app {
namespace {

QString headingOf(Place place) {
    switch (place) {
    case Place::everywhere:
        return KeysView::tr("Everywhere");
    case Place::worklist:
        return KeysView::tr("On the worklist");
    case Place::job:
        return KeysView::tr("In a job");
    case Place::list:
        return KeysView::tr("In a list");
    case Place::day:
        return KeysView::tr("In the day’s work");
    case Place::backups:
        return KeysView::tr("On the page of backups");
    }
    return {};
}

QGridLayout* beginGroup(QVBoxLayout& column, const QString& heading) {
    column.addWidget(new Label(Face::heading, Ink::ink, heading));
    column.addWidget(new HairRule);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(kSpace);
    grid->setVerticalSpacing(kGrid);
    grid->setContentsMargins(0, kGap, 0, kSection);
    grid->setColumnStretch(1, 1);
    return grid;
}

void addWalk(QVBoxLayout& column) {
    QGridLayout* grid = beginGroup(column, KeysView::tr("Going through a book, leaf by leaf"));
    int row = 0;
    const auto add = [&](const QString& key, const QString& words) {
        auto* shown = new Label(Face::smallStrong, Ink::accent, key);
        shown->setMinimumWidth(120);
        grid->addWidget(shown, row, 0);
        grid->addWidget(new Label(Face::small, Ink::ink, words), row, 1);
        ++row;
    };
    add(QLatin1String(kBeginWalkKey), KeysView::tr("Go through the book, on its collation page"));
    for (const WalkKey& key : walkKeys()) {
        add(keyText(key), wordsOf(key));
    }
    column.addLayout(grid);
}

void addSheet(QVBoxLayout& column) {
    QGridLayout* grid = beginGroup(column, KeysView::tr("The sheet of leaves"));
    int row = 0;
    for (const SheetKey& key : sheetKeys()) {
        auto* shown = new Label(Face::smallStrong, Ink::accent, QLatin1String(key.key));
        shown->setMinimumWidth(120);
        grid->addWidget(shown, row, 0);
        grid->addWidget(new Label(Face::small, Ink::ink, wordsOf(key)), row, 1);
        ++row;
    }
    column.addLayout(grid);
}

void addGroup(QVBoxLayout& column, Place place) {
    QGridLayout* grid = beginGroup(column, headingOf(place));
    int row = 0;
    for (const ActionEntry* entry : actionsByKey(place)) {
        auto* key = new Label(Face::smallStrong, Ink::accent, keyText(entry->id));
        key->setMinimumWidth(120);
        auto* words = new Label(Face::small, Ink::ink, wordsOf(entry->id));
        words->setToolTip(tipOf(entry->id));
        grid->addWidget(key, row, 0);
        grid->addWidget(words, row, 1);
        ++row;
    }
    column.addLayout(grid);
}

} // namespace

KeysView::KeysView(QWidget* parent) : View(parent) {
    auto* sheet = new QWidget;
    auto* down = new QVBoxLayout(sheet);
    down->setContentsMargins(15 * kGrid, 8 * kGrid, 15 * kGrid, kSection);
    down->addWidget(new Label(Face::title, Ink::ink, tr("Keys")));
    down->addWidget(new Label(Face::small, Ink::quiet,
                              tr("Tab goes on, Shift+Tab back, Esc steps back. Nothing is lost.")));
    down->addSpacing(kSpace);
    auto* across = new QHBoxLayout;
    across->setSpacing(15 * kGrid);
    auto* left = new QVBoxLayout;
    left->setSpacing(kGrid); // not that of the layout around it
    addGroup(*left, Place::everywhere);
    addWalk(*left);
    addSheet(*left);
    left->addStretch(1);
    auto* right = new QVBoxLayout;
    right->setSpacing(kGrid);
    addGroup(*right, Place::job);
    addGroup(*right, Place::worklist);
    addGroup(*right, Place::list);
    addGroup(*right, Place::day);
    addGroup(*right, Place::backups);
    right->addStretch(1);
    across->addLayout(left, 1);
    across->addLayout(right, 1);
    down->addLayout(across);
    down->addStretch(1);

    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(sheet);
    scroll->setAccessibleName(tr("Keys"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    setFocusProxy(scroll);
}

bool KeysView::enter(const Destination&) {
    setFocus(Qt::OtherFocusReason);
    return true;
}

} // namespace headcap::app
