// What the bench page writes: clocks, settings, checks, and the steps of the log.
#include "app/pages/bench_page.h"

#include "app/form/ruled_table.h"
#include "app/pages/bench/open_lines.h"
#include "app/pages/bench/step_details.h"
#include "app/pages/bench/step_form.h"
#include "app/pages/bench/step_words.h"
#include "app/pages/bench/uses_editor.h"
#include "app/photo/step_photos.h"
#include "app/session/actions.h"
#include "app/session/sentences.h"
#include "app/session/words.h"
#include "core/custody/first_work.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/clocks.h"
#include "core/treatment/setting_times.h"
#include "core/treatment/step_checks.h"

namespace headcap::app {

std::optional<core::Id<core::Person>> BenchPage::worker() {
    return session().worker();
}

bool BenchPage::keep(core::Change change) {
    const QString said = fromCore(change.sentence);
    if (!session().apply(std::move(change))) {
        return false;
    }
    session().say({Notice::Kind::done, said, true});
    return true;
}

void BenchPage::startClock(const core::ProposalLine& line) {
    const auto who = worker();
    if (!who) {
        return;
    }
    auto change = core::startClock(*m_file, core::clockFor(line, who), session().clock().now(),
                                   session().ids());
    if (!change) {
        session().say({Notice::Kind::refused, sentence(change.error())});
        return;
    }
    const QString begun = fromCore(change->sentence);
    if (keep(std::move(*change))) {
        // What comes first and what can hurt, where the work begins.
        const QString advice = adviceOf(m_file->techniques.named(line.technique));
        session().say(
            {Notice::Kind::done, advice.isEmpty() ? begun : tr("%1. %2").arg(begun, advice), true});
    }
}

void BenchPage::stopClock(const core::BenchClock& clock) {
    auto change = core::stopClock(*m_file, clock.id, session().clock().now());
    if (!change) {
        session().say({Notice::Kind::refused, sentence(change.error())});
        return;
    }
    core::BenchClock stopped = clock;
    stopped.stoppedAt = session().clock().now();
    if (keep(std::move(*change)) && !m_form->isWriting()) {
        logClock(stopped);
    }
}

// The step opens with the clock's minutes, to be completed.
void BenchPage::logClock(const core::BenchClock& clock) {
    if (m_form->isWriting()) {
        startNew(); // one at a time: the one begun is not lost
    } else if (const auto who = worker()) {
        show(draftFrom(*m_file, clock, *who, session().clock().now(), session().ids()));
    }
}

void BenchPage::dropClock(const core::Id<core::BenchClock>& clock) {
    auto change = core::dropClock(*m_file, clock);
    if (!change) {
        session().say({Notice::Kind::refused, sentence(change.error())});
        return;
    }
    m_form->drop();
    keepDraft(session().settings(), m_file->job.id, std::nullopt);
    closePanel();
    keep(std::move(*change));
}

void BenchPage::see(const core::SettingTime& time) {
    keep(core::seeTo(*m_file, time, session().person(), session().clock().now(), session().ids()));
}

void BenchPage::answer(const QString& what, bool isMade, const QString& whyNot) {
    if (!m_details->step()) {
        return;
    }
    auto change = core::answerCheck(*m_file,
                                    {.id = session().ids().next<core::StepCheck>(),
                                     .job = m_file->job.id,
                                     .step = *m_details->step(),
                                     .what = toCore(what),
                                     .done = isMade,
                                     .whyNot = toCore(whyNot)},
                                    session().person());
    if (!change) {
        session().say({Notice::Kind::refused, sentence(change.error())});
    } else {
        keep(std::move(*change));
    }
}

void BenchPage::startCorrection() {
    const core::Step* step = m_details->step() ? m_file->step(m_details->step()) : nullptr;
    if (step == nullptr) {
        return;
    }
    if (m_form->isWriting()) {
        session().say(
            {Notice::Kind::refused, tr("Another step is being written: log it or drop it first.")});
        startNew();
        return;
    }
    show(correctionOf(*m_file, *step, session().ids()));
}

void BenchPage::apply(tl::expected<core::Change, core::StepProblem> change) {
    if (!change) {
        session().say({Notice::Kind::refused, sentence(change.error())});
        return;
    }
    keep(std::move(*change));
}

void BenchPage::strike(const QString& why) {
    const auto who = worker();
    if (!who || !m_details->step()) {
        return;
    }
    apply(core::strikeStep(*m_file, *m_details->step(),
                           {*who, session().clock().now(), toCore(why)}, session().ids()));
}

void BenchPage::take() {
    const auto who = m_form->isWriting() ? worker() : std::nullopt;
    const auto made = who ? m_form->finished() : std::nullopt;
    if (!made) {
        return;
    }
    const core::Shelf shelf = m_form->uses().shelf();
    auto change =
        made->isCorrection()
            ? core::correctStep(*m_file, *made->logged.step.corrects, made->logged, shelf,
                                {*who, session().clock().now(), made->reason}, session().ids())
            : core::logStep(made->logged, shelf, m_file->techniques, session().ids());
    if (!change) {
        session().say({Notice::Kind::refused, refusalOf(change.error(), made->logged, shelf)});
        return;
    }
    core::bringToTheBench(*change, *m_file, made->logged.step, session().ids());
    for (const core::StepCheck& check : made->checks) {
        change->add(check);
    }
    for (const core::BenchClock& clock : m_file->clocks) {
        if (made->clock == clock.id && !clock.step) {
            core::giveTo(*change, *m_file, clock, made->logged.step.id, session().clock().now());
        }
    }
    const QString said = fromCore(change->sentence);
    if (!session().apply(std::move(*change))) {
        return;
    }
    m_form->drop();
    keepDraft(session().settings(), m_file->job.id, std::nullopt);
    m_log->select(made->logged.step.id.uuid());
    closePanel();
    const bool isLaidOpen = made->logged.step.kind == core::StepKind::uncovering;
    session().say(
        {Notice::Kind::done,
         isLaidOpen ? tr("%1. Photograph it before it is covered again.").arg(said) : said, true});
    photo::putToNewStep(session(), made->logged.step.id, said);
}

} // namespace headcap::app
