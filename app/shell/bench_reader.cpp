#include "app/shell/bench_reader.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/pages/bench/step_words.h"
#include "app/photo/step_photos.h"
#include "app/session/actions.h"
#include "app/session/sentences.h"
#include "app/session/words.h"
#include "app/shell/line_chips.h"
#include "core/custody/first_work.h"
#include "core/treatment/approval.h"
#include "core/treatment/line_completion.h"
#include "core/treatment/line_doubts.h"
#include "core/treatment/line_fitness.h"
#include "core/treatment/line_label.h"
#include "core/treatment/line_moments.h"
#include "core/treatment/undoing.h"
#include "core/values/english.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("BenchReader", text);
}

QString sentenceOf(const core::LineDoubt& doubt) {
    using Kind = core::LineDoubt::Kind;
    const QString what = fromCore(doubt.what);
    switch (doubt.kind) {
    case Kind::unknownLot:
        return tr("There is no lot %1 on the shelf: it would be words alone.").arg(what);
    case Kind::noLot:
        return tr("%1 is named without a lot.").arg(fromCore(core::capitalised(doubt.what)));
    case Kind::denied:
        return tr("It says what was not done; the log is of what was.");
    case Kind::pause:
        return tr("A pause is no step: the log is of what was done to the book.");
    case Kind::mixing:
        return tr("A mix becomes a lot under Mixing (Ctrl+5), where its parts leave theirs.");
    case Kind::striking:
        return tr("A line strikes nothing: choose the step in the log, then Strike ….");
    case Kind::severalTimes:
        return tr("Several times are named; “1 h all told” says the whole. As it stands it is %1.")
            .arg(what);
    case Kind::timeOfEach:
        return tr("The time is of each, and of how many is not said; “1 h all told” says the "
                  "whole. As it stands it is %1.")
            .arg(what);
    case Kind::moreThanItHad:
        return tr("It took %1, and between the hours it names are %2.")
            .arg(what, fromCore(doubt.why));
    case Kind::severalPeople:
        return tr("Several people are named, and a step is by one: log one for each.");
    case Kind::absentPlace:
        return tr("%1: %2.").arg(what, fromCore(doubt.why));
    case Kind::stillToCome:
        return tr("The time it names is still to come.");
    case Kind::noTechnique:
        return tr("No technique is understood: the words would be logged as they stand.");
    }
    return {};
}

} // namespace

core::LineContext BenchReader::context(const core::JobFile* file) const {
    static const core::Shelf kNothing;
    if (!m_shelf) {
        m_session.guarded([this] {
            m_people.clear();
            for (const auto& one : core::all<core::Person>(m_session.records())) {
                m_people.push_back(one.record);
            }
            m_techniques = core::loadTechniques(m_session.records());
            m_shelf = core::shelfInBrief(m_session.records());
        });
    }
    return {m_shelf ? *m_shelf : kNothing,
            m_people,
            m_techniques.offered(),
            file == nullptr ? std::vector<core::KnownPlace>{} : core::knownPlaces(*file),
            m_session.clock().today(),
            file == nullptr ? std::vector<core::CutForJob>{} : core::cutForJob(*file)};
}

core::StepLine BenchReader::said(const QString& line, const core::LineContext& context) const {
    return core::timed(core::readStepLine(toCore(line), context), m_session.clock(),
                       core::systemUtcOffset);
}

core::Instant BenchReader::endOf(const core::StepLine& said) const {
    return core::endOf(said, m_session.clock(), core::systemUtcOffset);
}

std::vector<core::FitnessPoint> BenchReader::fitnessOf(const core::LineUse& use,
                                                       const core::StepLine& said,
                                                       const core::JobFile* file) const {
    return core::fitnessOf(use, {said.technique, said.grainAtSpine}, context(nullptr).shelf, file,
                           m_session.clock().today());
}

QString BenchReader::unfit(const core::StepLine& said, const core::LineContext& context,
                           const core::JobFile& file) const {
    QStringList asked;
    for (const core::LineUse& use : said.uses) {
        for (const core::FitnessPoint& point : fitnessOf(use, said, &file)) {
            if (point.asksReason) {
                asked << QStringLiteral("%1 %2").arg(fromCore(context.shelf.lot(*use.lot)->number),
                                                     fromCore(point.sentence));
            }
        }
    }
    return asked.join(QStringLiteral("; "));
}

