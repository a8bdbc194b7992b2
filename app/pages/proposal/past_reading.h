// Reads the workshop's finished work of some techniques away from the window's thread, a technique
// at a time. A new question takes the place of the one before, which nobody waits for.
#pragma once

#include <atomic>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <thread>
#include <vector>

#include <QObject>

#include "core/treatment/past_work.h"

namespace headcap::app {

class PastReading : public QObject {
    Q_OBJECT
public:
    explicit PastReading(const core::RecordStore& store, QObject* parent = nullptr)
        : QObject(parent), m_store(store) {}
    ~PastReading() override;

    struct Past {
        std::vector<core::PastWork> work{};
        std::optional<core::StoreError> failure{};
    };
    struct Question {
        std::set<std::string> techniques;
        core::Id<core::Job> butFor; // the job that is being estimated
    };
    void ask(Question question);

Q_SIGNALS:
    void read(const std::shared_ptr<const headcap::app::PastReading::Past>& past);

private:
    void startNext();

    const core::RecordStore& m_store;
    std::thread m_thread;
    std::atomic_bool m_isStopped = false;
    bool m_isRunning = false;
    std::optional<Question> m_next;
};

} // namespace headcap::app
