// What is still open, in the margin.
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/job_page.h"
#include "app/session/words.h"
#include "app/shell/margin.h"
#include "app/shell/margin_note.h"
#include "core/audit/point_groups.h"

namespace headcap::app {
namespace {

// Of several things that are open of one leaf: its name, and each on a line.
MarginNote* noteOf(const core::PointGroup& point) {
    const Ink ink = point.severity == core::AuditSeverity::mustSettle ? Ink::must : Ink::open;
    if (point.open.empty()) {
        return new MarginNote(fromCore(point.sentence), fromCore(point.source), ink);
    }
    QStringList open;
    for (const std::string& one : point.open) {
        open << QStringLiteral("– ") + fromCore(one);
    }
    auto* note = new MarginNote(fromCore(point.name), open.join(QLatin1Char('\n')), ink);
    note->setAccessibleName(fromCore(point.sentence));
    note->setToolTip(note->toolTip() + QLatin1Char('\n') + fromCore(point.source));
    return note;
}

} // namespace

void Margin::addPoints(std::span<const core::AuditPoint> points, core::Page page) {
    // Before it is issued, all that stands in the way is said in one place.
    const bool isReport = page == core::Page::report;
    addHeading(isReport ? tr("To settle before it is issued") : tr("Still open here"));
    int here = 0;
    std::array<int, 8> elsewhere{};
    for (const core::PointGroup& point : core::grouped(points)) {
        const bool isMust = point.severity == core::AuditSeverity::mustSettle;
        if (point.page != page && !(isReport && isMust)) {
            elsewhere[static_cast<std::size_t>(point.page)] += static_cast<int>(point.points());
            continue;
        }
        ++here;
        auto* note = noteOf(point);
        connect(note, &MarginNote::chosen, this,
                [this, ref = point.record, at = point.page] { Q_EMIT pointChosen(ref, at); });
        m_down->addWidget(note);
    }
    if (here == 0) {
        auto* nothing = new Label(Face::small, Ink::quiet,
                                  isReport ? tr("Nothing.") : tr("Nothing on this page."));
        nothing->setContentsMargins(kGap, 0, 0, 0);
        m_down->addWidget(nothing);
    }
    QStringList others;
    for (std::size_t i = 0; i < elsewhere.size(); ++i) {
        if (elsewhere[i] > 0) {
            others << tr("%1 %2").arg(titleOf(static_cast<core::Page>(i))).arg(elsewhere[i]);
        }
    }
    if (!others.isEmpty()) {
        auto* rest = new Label(Face::small, Ink::quiet,
                               tr("Elsewhere: %1").arg(others.join(QStringLiteral(", "))));
        rest->setWordWrap(true);
        rest->setContentsMargins(kGap, 0, 0, 0);
        m_down->addWidget(rest);
    }
}

} // namespace headcap::app
