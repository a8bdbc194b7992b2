// Reading that takes longer than a hand's movement: done on a thread of its own, and shown when it
// is done. What was asked last is what is shown; what was asked before is not shown, and not begun
// where it was still waiting.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <utility>

#include <QObject>
#include <QThreadPool>

#include "app/session/session.h"

namespace headcap::app {

class Aside : public QObject {
    Q_OBJECT
public:
    explicit Aside(Session& session, QObject* parent = nullptr);
    ~Aside() override; // waits for what is being read

    // `read` runs elsewhere and may only read the store; `show` runs here. Storage that fails is
    // said in a notice, and `failed` runs here instead.
    template <class Read, class Show>
    void ask(
        Read read, Show show, std::function<void()> failed = [] {}) {
        start(
            [read = std::move(read), show = std::move(show)] {
                auto found = std::make_shared<decltype(read())>(read());
                return std::function<void()>{[found, show] { show(std::move(*found)); }};
            },
            std::move(failed));
    }
    [[nodiscard]] bool isReading() const { return m_waiting > 0; }

private:
    using Shown = std::function<void()>;
    void start(std::function<Shown()> read, Shown failed);
    Shown sayWhy(const core::StoreError& error, const Shown& failed);
    void finish(int turn, const Shown& show);

    Session& m_session;
    QThreadPool m_pool;
    std::atomic_int m_turn = 0;
    int m_waiting = 0;
};

} // namespace headcap::app
