#include "app/pages/collation_words.h"

#include <QCoreApplication>

#include "app/session/session.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("CollationPage", text);
}

QString groundOf(core::Ground ground) {
    switch (ground) {
    case core::Ground::formula:
        return tr("from the formula");
    case core::Ground::extent:
        return tr("from the extent");
    case core::Ground::request:
        return tr("as given");
    case core::Ground::prose:
        return tr("words set aside");
    }
    return {};
}

bool isUndecided(const core::CollationFinding& finding) {
    return finding.kind == core::CollationKind::lacking &&
           finding.decision == core::CollationDecision::undecided;
}

} // namespace

QString tallyWords(const core::CollateAnswer& answer, const core::Collation& collation) {
    QStringList said;
    if (answer.leafTotal) {
        said << counted(*answer.leafTotal, tr("%1 leaf called for"), tr("%1 leaves called for"));
        if (collation.leavesCalledFor > 0 && collation.leavesCalledFor != *answer.leafTotal) {
            said << tr("the record says %1").arg(collation.leavesCalledFor);
        }
    } else {
        said << tr("the number of leaves is not known: a count is not printed");
    }
    if (collation.leavesPresent > 0) {
        said << tr("%1 present").arg(collation.leavesPresent);
    }
    if (answer.extent) {
        said << (answer.extent->agrees ? tr("the extent agrees") : tr("the extent differs"));
    }
    return said.join(QStringLiteral(" · "));
}

QString remarksOf(const core::CollateAnswer& answer) {
    QStringList lines;
    for (const core::ReadingProblem& problem : answer.problems) {
        lines << fromCore(problem.message);
    }
    if (answer.extent && !answer.extent->explanation.empty()) {
        lines << fromCore(answer.extent->explanation);
    }
    for (const core::Assumption& assumption : answer.assumptions) {
        lines << tr("Taken as said: %1 (%2).")
                     .arg(fromCore(assumption.what), groundOf(assumption.from));
    }
    return lines.join(QLatin1Char('\n'));
}

RowWords describeFinding(const core::CollationFinding& finding) {
    return RowWords{.mark = fromCore(finding.place),
                    .title = words(finding.kind),
                    .detail = fromCore(finding.note),
                    .right = words(finding.decision),
                    .rightInk = isUndecided(finding) ? Ink::must : Ink::quiet};
}

RowWords describeFacsimile(const core::Facsimile& leaf) {
    QStringList source{fromCore(leaf.institution), fromCore(leaf.shelfmark)};
    source.removeAll({});
    return RowWords{.mark = fromCore(leaf.place),
                    .title = words(leaf.kind),
                    .detail = source.join(QStringLiteral(", ")),
                    .right = words(leaf.verdict),
                    .rightInk =
                        leaf.verdict == core::Verdict::contradicted ? Ink::must : Ink::quiet};
}

Choices stepsOf(const Session& session, const std::optional<core::JobFile>& file) {
    return [&session, &file] {
        std::vector<Choice> all;
        if (!file) {
            return all;
        }
        for (const core::Step& step : file->steps) {
            if (!step.struckAt) {
                const core::Clock& clock = session.clock();
                const QString day = shortDay(clock.dayOf(step.at), clock.today());
                all.push_back({step.id.text(), dotted({day, fromCore(step.description)})});
            }
        }
        return all;
    };
}

} // namespace headcap::app
