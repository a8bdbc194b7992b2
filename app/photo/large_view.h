// One photograph as large as the page it lies over, with its caption. Left and Right go to its
// neighbours, Esc or a click goes back.
#pragma once

#include <vector>

#include <QWidget>

#include "core/photo/photograph.h"

namespace headcap::app::print {
class PhotoLoader;
}

namespace headcap::app::photo {

class LargeView : public QWidget {
    Q_OBJECT
public:
    // Lies over its parent, hidden until it is opened.
    LargeView(print::PhotoLoader& loader, QWidget* parent);

    void open(std::vector<core::Photograph> photographs, const core::Id<core::Photograph>& at);
    [[nodiscard]] const core::Photograph& current() const { return m_photographs[m_at]; }

Q_SIGNALS:
    void moved(); // to another photograph
    void closed();

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void go(std::size_t to);
    void close();

    print::PhotoLoader& m_loader;
    std::vector<core::Photograph> m_photographs;
    std::size_t m_at = 0;
};

} // namespace headcap::app::photo
