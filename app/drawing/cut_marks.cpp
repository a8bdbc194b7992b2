#include "app/drawing/cut_marks.h"

#include <algorithm>
#include <cmath>

namespace headcap::app {
namespace {

constexpr double kTall = 18;
constexpr double kApart = 2;
constexpr double kTick = 5;
constexpr double kStep = 6;          // in which a free place is looked for
constexpr double kFarthest = 8 * 14; // of a leader

QString wordsOf(const core::CutStep& step) {
    return step.times() == 1 ? QString::number(step.first)
                             : QStringLiteral("%1–%2").arg(step.first).arg(step.last);
}

QSizeF pillOf(const QString& words, const QFontMetricsF& metrics) {
    return {std::max(kTall, metrics.horizontalAdvance(words) + 9), kTall};
}

// Along one edge: each as near to its own place as the others let it.
std::vector<double> spread(const std::vector<double>& wanted, const std::vector<double>& widths) {
    struct Cluster {
        std::size_t first;
        double offsets, count; // the mean of what its members want, counted from its beginning
        double width;
        [[nodiscard]] double begin() const { return offsets / count; }
    };
    std::vector<Cluster> clusters;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        clusters.push_back({i, wanted[i] - widths[i] / 2, 1, widths[i] + kApart});
        while (clusters.size() > 1) {
            const Cluster last = clusters.back();
            Cluster& before = clusters[clusters.size() - 2];
            if (before.begin() + before.width <= last.begin()) {
                break;
            }
            before.offsets += last.offsets - last.count * before.width;
            before.count += last.count;
            before.width += last.width;
            clusters.pop_back();
        }
    }
    std::vector<double> at;
    for (std::size_t c = 0; c < clusters.size(); ++c) {
        const std::size_t end = c + 1 < clusters.size() ? clusters[c + 1].first : wanted.size();
        double x = clusters[c].begin();
        for (std::size_t i = clusters[c].first; i < end; ++i) {
            at.push_back(x + widths[i] / 2);
            x += widths[i] + kApart;
        }
    }
    return at;
}

} // namespace

CutMarks::CutMarks(const core::StockSheet& sheet, std::vector<core::SheetCut> cuts,
                   std::vector<core::CutStep> steps, const Frame& frame, const QFont& font)
    : m_cuts(std::move(cuts)), m_steps(std::move(steps)), m_frame(frame),
      m_whole(frame.of(core::CutRect{{}, {}, sheet.width, sheet.height})), m_metrics(font) {}

double CutMarks::roomBeside(const core::CutProblem& problem, const core::CutPlan& plan,
                            const QFont& font) {
    const QFontMetricsF metrics{font};
    double widest = kTall;
    for (const core::SheetPlace& on : sheetsCut(plan)) {
        for (const core::CutStep& step : core::cutSteps(problem, plan, on)) {
            if (step.axis == core::CutAxis::y) {
                widest = std::max(widest, pillOf(wordsOf(step), metrics).width());
            }
        }
    }
    return std::ceil(widest) + 2 * kTick;
}

QSizeF CutMarks::sizeOf(const QString& words) const {
    return pillOf(words, m_metrics);
}

QLineF CutMarks::lineOf(const core::SheetCut& cut) const {
    return cut.axis == core::CutAxis::x
               ? QLineF{m_frame.of(cut.at, cut.from), m_frame.of(cut.at, cut.to)}
               : QLineF{m_frame.of(cut.from, cut.at), m_frame.of(cut.to, cut.at)};
}

CutMarks::Side CutMarks::sideOf(const core::CutStep& step) const {
    const QLineF line = lineOf(cut(step.first));
    const bool isX = step.axis == core::CutAxis::x;
    const double near = isX ? line.y1() - m_whole.top() : line.x1() - m_whole.left();
    const double far = isX ? m_whole.bottom() - line.y2() : m_whole.right() - line.x2();
    return near < 1 ? Side::before : far < 1 ? Side::after : Side::inside;
}

