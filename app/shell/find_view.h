// Find over everything the workshop keeps: words, and what holds them, newest first. Enter goes to
// the record.
#pragma once

#include <vector>

#include "app/session/aside.h"
#include "app/shell/view.h"

class QLineEdit;

namespace headcap::app {

class Label;
class RuledList;

class FindView : public View {
    Q_OBJECT
public:
    explicit FindView(Session& session, QWidget* parent = nullptr);
    bool enter(const Destination& destination) override;
    void refresh() override;
    [[nodiscard]] QString title() const override { return tr("Find"); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void find();
    void show(core::SearchAnswer answer);
    using QWidget::show;
    void open();

    Session& m_session;
    QLineEdit* m_words;
    Label* m_count;
    RuledList* m_list;
    std::vector<core::SearchHit> m_hits;
    Aside m_aside{m_session, this};
    bool m_isOpening = false; // Enter came before the answer
};

} // namespace headcap::app
