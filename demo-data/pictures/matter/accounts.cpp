// A page of a day-book: ruled in faint red, kept in iron-gall ink, with sums in three columns.
#include <array>
#include <cmath>

#include "demo-data/pictures/matter/hand.h"
#include "demo-data/pictures/matter/matter.h"

namespace headcap::demo {
namespace {

constexpr std::array kColumns{0.155, 0.795, 0.86, 0.915};

void rule(QPainter& painter, const QSizeF& leaf) {
    painter.setPen(QPen(painter.pen().color(), 0.22));
    for (const double column : kColumns) {
        const double x = column * leaf.width();
        painter.drawLine(QPointF{x, leaf.height() * 0.055},
                         QPointF{x + 0.3, leaf.height() * 0.975});
    }
    const double y = leaf.height() * 0.105;
    painter.drawLine(QPointF{leaf.width() * 0.04, y}, QPointF{leaf.width() * 0.96, y});
    painter.drawLine(QPointF{leaf.width() * 0.04, y + 0.9}, QPointF{leaf.width() * 0.96, y + 0.9});
}

void writeSum(QPainter& painter, const QSizeF& leaf, double y, const Pen& pen, Seed seed) {
    const auto figure = [&](int most, int salt) {
        return QString::number(
            static_cast<int>(chanceAt(seed, salt, 9) * static_cast<float>(most)));
    };
    const std::array sums{figure(40, 1), figure(20, 2), figure(12, 3)};
    for (std::size_t i = 0; i < sums.size(); ++i) {
        const double right = i + 2 < kColumns.size() ? kColumns[i + 2] : 0.965;
        writeLine(painter, sums[i], pen,
                  right * leaf.width() - writtenWidth(sums[i], pen) - leaf.width() * 0.012, y,
                  seed + static_cast<Seed>(i));
    }
}

} // namespace

void drawAccounts(QPainter& painter, const Json& accounts, const QSizeF& leaf, Ink ink, Seed seed) {
    if (ink == Ink::red) {
        if (!accounts.value("plain", false)) {
            rule(painter, leaf);
        }
        return;
    }
    if (ink != Ink::ironGall) {
        return;
    }
    const bool plain = accounts.value("plain", false);
    const double tall = leaf.height() / (plain ? 78 : 112);
    const Pen pen{tall, tall * 0.2, 0.42};
    const Pen large{tall * (plain ? 1.25 : 1.5), tall * 0.25, 0.42};
    const QString heading = textOf(accounts, "heading");
    writeLine(painter, heading, large, (leaf.width() - writtenWidth(heading, large)) / 2,
              leaf.height() * 0.085, seed);
    double y = leaf.height() * 0.145;
    const double pitch = leaf.height() * (plain ? 0.055 : 0.0385);
    const Json& entries = accounts.at("entries");
    const std::size_t from = accounts.value("from", std::size_t{0});
    // A page of accounts is filled to its foot; a text ends.
    for (std::size_t row = 0; y < leaf.height() * 0.955 && !(plain && row == entries.size());
         ++row) {
        const auto entry =
            QString::fromStdString(entries[(from + row) % entries.size()].get<std::string>());
        const Seed line = mixed(seed, static_cast<Seed>(row) + 3);
        const bool under = entry.startsWith(QLatin1Char('>'));
        if (!under && !plain && row % 4 == 0) {
            writeLine(painter, QString::number(2 + row), pen, leaf.width() * 0.075, y, line);
        }
        const double x = leaf.width() * ((plain ? 0.10 : 0.175) + (under ? 0.04 : 0));
        writeLine(painter, under ? entry.mid(1) : entry, pen, x, y, line);
        if (!under && !plain) {
            writeSum(painter, leaf, y, pen, mixed(line, 2));
        }
        y += pitch * (0.97 + 0.06 * static_cast<double>(chanceAt(line, 1, 1)));
    }
}

} // namespace headcap::demo