void CutMarks::placeOutside(core::CutAxis axis, Side side, std::vector<CutMark>& marks) const {
    const bool isX = axis == core::CutAxis::x;
    struct Wanted {
        const core::CutStep* step;
        double from, to;
    };
    std::vector<Wanted> all;
    for (const core::CutStep& step : m_steps) {
        if (step.axis == axis && sideOf(step) == side) {
            const QPointF from = lineOf(cut(step.first)).p1();
            const QPointF to = lineOf(cut(step.last)).p1();
            all.push_back({&step, isX ? from.x() : from.y(), isX ? to.x() : to.y()});
        }
    }
    std::ranges::sort(all, {}, [](const Wanted& one) { return one.from + one.to; });
    std::vector<double> wanted, widths;
    for (const Wanted& one : all) {
        const QSizeF size = sizeOf(wordsOf(*one.step));
        wanted.push_back((one.from + one.to) / 2);
        widths.push_back(isX ? size.width() : size.height());
    }
    const std::vector<double> at = spread(wanted, widths);
    const bool isBefore = side == Side::before;
    const double edge = isX ? (isBefore ? m_whole.top() : m_whole.bottom())
                            : (isBefore ? m_whole.left() : m_whole.right());
    const double away = isBefore ? -1 : 1;
    const auto point = [&](double along, double out) {
        return isX ? QPointF{along, edge + away * out} : QPointF{edge + away * out, along};
    };
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QString words = wordsOf(*all[i].step);
        const QSizeF size = sizeOf(words);
        const double reach = isX ? size.height() : size.width();
        CutMark mark{words, {}, {}};
        mark.box = QRectF{{}, size};
        mark.box.moveCenter(point(at[i], 2 * kTick - 1 + reach / 2));
        for (int order = all[i].step->first; order <= all[i].step->last; ++order) {
            const QPointF end = lineOf(cut(order)).p1();
            mark.lines.emplace_back(point(isX ? end.x() : end.y(), 0),
                                    point(isX ? end.x() : end.y(), kTick));
        }
        mark.lines.emplace_back(point(all[i].from, kTick), point(all[i].to, kTick));
        mark.lines.emplace_back(point(wanted[i], kTick), point(at[i], 2 * kTick - 1));
        marks.push_back(std::move(mark));
    }
}

bool CutMarks::isFree(const QRectF& box, const std::vector<QRectF>& taken,
                      const core::CutStep* step) const {
    const QRectF grown = box.adjusted(-1, -1, 1, 1);
    if (!m_whole.contains(box) ||
        std::ranges::any_of(taken, [&](const QRectF& other) { return other.intersects(grown); })) {
        return false;
    }
    return step == nullptr || std::ranges::none_of(m_cuts, [&](const core::SheetCut& other) {
               const QLineF line = lineOf(other);
               const QRectF along =
                   QRectF{line.p1(), line.p2()}.normalized().adjusted(-1, -1, 1, 1);
               return (other.order < step->first || other.order > step->last) &&
                      along.intersects(grown);
           });
}

CutMark CutMarks::inside(const core::CutStep& step, const std::vector<QRectF>& taken) const {
    const bool isX = step.axis == core::CutAxis::x;
    const QLineF first = lineOf(cut(step.first));
    const QLineF last = lineOf(cut(step.last));
    const double length = first.length();
    CutMark mark{wordsOf(step), {}, {}};
    const QSizeF size = sizeOf(mark.words);
    const double half = (isX ? size.height() : size.width()) / 2 + 1;
    const auto boxAt = [&](double along, double aside) {
        QRectF box{{}, size};
        const QPointF begin = (first.p1() + last.p1()) / 2;
        box.moveCenter(begin + (isX ? QPointF{aside, along} : QPointF{along, aside}));
        return box;
    };
    double at = half;
    double off = 0;
    const auto look = [&](bool clearOfCuts, double farthest) {
        for (double aside = 0; aside <= farthest; aside += kStep) {
            for (double along = half; along <= std::max(half, length - half); along += kStep) {
                for (const double side : {aside, -aside}) {
                    if (isFree(boxAt(along, side), taken, clearOfCuts ? &step : nullptr)) {
                        at = along;
                        off = side;
                        return true;
                    }
                }
            }
        }
        return false;
    };
    [[maybe_unused]] const bool isFound =
        look(true, 0) || look(true, kFarthest) || look(false, 0) || look(false, kFarthest);
    mark.box = boxAt(at, off);
    if (step.times() > 1) {
        const QPointF down = isX ? QPointF{0, at} : QPointF{at, 0};
        mark.lines.emplace_back(first.p1() + down, last.p1() + down);
    }
    if (off != 0) {
        mark.lines.emplace_back(boxAt(at, 0).center(), mark.box.center());
    }
    return mark;
}

std::vector<CutMark> CutMarks::placed(std::vector<QRectF> taken) const {
    std::vector<CutMark> marks;
    for (const core::CutAxis axis : {core::CutAxis::x, core::CutAxis::y}) {
        for (const Side side : {Side::before, Side::after}) {
            placeOutside(axis, side, marks);
        }
    }
    for (const core::CutStep& step : m_steps) {
        if (sideOf(step) == Side::inside) {
            marks.push_back(inside(step, taken));
            taken.push_back(marks.back().box);
        }
    }
    return marks;
}

} // namespace headcap::app
