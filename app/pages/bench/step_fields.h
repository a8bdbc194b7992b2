// The fields of a step that is being written. The technique fills in what is usual of it, where
// nothing else was written by hand. A removal asks what was taken out and what became of it; an
// uncovering for its photograph; an incident for what was done about it.
#pragma once

#include <set>

#include "app/form/record_form.h"
#include "core/treatment/step.h"
#include "core/treatment/step_conditions.h"
#include "core/treatment/techniques.h"

namespace headcap::app {

class StepFields : public QObject {
    Q_OBJECT
public:
    explicit StepFields(Session& session, QObject* parent = nullptr);

    [[nodiscard]] RecordForm<core::Step>& form() { return *m_form; }
    void show(const core::Step& step, const core::JobFile& file);
    void refresh(const core::JobFile& file) { m_file = file; }
    // What has been worked since it was begun, offered as its time.
    void tick();
    // The step with what can be read. Where no time was said, it took until now; where one was
    // said, it was begun so long ago.
    [[nodiscard]] core::Step taken();
    // The conditions that the technique does not ask for, and that nobody wrote down, are not
    // shown until they are asked for.
    void showAllConditions();
    // The first field that still asks something of the step, with its sentence; none: null.
    FieldRow* asked(const core::Step& step);
    // How it is undone, where the usual sentence is not true of it; null where there is no doubt.
    FieldRow* askUndoing(const std::string& doubt);

Q_SIGNALS:
    void adviceChanged(const QString& words);
    void techniqueChanged(const std::string& key);
    // Those that are not shown, by name; empty: none.
    void hiddenChanged(const QStringList& conditions);

private:
    void buildWhat();
    void buildWhen();
    void buildUndoing();
    void buildConditions();
    void followConditions(const core::Technique* technique);
    void addCondition(FieldRow& row, const QString& name, core::AsksFor asks);
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
    struct Condition {
        FieldRow* row;
        QString name;
        core::AsksFor asks;
    };
    std::vector<Condition> m_conditions;
    bool m_showsAll = false;
    std::set<FieldRow*> m_touched; // written by hand
    std::string m_followed;        // the technique that last filled the others in
};

} // namespace headcap::app
