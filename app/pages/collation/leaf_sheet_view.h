// The sheet to be ticked by keys or a knuckle: a row a leaf, a column a piece of work. Space ticks
// and goes to the next leaf that is to do; E ticks the rest of the gathering; a click ticks.
#pragma once

#include <QTableView>

#include "app/pages/collation/leaf_sheet_model.h"

namespace headcap::app {

struct SheetKey {
    const char* words;
    const char* key;
};
[[nodiscard]] std::vector<SheetKey> sheetKeys();
[[nodiscard]] QString wordsOf(const SheetKey& key);
// Goes to the sheet, anywhere on the collation page.
inline constexpr const char* kSheetKey = "Ctrl+Shift+G";

class LeafSheetView : public QTableView {
    Q_OBJECT
public:
    explicit LeafSheetView(QWidget* parent = nullptr);
    void show(core::LaidBook book, std::vector<core::LeafTask> tasks,
              const core::TechniquesInForce& techniques);
    using QWidget::show;
    [[nodiscard]] const LeafSheetModel& sheet() const { return *m_model; }
    [[nodiscard]] bool isEmpty() const { return m_model->rowCount() == 0; }
    // To the first leaf that is to do.
    void enter();

Q_SIGNALS:
    void ticked(const core::LeafTask& task, const std::vector<std::size_t>& leaves, bool isDone);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void fit();
    void toggle(const QModelIndex& index);
    void tickGathering();
    void goOn(const QModelIndex& from);

    LeafSheetModel* m_model;
};

} // namespace headcap::app
