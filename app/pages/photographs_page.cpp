#include "app/pages/photographs_page.h"

#include <algorithm>

#include <QAction>
#include <QBoxLayout>
#include <QClipboard>
#include <QDropEvent>
#include <QGuiApplication>
#include <QMimeData>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/photo/camera_form.h"
#include "app/photo/contact_sheet.h"
#include "app/photo/large_view.h"
#include "app/photo/photo_delegate.h"
#include "app/photo/photo_form.h"
#include "app/photo/photo_grid.h"
#include "app/photo/take_in.h"
#include "app/print/photo_loader.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/photo/photo_order.h"

namespace headcap::app {
namespace {

// Empty where the file is not there: the sheet then says so in words.
print::PhotoLookup lookupIn(const core::FileStore& files) {
    return [&files](const core::Digest& digest) {
        try {
            return QString::fromStdString(
                files.pathOf(core::FileStore::Shelf::photograph, digest).string());
        } catch (const core::StoreError&) {
            return QString{};
        }
    };
}

QString thumbnailFolder(const core::FileStore& files) {
    return QString::fromStdString((files.cacheFolder() / "thumbnails").string());
}

} // namespace

PhotographsPage::PhotographsPage(Session& session, QWidget* parent)
    : JobPage(core::Page::photographs, Body::scrolled, session, parent),
      m_loader(new print::PhotoLoader(lookupIn(session.stores().files),
                                      thumbnailFolder(session.stores().files), this)),
      m_intake(new photo::PhotoIntake(session.stores().files, this)),
      m_form(new RecordForm<core::Photograph>(session, tr("Photograph"))),
      m_facts(new Label(Face::small, Ink::quiet)), m_progress(new Label(Face::small, Ink::quiet)),
      m_stop(quietButton(tr("Stop"), tr("Stops; what is in stays"))),
      m_large(new photo::LargeView(*m_loader, this)), m_camera(new photo::CameraForm(session)) {
    setAcceptDrops(true);
    buildHead();
    buildSheet();
    connectParts();
}

void PhotographsPage::buildHead() {
    auto* add = quietButton(tr("Add photographs …"), tipOf(ActionId::addRecord));
    connect(add, &QPushButton::clicked, this, &PhotographsPage::askForFiles);
    m_progress->setText(tr("or drop them here, or paste them"));
    m_stop->hide();
    connect(m_stop, &QPushButton::clicked, m_intake, &photo::PhotoIntake::stop);
    auto* head = new QHBoxLayout;
    head->setSpacing(kSpace);
    head->addWidget(add);
    head->addWidget(m_progress);
    head->addWidget(m_stop);
    head->addStretch();
    body().addLayout(head);
}

void PhotographsPage::buildSheet() {
    photo::buildPhotoForm(*m_form, [this] { return m_file ? &*m_file : nullptr; });
    edits().watch(m_form);
    auto* large = quietButton(tr("Large view"), tr("As large as the page (Enter)"));
    auto* remove = quietButton(tr("Remove"), tipOf(ActionId::removeRecord));
    connect(large, &QPushButton::clicked, this, &PhotographsPage::openLarge);
    connect(remove, &QPushButton::clicked, this, &PhotographsPage::removeChosen);
    auto* line = new QHBoxLayout;
    line->setSpacing(kSpace);
    line->addWidget(m_facts, 1);
    line->addWidget(large);
    line->addWidget(remove);
    auto* frame = new QWidget;
    auto* box = new QVBoxLayout(frame);
    box->setContentsMargins(0, kGap, 0, kSpace);
    box->setSpacing(kGap);
    box->addLayout(line);
    box->addWidget(m_form);
    m_sheet = new photo::ContactSheet(*m_loader, frame);
    body().addWidget(m_sheet);
    body().addSpacing(kSection);
    body().addWidget(m_camera);
}

void PhotographsPage::connectParts() {
    using photo::ContactSheet;
    connect(m_sheet, &ContactSheet::currentMoved, this, [this] {
        edits().save();
        showChosen();
    });
    connect(m_sheet, &ContactSheet::opened, this, &PhotographsPage::openLarge);
    connect(m_sheet, &ContactSheet::removeAsked, this, &PhotographsPage::removeChosen);
    connect(m_sheet, &ContactSheet::moveAsked, this, &PhotographsPage::moveChosen);
    connect(m_sheet, &ContactSheet::dropped, this,
            [this](const auto& incoming, core::PhotoRole role) { take(incoming, role); });
    connect(m_large, &photo::LargeView::closed, this, [this] {
        m_sheet->select(m_large->current().id);
        m_sheet->focusCurrent();
    });
    connect(m_intake, &photo::PhotoIntake::progressed, this, [this](int done, int total) {
        m_progress->setText(tr("taking in %1 of %2 …").arg(done + 1).arg(total));
        m_stop->show();
    });
    connect(m_intake, &photo::PhotoIntake::finished, this, &PhotographsPage::takenIn);
    connect(app::addAction(this, ActionId::addRecord), &QAction::triggered, this,
            &PhotographsPage::askForFiles);
    connect(app::addAction(this, ActionId::pastePhotographs), &QAction::triggered, this,
            &PhotographsPage::paste);
}

void PhotographsPage::load(const core::JobFile& file) {
    m_file = file;
    m_sheet->show(file.photographs);
    m_camera->refresh();
    showChosen();
}

bool PhotographsPage::leave() {
    if (m_intake->isBusy()) {
        session().say({Notice::Kind::refused,
                       tr("Photographs are still being taken in: wait a moment, or press Stop.")});
        return false;
    }
    return JobPage::leave();
}

bool PhotographsPage::goTo(const core::RecordRef& ref) {
    if (ref.kind != core::RecordKind::photograph ||
        !m_sheet->select(core::Id<core::Photograph>{ref.id})) {
        return false;
    }
    m_sheet->focusCurrent();
    reveal(m_form);
    return true;
}

void PhotographsPage::enter() {
    if (m_sheet->current()) {
        m_sheet->focusCurrent();
    } else {
        JobPage::enter();
    }
}

const core::Photograph* PhotographsPage::chosen() const {
    const auto id = m_sheet->current();
    if (!id || !m_file) {
        return nullptr;
    }
    const auto at = std::ranges::find(m_file->photographs, *id, &core::Photograph::id);
    return at == m_file->photographs.end() ? nullptr : &*at;
}

void PhotographsPage::showChosen() {
    const core::Photograph* one = chosen();
    if (one == nullptr) {
        m_form->clear();
        return;
    }
    m_form->show(*one, m_file->revisionOf(core::refOf(one->id)));
    m_facts->setText(photo::factsOf(*one, session().clock()));
    m_form->rowLabelled(tr("Volume"))->setVisible(!m_file->parts.empty());
}

void PhotographsPage::openLarge() {
    if (const core::Photograph* one = savedChosen()) {
        m_large->open(m_file->photographs, one->id);
    }
}

// Saving reads the job anew: what was chosen before it is another object after.
const core::Photograph* PhotographsPage::savedChosen() {
    return chosen() != nullptr && edits().save() ? chosen() : nullptr;
}

void PhotographsPage::removeChosen() {
    const core::Photograph* one = savedChosen();
    if (one == nullptr) {
        return;
    }
    const QString what = photo::titleOf(*one);
    core::Change change{.sentence = toCore(tr("Photograph removed: %1").arg(what))};
    change.remove(*one, m_file->revisionOf(core::refOf(one->id)));
    m_form->clear(); // what is removed is not saved as it goes
    if (session().apply(std::move(change))) {
        session().say({Notice::Kind::done, tr("Removed: %1").arg(what), true});
    } else {
        showChosen();
    }
}

void PhotographsPage::moveChosen(int by) {
    const core::Photograph* one = savedChosen();
    if (one == nullptr) {
        return;
    }
    core::Change change{
        .sentence = toCore(by < 0 ? tr("Photograph put earlier: %1").arg(photo::titleOf(*one))
                                  : tr("Photograph put later: %1").arg(photo::titleOf(*one)))};
    for (const core::Photograph& photo : core::moved(m_file->photographs, one->id, by)) {
        change.update(photo, m_file->revisionOf(core::refOf(photo.id)));
    }
    session().apply(std::move(change));
}

void PhotographsPage::askForFiles() {
    take(photo::incomingFrom(session().prompts().filesToOpen(
        tr("Photographs of this job"),
        tr("Photographs (*.jpg *.jpeg *.png *.tif *.tiff *.webp);;All files (*)"))));
}

void PhotographsPage::paste() {
    const QMimeData* onClipboard = QGuiApplication::clipboard()->mimeData();
    if (onClipboard == nullptr || !photo::holdsPhotographs(*onClipboard)) {
        session().say({Notice::Kind::refused, tr("There is no photograph to paste.")});
        return;
    }
    take(photo::incomingFrom(*onClipboard));
}

void PhotographsPage::dragEnterEvent(QDragEnterEvent* event) {
    if (photo::holdsPhotographs(*event->mimeData())) {
        event->setDropAction(Qt::CopyAction);
        event->accept();
    }
}

void PhotographsPage::dropEvent(QDropEvent* event) {
    take(photo::incomingFrom(*event->mimeData()));
    event->acceptProposedAction();
}

// They belong with the chosen one, or to what the job is at.
void PhotographsPage::take(const std::vector<photo::Incoming>& incoming) {
    const core::Photograph* one = chosen();
    take(incoming, one != nullptr ? one->role : core::usualRole(m_file->job.state));
}

void PhotographsPage::take(const std::vector<photo::Incoming>& incoming, core::PhotoRole role) {
    if (edits().save()) {
        m_intake->take(incoming, {m_file->job.id, role});
    }
}

void PhotographsPage::takenIn(const photo::IntakeResult& result, const photo::IntakePlace& place) {
    if (!m_intake->isBusy()) {
        m_progress->setText(tr("or drop them here, or paste them"));
        m_stop->hide();
    }
    const auto first = photo::recordKept(session(), result, place).first;
    if (first && m_sheet->select(*first)) {
        m_sheet->focusCurrent();
    }
}

} // namespace headcap::app
