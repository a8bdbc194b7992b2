#include "db/sqlite/threads.h"

#include "core/values/contract.h"

namespace headcap::db {
namespace {

// As many as windows, imports and searches read at once; more are closed again.
constexpr std::size_t kMostIdle = 4;

} // namespace

Writer::Writer(std::unique_ptr<Connection> connection)
    : m_connection(std::move(connection)), m_thread([this] { work(); }) {}

Writer::~Writer() {
    {
        const std::lock_guard lock(m_mutex);
        m_stopping = true;
    }
    m_wake.notify_one();
    m_thread.join();
}

void Writer::enqueue(Job job) {
    // Waiting for oneself would never end.
    HEADCAP_CONTRACT(std::this_thread::get_id() != m_thread.get_id());
    {
        const std::lock_guard lock(m_mutex);
        m_jobs.push_back(std::move(job));
    }
    m_wake.notify_one();
}

void Writer::work() {
    for (;;) {
        Job job;
        {
            std::unique_lock lock(m_mutex);
            m_wake.wait(lock, [this] { return m_stopping || !m_jobs.empty(); });
            if (m_jobs.empty()) {
                return;
            }
            job = std::move(m_jobs.front());
            m_jobs.pop_front();
        }
        job(*m_connection);
    }
}

Readers::Readers(std::filesystem::path file, ConnectionSettings settings)
    : m_file(std::move(file)), m_settings(std::move(settings)) {}

Readers::Lease Readers::lend() {
    {
        const std::lock_guard lock(m_mutex);
        if (!m_idle.empty()) {
            auto connection = std::move(m_idle.back());
            m_idle.pop_back();
            return {*this, std::move(connection)};
        }
    }
    return {*this, std::make_unique<Connection>(m_file, Access::read, m_settings)};
}

void Readers::giveBack(std::unique_ptr<Connection> connection) {
    const std::lock_guard lock(m_mutex);
    if (m_idle.size() < kMostIdle) {
        m_idle.push_back(std::move(connection));
    }
}

} // namespace headcap::db
