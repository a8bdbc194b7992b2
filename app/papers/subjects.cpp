#include "app/papers/subjects.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/values/spoken_time.h"

namespace headcap::app::papers {
namespace {

constexpr int kMostWords = 60;

class Words {
    Q_DECLARE_TR_FUNCTIONS(papers)
};

QString shortened(std::string_view text) {
    const QString whole = fromCore(text).simplified();
    return whole.size() <= kMostWords ? whole
                                      : whole.left(kMostWords).trimmed() + QStringLiteral(" …");
}

QString stepWords(const core::JobFile& file, const core::Step& step) {
    return dotted({fromCore(file.techniques.nameOf(step.technique)), fromCore(step.place),
                   shortened(step.description)});
}

} // namespace

std::string keyOf(const core::RecordRef& ref) {
    return std::string{core::nameOf(ref.kind)} + ':' + ref.id.text();
}

std::optional<core::RecordRef> refNamed(const std::string& key) {
    const auto colon = key.find(':');
    if (colon == std::string::npos) {
        return std::nullopt;
    }
    const auto kind = core::recordKindNamed(std::string_view{key}.substr(0, colon));
    const auto id = core::Uuid::fromText(key.substr(colon + 1));
    return kind && id ? std::optional{core::RecordRef{*kind, *id}} : std::nullopt;
}

QString subjectWords(const core::RecordRef& ref, const std::vector<Choice>& subjects) {
    const std::string key = keyOf(ref);
    const auto at = std::ranges::find(subjects, key, &Choice::key);
    return at == subjects.end() ? words(ref.kind) : at->words;
}

std::vector<Choice> subjectsOf(const core::JobFile& file) {
    std::vector<Choice> choices;
    const auto offer = [&](const auto& record, const QString& words) {
        choices.push_back({keyOf(core::refOf(record.id)), words});
    };
    offer(file.job, Words::tr("this job"));
    offer(file.item, Words::tr("the book"));
    offer(file.owner, Words::tr("the owner"));
    for (const core::Notice& notice : file.notices) {
        offer(notice, Words::tr("notice: %1").arg(shortened(notice.text)));
    }
    for (const core::Proposal& proposal : file.proposals) {
        offer(proposal, Words::tr("proposal, version %1").arg(proposal.version));
    }
    for (const core::Decision& decision : file.decisions) {
        offer(decision, Words::tr("decision: %1, %2")
                            .arg(words(decision.kind), fromCore(core::toText(decision.onDay))));
    }
    for (const core::Facsimile& leaf : file.facsimiles) {
        offer(leaf, Words::tr("leaf supplied: %1").arg(fromCore(leaf.place)));
    }
    for (const core::Finding& finding : file.findings) {
        offer(finding, Words::tr("finding: %1").arg(shortened(finding.observed)));
    }
    for (const core::Test& test : file.tests) {
        offer(test, Words::tr("test: %1").arg(shortened(test.purpose)));
    }
    for (const core::Step& step : file.steps) {
        offer(step, Words::tr("step: %1").arg(stepWords(file, step)));
    }
    for (const core::FollowUp& followUp : file.followUps) {
        offer(followUp, Words::tr("follow-up: %1").arg(shortened(followUp.what)));
    }
    return choices;
}

} // namespace headcap::app::papers
