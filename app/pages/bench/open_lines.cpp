#include "app/pages/bench/open_lines.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/style.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr std::size_t kShown = 2; // the rest are in a list
constexpr int kWidest = 260;

QString needsOf(const core::ProposalLine& line) {
    QStringList said;
    if (line.minutes > core::Minutes{0}) {
        said << fromCore(core::toText(line.minutes));
    }
    said << fromCore(line.materials) << fromCore(line.description);
    said.removeAll({});
    return said.join(QStringLiteral(" · "));
}

} // namespace

OpenLines::OpenLines(QWidget* parent)
    : QWidget(parent), m_add(new QPushButton), m_lines(new QHBoxLayout) {
    m_add->setMinimumHeight(kBenchControl);
    m_add->setToolTip(tr("Logs a step with all its fields (%1)").arg(keyText(ActionId::addRecord)));
    connect(m_add, &QPushButton::clicked, this, &OpenLines::addAsked);
    m_lines->setSpacing(kGap);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, kGap);
    across->setSpacing(kGap);
    across->addWidget(m_add);
    across->addLayout(m_lines, 1);
    across->addStretch();
    setWriting(false);
}

void OpenLines::setWriting(bool isWriting) {
    m_add->setText(isWriting ? tr("Go on with the step") : tr("Log a step"));
}

void OpenLines::show(const core::JobFile& file) {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const auto lines = core::openLines(file);
    for (std::size_t i = 0; i < std::min(lines.size(), kShown); ++i) {
        addLine(*lines[i]);
    }
    if (lines.size() <= kShown) {
        return;
    }
    auto* rest = new QPushButton(tr("%1 more").arg(lines.size() - kShown));
    rest->setMinimumHeight(kBenchControl);
    rest->setToolTip(tr("Approved lines that no step carries out yet"));
    auto* menu = new QMenu(rest);
    for (std::size_t i = kShown; i < lines.size(); ++i) {
        connect(menu->addAction(fromCore(core::lineTitle(*lines[i]))), &QAction::triggered, this,
                [this, line = *lines[i]] { Q_EMIT lineChosen(line); });
    }
    rest->setMenu(menu);
    m_lines->addWidget(rest);
}

void OpenLines::addLine(const core::ProposalLine& line) {
    auto* button = new QPushButton;
    button->setMinimumHeight(kBenchControl);
    button->setMaximumWidth(kWidest);
    button->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    button->setMinimumWidth(24 * kGrid);
    const QString title = fromCore(core::lineTitle(line));
    button->setText(button->fontMetrics().elidedText(title, Qt::ElideRight, kWidest - 2 * kSpace));
    button->setAccessibleName(tr("Begin: %1").arg(title));
    button->setToolTip(tr("Begins “%1” now. %2").arg(title, needsOf(line)).trimmed());
    connect(button, &QPushButton::clicked, this, [this, line] { Q_EMIT lineChosen(line); });
    m_lines->addWidget(button);
}

} // namespace headcap::app
