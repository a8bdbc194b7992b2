#include "app/pages/collation/walk_words.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/collation/folds.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Walk", text);
}

} // namespace

QString whereWords(const core::LeafExpectation& expected, std::size_t leaf, std::size_t leaves) {
    QString fold;
    if (!expected.conjugate.empty()) {
        fold = expected.isMiddle ? tr("one fold with %1, the middle of the gathering")
                                 : tr("one fold with %1");
        fold = fold.arg(fromCore(expected.conjugate));
    }
    QString sheet;
    if (!expected.sheet.empty() && static_cast<int>(expected.sheet.size()) + 1 < expected.leaves) {
        QStringList others;
        for (const std::string& other : expected.sheet) {
            others << fromCore(other);
        }
        sheet = tr("one sheet with %1").arg(others.join(QStringLiteral(", ")));
    }
    return dotted({tr("leaf %1 of %2 in %3")
                       .arg(expected.place)
                       .arg(expected.leaves)
                       .arg(fromCore(expected.gathering)),
                   fold, sheet, tr("%1 of %2 in the book").arg(leaf + 1).arg(leaves)});
}

QString findingWords(const core::CollationFinding& finding) {
    QString said = words(finding.kind);
    if (!finding.found.empty()) {
        said += QLatin1Char(' ') +
                (finding.expected.empty()
                     ? fromCore(finding.found)
                     : tr("%1 for %2").arg(fromCore(finding.found), fromCore(finding.expected)));
    }
    return finding.note.empty() ? said : said + QStringLiteral(": ") + fromCore(finding.note);
}

QString coverageWords(const core::LaidBook& book, const core::WalkState& state) {
    const QString said =
        fromCore(coverageText(book, core::coverageOf({state}, book.leaves.size())));
    return said.left(1).toUpper() + said.mid(1) + QLatin1Char('.');
}

QString walkWords(const core::Walk& walk, const core::WalkState& state, const core::LaidBook& book,
                  const std::vector<core::Person>& people, core::Day began, core::Day today) {
    const auto person = std::ranges::find_if(
        people, [&](const core::Person& one) { return walk.who && one.id == *walk.who; });
    const QString who = person == people.end() ? tr("Not said by whom") : fromCore(person->name);
    QString said = tr("%1, %2: %3 leaves singly, %4 passed whole")
                       .arg(who, shortDay(began, today))
                       .arg(state.singly)
                       .arg(state.whole);
    if (walk.finishedAt) {
        return said + tr("; finished");
    }
    if (state.here) {
        said +=
            tr(", %1 to go; at %2").arg(state.notLooked).arg(fromCore(leafText(book, *state.here)));
    }
    return said;
}

QString noteLabel(core::CollationKind kind) {
    return kind == core::CollationKind::misbound ? tr("Stands") : tr("Note");
}

QString noteHint(core::CollationKind kind) {
    return kind == core::CollationKind::misbound
               ? tr("after K5, before B1 · Enter goes on, Esc stays at the leaf")
               : tr("what is seen, if it needs saying · Enter goes on, Esc stays at the leaf");
}

} // namespace headcap::app
