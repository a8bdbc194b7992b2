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

void Aside::start(std::function<Shown()> read) {
    const int turn = ++m_turn;
    ++m_waiting;
    m_pool.start([this, turn, read = std::move(read)] {
        Shown show;
        try {
            show = read();
        } catch (const core::StoreError& error) {
            const QString why = sentence(error);
            show = [this, why] { m_session.say({Notice::Kind::failed, why}); };
        }
        QMetaObject::invokeMethod(
            this, [this, turn, show] { finish(turn, show); }, Qt::QueuedConnection);
    });
}

void Aside::finish(int turn, const Shown& show) {
    --m_waiting;
    if (turn == m_turn) {
        show();
    }
}

} // namespace headcap::app
