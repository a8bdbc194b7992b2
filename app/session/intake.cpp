#include "app/session/intake.h"

#include <QCoreApplication>
#include <QEvent>

namespace headcap::app {

Intake::Intake(QObject* parent)
    : QObject(parent), m_stop(std::make_shared<std::atomic_bool>(false)) {
    m_pool.setMaxThreadCount(1);
}

Intake::~Intake() {
    *m_stop = true;
    m_pool.waitForDone();
}

void Intake::stop() {
    *m_stop = true;
    m_stop = std::make_shared<std::atomic_bool>(false);
}

void Intake::finish() {
    stop();
    m_pool.waitForDone();
    QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
}

void Intake::start(const Batch& batch) {
    ++m_batches;
    m_pool.start([this, batch, stop = m_stop] { work(batch, stop); });
}

void Intake::work(const Batch& batch, const Stop& stop) {
    std::optional<core::StoreError> failure;
    try {
        for (int i = 0; i < batch.files && !*stop; ++i) {
            const auto say = [this, i, total = batch.files] { Q_EMIT progressed(i, total); };
            QMetaObject::invokeMethod(this, say, Qt::QueuedConnection);
            batch.takeOne(i);
        }
    } catch (const core::StoreError& error) {
        failure = error;
    } catch (const std::exception& error) {
        failure = core::StoreError{core::StoreError::Code::internal, error.what()};
    }
    const auto give = [this, batch, failure] {
        --m_batches;
        batch.give(failure);
    };
    QMetaObject::invokeMethod(this, give, Qt::QueuedConnection);
}

} // namespace headcap::app
