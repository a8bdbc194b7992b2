#include "app/pages/survey_page.h"

#include "app/form/record_choices.h"
#include "app/pages/place_in_book.h"
#include "app/pages/survey_words.h"
#include "app/session/words.h"
#include "core/survey/finding_state.h"

namespace headcap::app {
namespace {

constexpr int kComponentWidth = 120;
constexpr int kDayWidth = 96;

// Not said before somebody has chosen.
void addSeverity(RecordForm<core::Finding>& form) {
    auto* box = new QComboBox;
    box->addItems(QStringList{SurveyPage::tr("not said")} + severityWords());
    form.bind(
        SurveyPage::tr("Severity"), box, false,
        [](const core::Finding& f) { return QString::number(f.severity - core::kSeverityNotSaid); },
        [](core::Finding& f, const QString& text) {
            f.severity = text.toLongLong() + core::kSeverityNotSaid;
            return QString{};
        });
}

} // namespace

SurveyPage::SurveyPage(Session& session, QWidget* parent)
    : JobPage(core::Page::survey, Body::scrolled, session, parent) {
    buildFindings();
    buildExaminations();
    buildTests();
    edits().alignLabels();
}

void SurveyPage::load(const core::JobFile& file) {
    m_file = file;
    for (FieldRow* row : m_volumes) {
        row->setVisible(!file.parts.empty());
    }
    m_findings->show(inSurveyOrder(file.findings), file);
    m_examinations->show(file.examinations, file);
    m_tests->show(file.tests, file);
}

bool SurveyPage::goTo(const core::RecordRef& ref) {
    const auto inList = [&](auto* list) {
        if (!list->goTo(ref.id)) {
            return false;
        }
        reveal(list);
        return true;
    };
    switch (ref.kind) {
    case core::RecordKind::finding:
        return inList(m_findings);
    case core::RecordKind::examination:
        return inList(m_examinations);
    case core::RecordKind::test:
        return inList(m_tests);
    default:
        return false;
    }
}

template <class Record>
void SurveyPage::addVolume(RecordForm<Record>& form) {
    m_volumes.push_back(&form.pick(tr("Volume"), &Record::part,
                                   volumesOf([this] { return m_file ? &*m_file : nullptr; })));
}

QString SurveyPage::photographsOf(const core::Finding& finding) const {
    int count = 0;
    QString first;
    for (const core::Photograph& photo : m_file->photographs) {
        if (photo.finding == finding.id && ++count == 1) {
            first = fromCore(photo.caption.empty() ? photo.fileName : photo.caption);
        }
    }
    if (count == 0) {
        return {};
    }
    return count == 1 ? tr("shown in “%1”").arg(first)
                      : tr("shown in %1 photographs, first “%2”").arg(count).arg(first);
}

void SurveyPage::buildFindings() {
    m_findings = new RecordList<core::Finding>(
        session(), edits(),
        {tr("Findings"), tr("Add a finding"),
         tr("What is wrong with it, and what is sound, component by component: boards, joints, "
            "spine, sewing, leaves. What you see goes under Observed; what you take for its cause, "
            "under Inferred.")},
        tr("Finding"));
    buildFindingForm();
    m_findings->describe = [this](const core::Finding& finding) {
        const core::Item* volume = m_file->part(finding.part);
        return rowOf(finding, volume != nullptr ? volumeName(*volume) : QString{},
                     photographsOf(finding));
    };
    m_findings->make = [this]() -> std::optional<core::Finding> {
        return core::Finding{.id = session().ids().next<core::Finding>(),
                             .job = m_file->job.id,
                             .severity = core::kSeverityNotSaid};
    };
    // Its photographs stay; they only no longer show it.
    m_findings->alsoRemove = [this](const core::Finding& finding, core::Change& change) {
        for (core::Photograph photo : m_file->photographs) {
            if (photo.finding == finding.id) {
                photo.finding.reset();
                change.update(photo, m_file->revisionOf(core::refOf(photo.id)));
            }
        }
    };
    m_findings->list().setMarkWidth(kComponentWidth);
    addSection(m_findings);
}

void SurveyPage::buildFindingForm() {
    auto& form = m_findings->form();
    FieldRow& component = form.term(tr("Component"), &core::Finding::component, componentChoices)
                              .placeholder(tr("boards, joints, sewing"));
    const auto termsHere = [&component] { return termChoices(component.text()); };
    FieldRow& term = form.term(tr("Term"), &core::Finding::term, termsHere);
    term.understood([&component](const QString& text) {
        const auto* found = termNamed(component.text(), text);
        return found != nullptr ? fromCore(found->definition) : QString{};
    });
    form.usedText(tr("Place"), &core::Finding::place)
        .placeholder(tr("leaf, board and edge: upper board, joint"))
        .understood(placeInBook(m_file));
    form.text(tr("Extent"), &core::Finding::extent).placeholder(tr("12 leaves, 30 %, 45 mm"));
    addSeverity(form);
    form.choice(tr("Activity"), &core::Finding::activity);
    FieldRow& handling = form.choice(tr("Handling"), &core::Finding::handling);
    form.check(tr("Earlier repair"), tr("this is an earlier repair"),
               &core::Finding::earlierRepair);
    form.lines(tr("Observed"), &core::Finding::observed).placeholder(tr("only what is seen"));
    form.lines(tr("Inferred"), &core::Finding::inferred)
        .placeholder(tr("the cause, as your opinion"));
    addVolume(form);
    // A term says what it usually allows; what was chosen already stays.
    connect(&term, &FieldRow::edited, &handling, [&form, &component, &term, &handling] {
        const auto* found = termNamed(component.text(), term.text());
        if (found != nullptr && form.isDraft() && !handling.isEdited()) {
            handling.rewrite(QString::number(static_cast<int>(found->handling)));
        }
    });
}

void SurveyPage::buildExaminations() {
    m_examinations = new RecordList<core::Examination>(
        session(), edits(),
        {tr("How it was examined"), tr("Add an examination"),
         tr("By what light and magnification it was looked at, and what could not be looked at: a "
            "look that left something out says so.")},
        tr("Examination"));
    auto& form = m_examinations->form();
    form.value(tr("On"), &core::Examination::onDay);
    form.pick(tr("By"), &core::Examination::who, peopleOf(session()));
    form.lines(tr("How"), &core::Examination::method)
        .placeholder(tr("raking light, transmitted light, 10×"));
    form.lines(tr("Not examined"), &core::Examination::notExamined)
        .placeholder(tr("the sewing under the spine linings"));
    addVolume(form);
    m_examinations->describe = [this](const core::Examination& examination) {
        return rowOf(examination, *m_file, session().clock().today());
    };
    m_examinations->make = [this]() -> std::optional<core::Examination> {
        return core::Examination{.id = session().ids().next<core::Examination>(),
                                 .job = m_file->job.id,
                                 .onDay = session().clock().today(),
                                 .who = session().person()};
    };
    m_examinations->list().setMarkWidth(kDayWidth);
    addSection(m_examinations);
}

void SurveyPage::buildTests() {
    m_tests = new RecordList<core::Test>(
        session(), edits(),
        {tr("Spot tests and samples"), tr("Add a test"),
         tr("Inks before washing, pigments before handling. What takes nothing comes first; a "
            "sample needs the owner's consent.")},
        tr("Test"));
    auto& form = m_tests->form();
    form.usedText(tr("What for"), &core::Test::purpose)
        .placeholder(tr("solubility of the ink in water"));
    form.text(tr("Place"), &core::Test::place)
        .placeholder(tr("leaf, board and edge"))
        .understood(placeInBook(m_file));
    form.usedText(tr("How"), &core::Test::method).placeholder(tr("drop and blotter, 60 s"));
    form.value(tr("On"), &core::Test::onDay);
    form.pick(tr("By"), &core::Test::who, peopleOf(session()));
    form.check(tr("Sample"), tr("a sample was taken"), &core::Test::sampleTaken);
    form.text(tr("Consent"), &core::Test::consent)
        .placeholder(tr("of the owner: who, when, by what means"));
    form.text(tr("Kept"), &core::Test::kept).placeholder(tr("what was kept of the sample"));
    form.lines(tr("Result"), &core::Test::result);
    addVolume(form);
    m_tests->describe = [this](const core::Test& test) {
        return rowOf(test, session().clock().today());
    };
    m_tests->make = [this]() -> std::optional<core::Test> {
        return core::Test{.id = session().ids().next<core::Test>(),
                          .job = m_file->job.id,
                          .onDay = session().clock().today(),
                          .who = session().person()};
    };
    m_tests->list().setMarkWidth(kDayWidth);
    addSection(m_tests);
}

} // namespace headcap::app
