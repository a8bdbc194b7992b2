#include "app/report/paper_desk.h"

namespace headcap::app {

PaperDesk::PaperDesk(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_stop(std::make_shared<std::atomic_bool>(false)),
      m_aside(session, this) {}

PaperDesk::~PaperDesk() {
    *m_stop = true;
}

void PaperDesk::save(const core::Document& document, const print::PhotoLookup& photos,
                     const QString& path, const QString& done) {
    draw(
        [document, photos, path](const print::PdfOptions& options) {
            return print::writePdf(document, photos, path, options);
        },
        [this, path, done](const tl::expected<print::PdfOutcome, print::PdfError>& written) {
            if (written) {
                m_session.say({Notice::Kind::done, done.arg(path)});
                return;
            }
            const bool isMeant = written.error().code == print::PdfError::Code::stopped;
            m_session.say({isMeant ? Notice::Kind::done : Notice::Kind::failed,
                           print::sentence(written.error())});
        });
}

void PaperDesk::stop() {
    *m_stop = true;
}

bool PaperDesk::begin() {
    if (m_isBusy) {
        m_session.say({Notice::Kind::refused,
                       tr("A paper is still being drawn: ask again when it is done.")});
        return false;
    }
    m_stop = std::make_shared<std::atomic_bool>(false);
    m_isBusy = true;
    Q_EMIT busyChanged(true);
    return true;
}

void PaperDesk::end() {
    m_isBusy = false;
    Q_EMIT busyChanged(false);
}

print::PdfOptions PaperDesk::options() {
    print::PdfOptions made;
    made.progress = [this, stop = m_stop](int page, int pages) {
        QMetaObject::invokeMethod(
            this, [this, page, pages] { Q_EMIT progressed(page, pages); }, Qt::QueuedConnection);
        return !*stop;
    };
    return made;
}

} // namespace headcap::app
