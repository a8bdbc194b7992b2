#include "app/pages/proposal/past_reading.h"

#include <iterator>
#include <utility>

namespace headcap::app {
namespace {

std::vector<core::PastWork> workOf(const core::RecordStore& store,
                                   const std::set<std::string>& techniques,
                                   const core::Id<core::Job>& butFor,
                                   const std::atomic_bool& isStopped) {
    std::vector<core::PastWork> all;
    for (const std::string& technique : techniques) {
        if (isStopped) {
            break;
        }
        auto some = core::loadPastWork(store, {technique}, butFor);
        all.insert(all.end(), std::make_move_iterator(some.begin()),
                   std::make_move_iterator(some.end()));
    }
    return all;
}

} // namespace

PastReading::~PastReading() {
    m_isStopped = true;
    if (m_thread.joinable()) {
        m_thread.join();
    }
}

void PastReading::ask(Question question) {
    m_next = std::move(question);
    if (m_isRunning) {
        m_isStopped = true;
    } else {
        startNext();
    }
}

void PastReading::startNext() {
    if (m_thread.joinable()) {
        m_thread.join(); // it has ended
    }
    m_isRunning = true;
    m_isStopped = false;
    const Question question = *std::exchange(m_next, std::nullopt);
    m_thread = std::thread([this, question] {
        auto past = std::make_shared<Past>();
        try {
            past->work = workOf(m_store, question.techniques, question.butFor, m_isStopped);
        } catch (const core::StoreError& error) {
            past->failure = error;
        }
        // This object outlives the thread: its destructor waits for it.
        QMetaObject::invokeMethod(
            this,
            [this, past] {
                m_isRunning = false;
                if (m_next) {
                    startNext();
                } else {
                    Q_EMIT read(past);
                }
            },
            Qt::QueuedConnection);
    });
}

} // namespace headcap::app
