// Who may use the database: one thread that writes, and a few connections that read without
// waiting for it.
#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <future>
#include <memory>
#include <mutex>
#include <thread>
#include <type_traits>
#include <utility>
#include <vector>

#include "db/sqlite/connection.h"

namespace headcap::db {

// The one thread that writes. Work is done in the order it comes, and its value or exception
// handed back to who asked.
class Writer {
public:
    explicit Writer(std::unique_ptr<Connection> connection);
    ~Writer();
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    template <class Work>
    std::invoke_result_t<Work, Connection&> run(Work asked) {
        // Shared: the thread is still in it when its result is already taken here.
        using Task = std::packaged_task<std::invoke_result_t<Work, Connection&>(Connection&)>;
        const auto task = std::make_shared<Task>(std::move(asked));
        auto result = task->get_future();
        enqueue([task](Connection& connection) { (*task)(connection); });
        return result.get();
    }

private:
    using Job = std::function<void(Connection&)>;

    void enqueue(Job job);
    void work();

    std::unique_ptr<Connection> m_connection;
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::deque<Job> m_jobs{};
    bool m_stopping = false;
    std::thread m_thread;
};

// Connections that read, lent to one thread at a time.
class Readers {
public:
    Readers(std::filesystem::path file, ConnectionSettings settings);

    class Lease {
    public:
        Lease(Readers& readers, std::unique_ptr<Connection> connection)
            : m_readers(readers), m_connection(std::move(connection)) {}
        ~Lease() { m_readers.giveBack(std::move(m_connection)); }
        Lease(const Lease&) = delete;
        Lease& operator=(const Lease&) = delete;
        [[nodiscard]] Connection& operator*() const { return *m_connection; }

    private:
        Readers& m_readers;
        std::unique_ptr<Connection> m_connection;
    };

    [[nodiscard]] Lease lend();

private:
    void giveBack(std::unique_ptr<Connection> connection);

    std::filesystem::path m_file;
    ConnectionSettings m_settings;
    std::mutex m_mutex;
    std::vector<std::unique_ptr<Connection>> m_idle{};
};

} // namespace headcap::db
