// Several lines of text in a field that is as high as what stands in it. Tab leaves it.
#pragma once

#include <QPlainTextEdit>

namespace headcap::app {

class GrowingText : public QPlainTextEdit {
    Q_OBJECT
public:
    explicit GrowingText(QWidget* parent = nullptr);
    void setLeastHeight(int height);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void fit();

    int m_least = 0;
};

} // namespace headcap::app
