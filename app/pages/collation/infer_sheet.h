// A book nobody has published: marks, numbers and catchwords are typed as they come, Enter takes a
// leaf, and the gatherings and the formula are inferred as they grow, with what is sure and what
// is not. It can be broken off at any leaf.
#pragma once

#include <array>

#include <QWidget>

#include "app/session/session.h"
#include "core/collation/walk_entries.h"
#include "core/collation/walk_inference.h"
#include "core/record/job_file.h"

class QLineEdit;
class QPushButton;

namespace headcap::app {

class Label;

class InferSheet : public QWidget {
    Q_OBJECT
public:
    explicit InferSheet(Session& session, QWidget* parent = nullptr);

    void show(const core::JobFile& file, const std::optional<core::Id<core::Item>>& part,
              const core::Collation& collation);
    using QWidget::show;
    // Takes up this person's own, or begins one; false where none could be begun.
    bool go();
    [[nodiscard]] bool isTyping() const { return m_walk.has_value(); }
    [[nodiscard]] const core::InferredWalk& inferred() const { return m_inferred; }
    [[nodiscard]] QString said() const;
    [[nodiscard]] QPushButton& takeMakeUp() { return *m_take; }

Q_SIGNALS:
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum Field { mark, recto, verso, words, catchword };
    void layOut();
    void takeLeaf();
    void takeFormula();
    void leave();
    void infer();
    [[nodiscard]] core::WalkPen pen();
    [[nodiscard]] const core::Walk* open() const;

    Session& m_session;
    Label* m_place;
    std::array<QLineEdit*, 5> m_fields{};
    Label* m_formula;
    Label* m_said;
    QPushButton* m_take;
    QPushButton* m_leave;
    std::optional<core::JobFile> m_file;
    std::optional<core::Id<core::Item>> m_part;
    std::optional<core::Collation> m_collation;
    std::optional<core::Id<core::Walk>> m_walk;
    std::vector<core::WalkEntry> m_entries;
    core::InferredWalk m_inferred;
};

} // namespace headcap::app
