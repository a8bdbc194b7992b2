// The fields of a step that is being written: first what every step needs, its materials among
// them; the rest folded under headings that say what stands in it. The technique fills in what is
// usual of it, where nothing else was written by hand. A removal asks what was taken out and what
// became of it; an uncovering for its photograph; an incident for what was done about it.
#pragma once

#include <array>
#include <map>
#include <set>

#include "app/form/record_form.h"
#include "core/treatment/step.h"
#include "core/treatment/step_conditions.h"
#include "core/treatment/techniques.h"

class QVBoxLayout;

namespace headcap::app {

class FoldHeading;

class StepFields : public QObject {
    Q_OBJECT
public:
    enum class Fold { when, kind, conditions };

    explicit StepFields(Session& session, QObject* parent = nullptr);

    [[nodiscard]] RecordForm<core::Step>& form() { return *m_form; }
    void show(const core::Step& step, const core::JobFile& file);
    void refresh(const core::JobFile& file) { m_file = file; }
    // What has been worked since it was begun, offered as its time.
    void tick();
    // The step with what can be read. Where no time was said, it took until now; where one was
    // said, it was begun so long ago.
    [[nodiscard]] core::Step taken();
    // Among the rows, below what was worked and how long: for what it was done with.
    [[nodiscard]] QVBoxLayout& materials() { return *m_materials; }
    [[nodiscard]] FoldHeading& heading(Fold fold);
    void alignLabels(int width);
    // The first field that still asks something of the step, with its sentence; none: null.
    FieldRow* asked(const core::Step& step);
    // How it is undone, where the usual sentence is not true of it; null where there is no doubt.
    FieldRow* askUndoing(const std::string& doubt);

Q_SIGNALS:
    void adviceChanged(const QString& words);
    void techniqueChanged(const std::string& key);

private:
    void buildWhat();
    void buildWhen();
    void buildKind();
    void buildConditions();
    void addMaterials();
    void beginFold(Fold fold, const QString& name);
    // Whether the step can have such a row at all, and whether it is shown folded or not.
    void stand(FieldRow* row, bool isWanted, bool isFirst = false);
    void look();
    FieldRow& folded(Fold fold, FieldRow& row);
    void followConditions(const core::Technique* technique);
    void addCondition(FieldRow& row, core::AsksFor asks);
    void addBegun();
    void addMinutes();
    void addSets();
    void followTechnique();
    void followKind();
    void fill(FieldRow* row, const QString& text);
    [[nodiscard]] Choices approved() const;
    [[nodiscard]] std::optional<core::Minutes> sinceBegun() const;

    Session& m_session;
    RecordForm<core::Step>* m_form;
    std::optional<core::JobFile> m_file;
    FieldRow* m_kind = nullptr;
    FieldRow* m_technique = nullptr;
    FieldRow* m_part = nullptr;
    FieldRow* m_what = nullptr;
    FieldRow* m_removed = nullptr;
    FieldRow* m_fate = nullptr;
    FieldRow* m_begun = nullptr;
    FieldRow* m_minutes = nullptr;
    FieldRow* m_sets = nullptr;
    FieldRow* m_reversibility = nullptr;
    FieldRow* m_undoing = nullptr;
    FieldRow* m_line = nullptr;
    QVBoxLayout* m_materials = nullptr;
    struct Folding {
        FoldHeading* heading = nullptr;
        std::vector<FieldRow*> rows{};
    };
    std::array<Folding, 3> m_folds{};
    struct Condition {
        FieldRow* row;
        core::AsksFor asks;
    };
    std::vector<Condition> m_conditions;
    std::set<FieldRow*> m_unwanted; // the step can't have it
    std::set<FieldRow*> m_first;    // shown, though its rows are folded
    std::set<FieldRow*> m_touched;  // written by hand
    std::string m_followed;         // the technique that last filled the others in
};

} // namespace headcap::app
