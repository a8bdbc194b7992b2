#include "app/papers/attachment_list.h"

#include <QDragEnterEvent>
#include <QLocale>
#include <QMimeData>
#include <QPushButton>
#include <QUrl>

#include "app/look/quiet_button.h"
#include "app/papers/data_sheets.h"
#include "app/session/words.h"

namespace headcap::app::papers {
namespace {

QStringList localFiles(const QMimeData& data) {
    QStringList paths;
    for (const QUrl& url : data.urls()) {
        if (url.isLocalFile()) {
            paths << url.toLocalFile();
        }
    }
    return paths;
}

} // namespace

AttachmentList::AttachmentList(Session& session, PageEdits& edits, const Words& words,
                               QWidget* parent)
    : RecordList(session, edits, words, tr("Attachment"), parent), m_session(session),
      m_intake(session.stores().files, this), m_stop(quietButton(tr("Stop"), tr("Stops; what is in "
                                                                                "stays"))) {
    setAcceptDrops(true);
    buildForm();
    describe = [this](const core::Attachment& attachment) { return rowOf(attachment); };
    list().setMarkWidth(0);
    // A file comes first, and its record with it.
    connect(this, &ListSection::addAsked, this, &AttachmentList::ask);
    connect(&m_intake, &FileIntake::finished, this, &AttachmentList::record);
    m_stop->hide();
    addWay(m_stop);
    connect(m_stop, &QPushButton::clicked, &m_intake, &FileIntake::stop);
    connect(&m_intake, &FileIntake::progressed, this, [this](int done, int total) {
        setNote(tr("taking in %1 of %2 …").arg(done + 1).arg(total));
        m_stop->show();
    });
}

void AttachmentList::buildForm() {
    form().text(tr("File name"), &core::Attachment::fileName);
    form()
        .bind(
            tr("Belongs to"), new QLineEdit, false,
            [this](const core::Attachment& a) { return subjectWords(a.subject, m_subjects); },
            [this](core::Attachment& a, const QString& text) {
                const auto key = app::keyOf(m_subjects, text);
                const auto ref = key ? refNamed(*key) : std::nullopt;
                if (!ref) {
                    return notAmongThem();
                }
                a.subject = *ref;
                return QString{};
            })
        .completed([this] { return app::wordsOf(m_subjects); });
    form().lines(tr("Note"), &core::Attachment::note).placeholder(tr("what it is, and from whom"));
    auto* open = new QPushButton(tr("Open the file"));
    open->setToolTip(tr("Opens it with the program the system has for it; the kept file itself is "
                        "never changed"));
    connect(open, &QPushButton::clicked, this, &AttachmentList::openCurrent);
    form().addBelow(open);
}

void AttachmentList::setSubject(const Subject& subject, std::vector<Choice> subjects) {
    m_subject = subject;
    m_subjects = std::move(subjects);
}

void AttachmentList::ask() {
    if (m_subject) {
        attach(m_session.prompts().filesToOpen(tr("Attach files"), {}));
    }
}

void AttachmentList::attach(const QStringList& paths) {
    if (m_subject) {
        m_intake.take(paths, *m_subject);
    }
}

void AttachmentList::record(const IntakeResult& result, const Subject& subject) {
    if (!m_intake.isBusy()) {
        setNote({});
        m_stop->hide();
    }
    core::Change change;
    QStringList names;
    std::optional<core::Uuid> first;
    for (const KeptFile& kept : result.kept) {
        const core::Attachment made{.id = m_session.ids().next<core::Attachment>(),
                                    .job = subject.job,
                                    .subject = subject.record,
                                    .fileName = toCore(kept.name),
                                    .mediaType = toCore(kept.mediaType),
                                    .digest = kept.digest,
                                    .bytes = kept.bytes};
        first = first ? first : std::optional{made.id.uuid()};
        change.add(made);
        names << kept.name;
    }
    change.sentence = toCore(tr("Attached: %1").arg(names.join(QStringLiteral(", "))));
    if (first && !m_session.apply(std::move(change))) {
        return;
    }
    if (first) {
        goTo(*first);
    }
    if (result.failure) {
        m_session.say({Notice::Kind::failed, sentence(*result.failure)});
    } else if (!result.refused.isEmpty()) {
        m_session.say({Notice::Kind::refused, result.refused.join(QLatin1Char(' '))});
    } else if (first) {
        m_session.say(
            {Notice::Kind::done, tr("Attached: %1").arg(names.join(QStringLiteral(", "))), true});
    }
}

void AttachmentList::openCurrent() {
    const auto& shown = form().record();
    if (!shown) {
        return;
    }
    openSheet(m_session, *shown);
}

RowWords AttachmentList::rowOf(const core::Attachment& attachment) const {
    return {.title = fromCore(attachment.fileName),
            .detail =
                dotted({subjectWords(attachment.subject, m_subjects), fromCore(attachment.note)}),
            .right = QLocale{}.formattedDataSize(attachment.bytes, 1, QLocale::DataSizeSIFormat)};
}

void AttachmentList::dragEnterEvent(QDragEnterEvent* event) {
    if (m_subject && !localFiles(*event->mimeData()).isEmpty()) {
        event->acceptProposedAction();
    }
}

void AttachmentList::dropEvent(QDropEvent* event) {
    attach(localFiles(*event->mimeData()));
    event->acceptProposedAction();
}

} // namespace headcap::app::papers
