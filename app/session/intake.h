// Takes files in away from the GUI thread, one after the other: says how far it is, can be stopped,
// and gives what was kept to be recorded. While it is busy the window is not closed: what it has
// kept would have no record.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <optional>

#include <QObject>
#include <QThreadPool>

#include "core/record/stores.h"

namespace headcap::app {

class Intake : public QObject {
    Q_OBJECT
public:
    explicit Intake(QObject* parent = nullptr);
    ~Intake() override;

    [[nodiscard]] bool isBusy() const { return m_batches > 0; }
    // After the file in hand; what waits is not taken in, what is kept by then is given. What is
    // asked for later is taken in as ever.
    void stop();
    // Stops, waits for the file in hand, and has what was kept given before it returns.
    void finish();

Q_SIGNALS:
    void progressed(int done, int total);

protected:
    struct Batch {
        int files = 0;
        std::function<void(int)> takeOne; // away from the GUI thread; throws StoreError
        // On the GUI thread, at the end; the storage failed: the rest was not tried.
        std::function<void(const std::optional<core::StoreError>&)> give;
    };
    // What comes while it is at work waits.
    void start(const Batch& batch);

private:
    using Stop = std::shared_ptr<std::atomic_bool>;
    void work(const Batch& batch, const Stop& stop);

    Stop m_stop; // of what was asked for by now
    int m_batches = 0;
    QThreadPool m_pool;
};

} // namespace headcap::app