QStringList BenchReader::questions(const QString& line, const core::JobFile& file) const {
    const core::LineContext context = this->context(&file);
    const core::StepLine read = said(line, context);
    QStringList questions;
    if (const QString against = unfit(read, context, file); !against.isEmpty()) {
        questions << tr("%1. Why is it used all the same?").arg(against);
    }
    const QString untrue = fromCore(core::undoingDoubt(read, context));
    if (!untrue.isEmpty()) {
        questions << tr("How can it be undone? The usual sentence %1.").arg(untrue);
    }
    return questions;
}

QString BenchReader::doubt(const QString& line, const core::JobFile* file) const {
    const core::LineContext context = this->context(file);
    const core::StepLine read = said(line, context);
    QStringList doubts;
    for (const core::LineDoubt& one :
         core::doubtsOf(toCore(line), read, endOf(read), m_session.clock().now(), file)) {
        doubts << sentenceOf(one);
    }
    return doubts.isEmpty()
               ? QString{}
               : tr("%1 Enter again logs it all the same.").arg(doubts.join(QLatin1Char(' ')));
}

std::vector<LineChip> BenchReader::read(const QString& line, const core::JobFile* file) const {
    const core::LineContext context = this->context(file);
    const core::StepLine read = said(line, context);
    std::vector<std::vector<core::FitnessPoint>> fitness;
    for (const core::LineUse& use : read.uses) {
        fitness.push_back(fitnessOf(use, read, file));
    }
    return chipsOf({line, read, context, m_techniques, file,
                    read.person ? read.person : m_session.person(), std::move(fitness),
                    endOf(read)});
}

std::vector<LineOffer> BenchReader::offers(const QString& upToCursor,
                                           const core::JobFile& file) const {
    constexpr std::size_t kOffered = 5;
    std::vector<std::string> awaited;
    for (const core::ProposalLine* line : core::openLines(file)) {
        awaited.push_back(line->technique);
    }
    const core::LineContext context = this->context(&file);
    const std::string line = toCore(upToCursor);
    std::vector<LineOffer> offers;
    for (const auto& one : core::completionsOf(line, context, awaited, kOffered)) {
        offers.push_back(
            {fromCore(one.text), fromCore(one.says), fromCore(core::completed(line, one))});
    }
    return offers;
}

std::optional<BenchLine::Scanned> BenchReader::scanned(const QString& before, const QString& word,
                                                       const QString& after) const {
    const core::Lot* lot = core::lotOnLabel(toCore(word.trimmed()), context(nullptr).shelf);
    if (lot == nullptr) {
        return std::nullopt;
    }
    const std::string head = toCore(before);
    const core::Dropped dropped = core::dropInto(head + toCore(after), head.size(), *lot);
    const QString line = fromCore(dropped.line);
    const auto cursor = fromCore(std::string_view{dropped.line}.substr(0, dropped.cursor)).size();
    return BenchLine::Scanned{line, static_cast<int>(cursor)};
}

bool BenchReader::log(const QString& line, const core::JobFile& file, const QStringList& answers) {
    const core::LineContext context = this->context(&file);
    const core::StepLine read = said(line, context);
    const auto who = read.person ? read.person : m_session.worker();
    if (!who) {
        return false;
    }
    auto step = core::stepFrom(read, file.job.id, *who, endOf(read), context, m_session.ids());
    QStringList given = answers;
    if (!unfit(read, context, file).isEmpty() && !given.isEmpty()) {
        const std::string reason = toCore(given.takeFirst());
        for (std::size_t i = 0; i < read.uses.size(); ++i) {
            if (std::ranges::any_of(fitnessOf(read.uses[i], read, &file),
                                    &core::FitnessPoint::asksReason)) {
                step.uses[i].overrideReason = reason;
            }
        }
    }
    if (!given.isEmpty()) {
        step.step.undoing = toCore(given.takeFirst());
    }
    auto change = core::logStep(step, context.shelf, m_techniques, m_session.ids());
    if (!change) {
        m_session.say({Notice::Kind::refused, refusalOf(change.error(), step, context.shelf)});
        return false;
    }
    core::bringToTheBench(*change, file, step.step, m_session.ids());
    const QString title = fromCore(change->sentence);
    if (!m_session.apply(std::move(*change))) {
        return false;
    }
    m_session.say({Notice::Kind::done, title, true});
    photo::putToNewStep(m_session, step.step.id, title);
    return true;
}

} // namespace headcap::app
