#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/drawing/gathering_view.h"
#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/collation/copy_words.h"
#include "app/pages/collation/leaf_sheet_section.h"
#include "app/pages/collation/leaf_sheet_view.h"
#include "app/pages/collation/walk_keys.h"
#include "app/pages/collation/walk_section.h"
#include "app/pages/collation_page.h"
#include "app/pages/collation_words.h"
#include "app/session/words.h"

namespace headcap::app {

void CollationPage::buildVolumeChoice() {
    m_volumes = new QComboBox;
    m_volumes->setAccessibleName(tr("Volume"));
    m_volumes->setToolTip(tr("Which volume of the set is collated"));
    body().addWidget(m_volumes, 0, Qt::AlignLeft);
    connect(m_volumes, &QComboBox::currentIndexChanged, this, [this] {
        edits().save();
        showVolume();
    });
}

void CollationPage::buildMakeUp() {
    m_formula = new Label(Face::book);
    m_formula->setWordWrap(true);
    m_formula->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_formula->setAccessibleName(tr("Formula as understood"));
    m_tally = new Label(Face::body, Ink::quiet);
    m_tally->setWordWrap(true);
    m_remarks = new Label(Face::small, Ink::open);
    m_remarks->setRunning();
    m_gatherings = new GatheringView;
    for (QWidget* part : {static_cast<QWidget*>(m_formula), static_cast<QWidget*>(m_tally),
                          static_cast<QWidget*>(m_remarks)}) {
        body().addWidget(part);
    }
    body().addSpacing(kSpace);
    body().addWidget(m_gatherings);
}

void CollationPage::buildWalk() {
    m_walk = new WalkSection(session());
    addSection(tr("Leaf by leaf, with the book in hand"), m_walk);
    auto* begin = new QAction(tr("Go through the book"), this);
    begin->setShortcut(QKeySequence{QLatin1String(kBeginWalkKey)});
    begin->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    addAction(begin);
    connect(begin, &QAction::triggered, this, [this] {
        if (edits().save()) {
            m_walk->go();
        }
    });
    connect(m_walk, &WalkSection::walking, this, [this](bool isWalking) {
        showGatherings();
        if (isWalking) {
            reveal(m_walk);
        }
    });
}

void CollationPage::buildCollation() {
    using R = core::Collation;
    m_collation = new RecordForm<R>(session(), tr("Collation"));
    m_collation->lines(tr("Formula"), &R::formula)
        .placeholder(tr("8°: π² A–K⁸ χ1 — typed A-K8 or A-K^8, as bibliographers write it"))
        .understood(formulaUnderstood);
    m_collation->text(tr("Extent"), &R::extent).placeholder(tr("[4], 160, [2] p., 3 plates"));
    m_collation->usedText(tr("Against"), &R::authority)
        .placeholder(tr("the bibliography, or the copy"));
    m_collation->lines(tr("This copy"), &R::statement)
        .placeholder(tr("lacks K2; K5 in facsimile; the rest present"));
    m_collation->lines(tr("Established"), &R::method)
        .placeholder(tr("leaf by leaf, by catchwords"));
    m_collation->lines(tr("Not looked at"), &R::notExamined);
    addTally(tr("Leaves called for"), &R::leavesCalledFor, tr("not counted"));
    addTally(tr("Leaves present"), &R::leavesPresent, tr("not counted"));
    addTally(tr("Plates called for"), &R::platesCalledFor, tr("not counted"));
    addTally(tr("Plates present"), &R::platesPresent, tr("not counted"));
    m_collation->value(tr("Finished on"), &R::finishedOn);
    m_collation->pick(tr("By"), &R::who, peopleOf(session()));
    edits().watch(m_collation);
    addSection(tr("Make-up and statement"), m_collation);
}

// A number of leaves or plates; an empty row where it is nought.
void CollationPage::addTally(const QString& label, std::int64_t core::Collation::*member,
                             const QString& nought) {
    m_collation
        ->bind(
            label, new QLineEdit, false,
            [member](const core::Collation& one) {
                return one.*member == 0 ? QString{} : printed(one.*member);
            },
            [member, today = session().clock().today()](core::Collation& one, const QString& text) {
                const std::string typed = toCore(text.trimmed());
                const auto number =
                    Reader<std::int64_t>::read(typed.empty() ? "0" : typed, {.today = today});
                if (!number) {
                    return sentence(number.error(), Reading::number);
                }
                one.*member = *number;
                return QString{};
            })
        .placeholder(nought);
}

void CollationPage::buildCopyWords() {
    m_copyWords = new CopyWords(session());
    addSection(tr("What comes of it"), m_copyWords);
    connect(m_copyWords, &CopyWords::noticeMade, this,
            [this](const core::RecordRef& ref) { Q_EMIT recordAsked(ref, core::Page::book); });
}

void CollationPage::buildFindings() {
    using R = core::CollationFinding;
    m_findings = makeFindingList(session(), edits(), bookShown());
    m_findings->make = [this]() -> std::optional<R> {
        return R{.id = session().ids().next<R>(),
                 .job = m_file->job.id,
                 .part = volume(),
                 .who = session().person()};
    };
    addSection(m_findings);
}

void CollationPage::buildFacsimiles() {
    using R = core::Facsimile;
    m_facsimiles = makeFacsimileList(session(), edits(), bookShown(), m_file);
    m_facsimiles->make = [this]() -> std::optional<R> {
        return R{.id = session().ids().next<R>(), .job = m_file->job.id, .part = volume()};
    };
    addSection(m_facsimiles);
}

void CollationPage::buildVolumeLists() {
    m_plates = makePlateList(session(), edits(), bookShown());
    m_plates->make = [this]() -> std::optional<core::CalledPlate> {
        const auto plates = ofVolume(m_file->plates, volume());
        return core::CalledPlate{.id = session().ids().next<core::CalledPlate>(),
                                 .job = m_file->job.id,
                                 .part = volume(),
                                 .position = plates.empty() ? 1 : plates.back().position + 1};
    };
    addSection(m_plates);
    m_tasks = makeTaskList(session(), edits(), bookShown());
    m_tasks->make = [this]() -> std::optional<core::LeafTask> {
        const auto tasks = ofVolume(m_file->leafTasks, volume());
        return core::LeafTask{.id = session().ids().next<core::LeafTask>(),
                              .job = m_file->job.id,
                              .part = volume(),
                              .position = tasks.empty() ? 1 : tasks.back().position + 1};
    };
    addSection(m_tasks);
}

void CollationPage::buildLeafSheet() {
    m_sheet = new LeafSheetSection(session());
    addSection(tr("The sheet of leaves"), m_sheet);
    auto* go = new QAction(tr("Sheet of leaves"), this);
    go->setShortcut(QKeySequence{QLatin1String(kSheetKey)});
    go->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    addAction(go);
    connect(go, &QAction::triggered, this, [this] {
        reveal(m_sheet);
        if (edits().save()) {
            m_sheet->enter();
        }
    });
}

} // namespace headcap::app
