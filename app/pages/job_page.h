// A page of a job: one thing at a time, set like a page, with a title, a line of what it is for,
// and the work. JobView asks it to load, to leave, and to go to a record.
//
// To add a page:
//  1. class SurveyPage : public JobPage (Q_OBJECT, app/pages/survey_page.h/.cpp, book_page.* is
//     the model); the base's constructor takes the core::Page and how the body scrolls.
//  2. In the constructor build forms (RecordForm) and lists (RecordList) into body() with
//     addSection(); give each the page's edits(), which save them together when a field is left.
//  3. load(file) shows the file: form->show(record, revision), list->show(records, file). It is
//     called again after every change, also somebody else's; edits under way stay.
//  4. leave() need not be written where edits() holds all there is to save.
//  5. goTo(ref) takes the cursor to a record and is true where the page has it: margin notes,
//     search results and the audit come through it. RecordList::goTo does the work.
//  6. Changes of its own go through session().apply(change), with a sentence for the journal; a
//     refusal has been said by then. Questions to the system go through session().prompts().
//  7. Keys come from app/session/actions.h. Words whole through tr(). No colour but look/palette.
//  8. Add the file to app/pages/CMakeLists.txt and one line to page_table.cpp; the sewing line,
//     keys, margin, pictures and the tests over all pages take it from there.
#pragma once

#include <QWidget>

#include "app/form/page_edits.h"
#include "core/custody/page.h"
#include "core/record/job_file.h"

class QScrollArea;
class QVBoxLayout;

namespace headcap::app {

class Label;

class JobPage : public QWidget {
    Q_OBJECT
public:
    // Scrolled: the whole page scrolls as one. Fixed: the body fills what is left and scrolls
    // inside itself; where less is left than it needs at least, the page scrolls too.
    enum class Body { scrolled, fixed };

    JobPage(core::Page page, Body body, Session& session, QWidget* parent = nullptr);

    [[nodiscard]] core::Page page() const { return m_page; }
    virtual void load(const core::JobFile& file) = 0;
    // Saves; false where something could not be, and the page is to stay.
    [[nodiscard]] virtual bool leave() { return m_edits.leave(); }
    virtual bool goTo(const core::RecordRef& ref);
    // Ctrl+P; false where there is nothing of its own to print.
    virtual bool print() { return false; }
    // Esc: stops or shuts what is open on the page; false where nothing is.
    virtual bool back() { return false; }
    // Where the cursor goes when the page is come to.
    virtual void enter();

Q_SIGNALS:
    // To a record of the job, on whichever page has it.
    void recordAsked(const headcap::core::RecordRef& ref, headcap::core::Page page);
    void pageAsked(headcap::core::Page page);

protected:
    [[nodiscard]] Session& session() const { return m_session; }
    [[nodiscard]] PageEdits& edits() { return m_edits; }
    [[nodiscard]] QVBoxLayout& body() { return *m_body; }
    // Under a heading and a hair rule.
    void addSection(const QString& heading, QWidget* content);
    // A list has its heading itself.
    void addSection(QWidget* list);
    // So that what is gone to can be seen, when it has been laid out.
    void reveal(QWidget* widget);

private:
    core::Page m_page;
    Session& m_session;
    PageEdits m_edits;
    QScrollArea* m_scroll;
    QVBoxLayout* m_body;
};

// What pages are called and what they are for.
[[nodiscard]] QString titleOf(core::Page page);
[[nodiscard]] QString purposeOf(core::Page page);

} // namespace headcap::app
