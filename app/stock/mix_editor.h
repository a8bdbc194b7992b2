// A mix as it is put together from a recipe: how much is to be made, of each part how much and from
// which lot, and the lot it becomes. It is booked as one change. A lot that is not fit says so, and
// asks why it is used.
#pragma once

#include <vector>

#include <QWidget>

#include "app/session/session.h"
#include "core/materials/recipe_mix.h"

class QPushButton;
class QVBoxLayout;

namespace headcap::app {

class FieldRow;
class Label;
class PlainForm;

class MixEditor : public QWidget {
    Q_OBJECT
public:
    explicit MixEditor(Session& session, QWidget* parent = nullptr);
    void show(const core::RecipeCard& recipe, const core::Shelf& shelf);
    using QWidget::show;
    // The shelf has changed; what was typed stays.
    void setShelf(const core::Shelf& shelf) { m_shelf = shelf; }
    [[nodiscard]] PlainForm* form() { return m_form; }
    [[nodiscard]] QPushButton& bookButton() { return *m_book; }
    [[nodiscard]] QPushButton& labelButton() { return *m_label; }
    // Tab goes from there through the fields to what is done with them.
    void standAfter(QWidget* before);
    // The mix was booked under this number: its label is the next thing.
    void offerLabel(const QString& number);

Q_SIGNALS:
    void booked(const QString& number);
    void labelAsked(const QString& number);

private:
    struct PartRows {
        FieldRow* amount;
        FieldRow* lot;
        FieldRow* why;
        bool isNoneThere; // no lot of it is on the shelf
    };

    void build();
    void alignPairs();
    void addPart(const core::RecipeCardPart& part);
    void scale();
    [[nodiscard]] QString lossOf(const QString& yield) const;
    void book();
    void keepAsOwn();
    void removeOwn();
    [[nodiscard]] QString standingOf(const QString& text, bool isNoneThere) const;
    [[nodiscard]] const core::Lot* lotOf(const QString& text) const;
    // Why a lot can't be used without a reason; empty: it can.
    [[nodiscard]] QString unfitness(const core::Lot& lot) const;
    [[nodiscard]] std::optional<std::vector<core::PartTaken>> parts();
    [[nodiscard]] std::string numberAfter(const std::string& last) const;
    [[nodiscard]] core::RecipeCard asTyped();

    Session& m_session;
    core::Shelf m_shelf;
    core::RecipeCard m_recipe; // as it stands written
    core::RecipeCard m_scaled;
    PlainForm* m_form = nullptr;
    QVBoxLayout* m_down;
    Label* m_name;
    Label* m_source;
    Label* m_method;
    Label* m_caution;
    FieldRow* m_yield = nullptr;
    FieldRow* m_number = nullptr;
    FieldRow* m_keptAt = nullptr;
    FieldRow* m_until = nullptr;
    FieldRow* m_called = nullptr;
    std::vector<PartRows> m_parts;
    QPushButton* m_book;
    QPushButton* m_label;
    QString m_labelled; // the number of the lot booked last
    QPushButton* m_own;
    QPushButton* m_remove;
};

} // namespace headcap::app
