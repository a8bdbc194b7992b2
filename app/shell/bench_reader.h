// What core reads in a line of the bench log, as the bench line shows it, and the line logged.
#pragma once

#include "app/session/session.h"
#include "app/shell/bench_line.h"
#include "core/materials/fitness.h"
#include "core/materials/ledger_in_brief.h"
#include "core/treatment/step_line.h"

namespace headcap::app {

class BenchReader {
public:
    explicit BenchReader(Session& session) : m_session(session) {}
    // Lots, techniques and people are read anew when the next line is.
    void refresh() { m_shelf.reset(); }
    [[nodiscard]] std::vector<LineChip> read(const QString& line, const core::JobFile* file) const;
    // What must be said first: why a lot is used that is unfit or past its date; how it is undone,
    // where the usual words would not be true. Empty: nothing.
    [[nodiscard]] QStringList questions(const QString& line, const core::JobFile& file) const;
    // What of the line would be kept as mere words; empty: all of it says something.
    [[nodiscard]] QString doubt(const QString& line, const core::JobFile* file) const;
    // What the last words of the line may become; what the job's approved lines wait for first.
    [[nodiscard]] std::vector<LineOffer> offers(const QString& upToCursor,
                                                const core::JobFile& file) const;
    // A label scanned between what stands before and after it.
    [[nodiscard]] std::optional<BenchLine::Scanned>
    scanned(const QString& before, const QString& word, const QString& after) const;
    // False where it was not logged; a notice has said why. The answers are those to questions();
    // a reason goes with every lot that asks for one.
    bool log(const QString& line, const core::JobFile& file, const QStringList& answers);

private:
    [[nodiscard]] core::StepLine said(const QString& line, const core::LineContext& context) const;
    [[nodiscard]] core::Instant endOf(const core::StepLine& said) const;
    [[nodiscard]] QString unfit(const core::StepLine& said, const core::LineContext& context,
                                const core::JobFile& file) const;
    [[nodiscard]] std::vector<core::FitnessPoint> fitnessOf(const core::LineUse& use,
                                                            const core::StepLine& said,
                                                            const core::JobFile* file) const;
    [[nodiscard]] core::LineContext context(const core::JobFile* file) const;

    Session& m_session;
    mutable std::shared_ptr<const core::Shelf> m_shelf{}; // null: to be read
    mutable core::TechniquesInForce m_techniques{};
    mutable std::vector<core::Person> m_people{};
};

} // namespace headcap::app
