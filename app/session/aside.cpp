#include "app/session/aside.h"

#include "app/session/sentences.h"

namespace headcap::app {

Aside::Aside(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    m_pool.setMaxThreadCount(1);
}

Aside::~Aside() {
    m_pool.clear();
    m_pool.waitForDone();
}

void Aside::start(std::function<Shown()> read, Shown failed) {
    const int turn = ++m_turn;
    ++m_waiting;
    m_pool.start([this, turn, read = std::move(read), failed = std::move(failed)] {
        Shown show = [] {};
        try {
            if (turn == m_turn) {
                show = read();
            }
        } catch (const core::StoreError& error) {
            show = sayWhy(error, failed);
        } catch (const std::exception& error) {
            show = sayWhy({core::StoreError::Code::internal, error.what()}, failed);
        }
        QMetaObject::invokeMethod(
            this, [this, turn, show] { finish(turn, show); }, Qt::QueuedConnection);
    });
}

Aside::Shown Aside::sayWhy(const core::StoreError& error, const Shown& failed) {
    return [this, why = sentence(error), failed] {
        m_session.say({Notice::Kind::failed, why});
        failed();
    };
}

void Aside::finish(int turn, const Shown& show) {
    --m_waiting;
    if (turn == m_turn) {
        show();
    }
}

} // namespace headcap::app
