#include "app/stock/plan_work.h"

namespace headcap::app {

PlanWork::~PlanWork() {
    finish();
}

void PlanWork::finish() {
    if (m_isStopped) {
        m_isStopped->store(true);
    }
    if (m_thread.joinable()) {
        m_thread.join();
    }
}

void PlanWork::start(core::CutProblem problem) {
    finish();
    const int turn = ++m_turn;
    m_isRunning = true;
    m_isStopped = std::make_shared<std::atomic_bool>(false);
    m_thread = std::thread([this, turn, isStopped = m_isStopped, problem = std::move(problem)] {
        core::SearchLimits limits = core::usualLimits(problem.objective);
        limits.isStopped = [isStopped, usual = limits.isStopped] {
            return isStopped->load() || usual();
        };
        auto plan = core::planCuts(problem, limits);
        auto outcome = std::make_shared<const Outcome>(Outcome{problem, std::move(plan)});
        // Finished before this object: its destructor waits for the thread.
        QMetaObject::invokeMethod(
            this,
            [this, turn, outcome] {
                if (turn == m_turn) {
                    m_isRunning = false;
                    Q_EMIT done(outcome);
                }
            },
            Qt::QueuedConnection);
    });
}

void PlanWork::stop() {
    if (m_isStopped) {
        m_isStopped->store(true);
    }
}

void PlanWork::drop() {
    finish();
    ++m_turn;
    m_isRunning = false;
}

} // namespace headcap::app
