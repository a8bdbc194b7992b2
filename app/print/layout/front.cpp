#include "app/print/layout/front.h"

#include <algorithm>
#include <utility>

#include <QDate>
#include <QLocale>

#include "app/print/layout/page_setup.h"
#include "app/print/layout/row_slabs.h"
#include "app/print/layout/types.h"

namespace headcap::app::print {

namespace {

constexpr double kPlateWidth = mm(26); // of the mark that says DRAFT

void put(Slab& slab, const SetText& text, double left, double top) {
    for (const TextLine& line : text.lines) {
        slab.marks.push_back(moved(line, {left, top}));
    }
}

// The house on the left, how to reach it on the right, a double rule below.
Slab letterheadSlab(Flow& flow, const core::Letterhead& letterhead) {
    Slab slab;
    const SetText name = setText(fromUtf8(letterhead.name), kHouse, mm(100));
    noteSigns(flow, name.signsWithoutFace);
    put(slab, name, 0, 0);
    double right = 4;
    for (const std::string& line : letterhead.lines) {
        const SetText text = setText(fromUtf8(line), kFurniture, mm(70), Align::right);
        noteSigns(flow, text.signsWithoutFace);
        put(slab, text, mm(104), right);
        right += text.height();
    }
    const double rule = std::max(name.height(), right) + 7;
    slab.marks.emplace_back(Rule{{0, rule}, {kBlockWidth, rule}, 1.4, Ink::text});
    slab.marks.emplace_back(Rule{{0, rule + 2.4}, {kBlockWidth, rule + 2.4}, kHair, Ink::text});
    slab.height = rule + 2.4;
    return slab;
}

void putDraftPlate(Slab& slab, double top) {
    const double left = kBlockWidth - kPlateWidth;
    const double height = 20;
    slab.marks.emplace_back(Frame{{left, top, kPlateWidth, height}, 0.8, Ink::warning});
    put(slab, setText(QStringLiteral("DRAFT"), kDraft, kPlateWidth, Align::centre), left, top + 4);
}

Slab titleSlab(Flow& flow, const core::Document& document) {
    Slab slab;
    const double titleWidth = kBlockWidth - (document.isDraft ? kPlateWidth + mm(6) : 0);
    const SetText title = setText(fromUtf8(document.title), kTitle, titleWidth);
    const SetText subtitle = setText(fromUtf8(document.subtitle), kSubtitle, mm(150));
    noteSigns(flow, title.signsWithoutFace + subtitle.signsWithoutFace);
    put(slab, title, 0, 0);
    put(slab, subtitle, 0, title.height() + 4);
    if (document.isDraft) {
        putDraftPlate(slab, 9);
    }
    slab.height = title.height() + 4 + subtitle.height();
    return slab;
}

QString byLabel(const core::Document& document) {
    return document.title == "Treatment report" ? QStringLiteral("Report by")
                                                : QStringLiteral("By");
}

// Small labels with what belongs to them, in a row.
Slab particularsSlab(Flow& flow, const core::Document& document) {
    std::vector<std::pair<QString, QString>> all{
        {QStringLiteral("Job"), fromUtf8(document.jobNumber)},
        {QStringLiteral("Date"), dateText(document)},
        {QStringLiteral("Standing"), standingText(document)},
        {byLabel(document), fromUtf8(document.author)},
    };
    std::erase_if(all, [](const auto& one) { return one.second.isEmpty(); });
    const std::vector<double> lefts{0, mm(48), mm(92), mm(136)};
    Slab slab;
    slab.marks.emplace_back(Rule{{0, 0}, {kBlockWidth, 0}, kHair, Ink::rule});
    double lowest = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double right = i + 1 < lefts.size() ? lefts[i + 1] - mm(4) : kBlockWidth;
        const SetText value = setText(all[i].second, kBody, right - lefts[i]);
        noteSigns(flow, value.signsWithoutFace);
        put(slab, setText(all[i].first, kColumnHead, right - lefts[i]), lefts[i], 4);
        put(slab, value, lefts[i], 13);
        lowest = std::max(lowest, 13 + value.height());
    }
    slab.height = lowest + 4;
    return slab;
}

} // namespace

QString dateText(const core::Document& document) {
    const core::Day day = document.date;
    const QDate date(static_cast<int>(day.year()), static_cast<int>(unsigned{day.month()}),
                     static_cast<int>(unsigned{day.day()}));
    return QLocale(fromUtf8(document.language)).toString(date, QStringLiteral("d MMMM yyyy"));
}

QString standingText(const core::Document& document) {
    if (document.isDraft) {
        return QStringLiteral("Draft, not issued");
    }
    // A list that is printed stands for itself: only reports and proposals are issued.
    return document.version == 0 ? QString{}
                                 : QStringLiteral("Issued, version %1").arg(document.version);
}

void addFront(Flow& flow, const core::Document& document) {
    append(flow, {letterheadSlab(flow, document.letterhead)}, 0, false);
    flow.slabs.back().keepWithNext = true;
    append(flow, {titleSlab(flow, document)}, 2 * kLine, false);
    flow.slabs.back().keepWithNext = true;
    append(flow, {particularsSlab(flow, document)}, kLine, false);
}

void addClose(Flow& flow, const core::Document& document) {
    if (document.journalHead.empty()) {
        return;
    }
    const SetText label =
        setText(QStringLiteral("Journal of the record (SHA-256)"), kFurniture, kSideWidth);
    const SetText head = setText(fromUtf8(document.journalHead), kFurniture, kTextWidth);
    std::vector<Slab> slabs = rowSlabs({{0, label}, {kTextLeft, head}}, {10, 5, 0, 20, 2});
    slabs.front().marks.emplace_back(Rule{{0, 0}, {kBlockWidth, 0}, kHair, Ink::rule});
    slabs.front().clearsSide = true;
    append(flow, std::move(slabs), kLine);
}

} // namespace headcap::app::print
