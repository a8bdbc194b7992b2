// Draws papers away from the GUI thread, one at a time: says at which page it is, and can be
// stopped after it. While one is drawn the window is not closed unasked.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <utility>

#include <QObject>

#include "app/print/pdf_report.h"
#include "app/session/aside.h"

namespace headcap::app {

class PaperDesk : public QObject {
    Q_OBJECT
public:
    explicit PaperDesk(Session& session, QObject* parent = nullptr);
    ~PaperDesk() override; // stops, and waits for the page in hand

    // `draw(options)` runs elsewhere and may only read records; `show` takes what it gave, here.
    // Storage that fails is said in a notice, and nothing shown. What is asked while one is drawn
    // is refused in one.
    template <class Draw, class Show>
    void draw(Draw draw, Show show) {
        if (!begin()) {
            return;
        }
        m_aside.ask([draw = std::move(draw), options = options()] { return draw(options); },
                    [this, show = std::move(show)](auto drawn) {
                        end();
                        show(std::move(drawn));
                    },
                    [this] { end(); });
    }
    // Writes it, and says where it lies, in `done` (%1), or why not.
    void save(const core::Document& document, const print::PhotoLookup& photos, const QString& path,
              const QString& done);

    [[nodiscard]] bool isBusy() const { return m_isBusy; }
    void stop();

Q_SIGNALS:
    void busyChanged(bool isBusy);
    void progressed(int page, int pages);

private:
    [[nodiscard]] bool begin();
    void end();
    [[nodiscard]] print::PdfOptions options();

    Session& m_session;
    std::shared_ptr<std::atomic_bool> m_stop;
    bool m_isBusy = false;
    Aside m_aside; // the last: what it draws uses the others
};

} // namespace headcap::app
