// Plans the cutting away from the window's thread. A new plan stops the one before; what was best
// when it is stopped by hand is still an answer.
#pragma once

#include <atomic>
#include <memory>
#include <thread>

#include <QObject>

#include "core/cutting/plan_cuts.h"

namespace headcap::app {

class PlanWork : public QObject {
    Q_OBJECT
public:
    explicit PlanWork(QObject* parent = nullptr) : QObject(parent) {}
    ~PlanWork() override;

    void start(core::CutProblem problem);
    // Takes what there is.
    void stop();
    // And lets it go unseen.
    void drop();
    [[nodiscard]] bool isRunning() const { return m_isRunning; }

    struct Outcome {
        core::CutProblem problem;
        tl::expected<core::CutPlan, core::CutProblemError> plan;
    };

Q_SIGNALS:
    void done(const std::shared_ptr<const headcap::app::PlanWork::Outcome>& outcome);

private:
    void finish();

    std::thread m_thread;
    std::shared_ptr<std::atomic_bool> m_isStopped;
    int m_turn = 0;
    bool m_isRunning = false;
};

} // namespace headcap::app
