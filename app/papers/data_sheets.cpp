#include "app/papers/data_sheets.h"

#include <QUrl>

#include "app/look/style.h"
#include "app/session/words.h"

namespace headcap::app::papers {

std::vector<core::Stored<core::Attachment>> sheetsOf(Session& session,
                                                     const core::Id<core::Material>& kind) {
    std::vector<core::Stored<core::Attachment>> sheets;
    session.guarded([&] {
        sheets = core::typed<core::Attachment>(
            session.records().allWith(core::RecordKind::attachment, "subject_id", kind.text()));
    });
    return sheets;
}

void openSheet(Session& session, const core::Attachment& sheet) {
    session.guarded([&] {
        const auto path =
            session.stores().files.pathOf(core::FileStore::Shelf::attachment, sheet.digest);
        session.prompts().open(QUrl::fromLocalFile(QString::fromStdString(path.string())));
    });
}

DataSheetButton::DataSheetButton(Session& session, QWidget* parent)
    : QPushButton(tr("Safety data sheet"), parent), m_session(session) {
    setProperty(kQuietButton, true);
    connect(this, &QPushButton::clicked, this, [this] {
        if (m_sheet) {
            openSheet(m_session, *m_sheet);
        }
    });
    setKind(std::nullopt);
}

void DataSheetButton::setKind(const std::optional<core::Id<core::Material>>& kind) {
    const auto sheets =
        kind ? sheetsOf(m_session, *kind) : std::vector<core::Stored<core::Attachment>>{};
    m_sheet = sheets.empty() ? std::nullopt : std::optional{sheets.back().record};
    setVisible(m_sheet.has_value());
    if (m_sheet) {
        setToolTip(tr("Opens %1").arg(fromCore(m_sheet->fileName)));
    }
}

} // namespace headcap::app::papers
