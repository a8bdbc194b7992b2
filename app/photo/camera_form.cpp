#include "app/photo/camera_form.h"

#include <QDir>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/stock/plain_form.h"
#include "core/values/decimal.h"

namespace headcap::app::photo {
namespace {

constexpr std::array kKeys{core::kPhotoBefore, core::kPhotoAfter, core::kCameraAhead};

std::array<core::Minutes, 3> valuesOf(const core::PhotoTimes& times) {
    return {times.before, times.after, times.cameraAhead};
}

QString minutesText(core::Minutes minutes) {
    return CameraForm::tr("%1 min").arg(minutes.count());
}

} // namespace

CameraForm::CameraForm(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_folder(new Label(Face::body)),
      m_choose(
          quietButton(tr("Choose a folder …"),
                      tr("Where the camera or its program puts new pictures, on this machine"))),
      m_none(quietButton(tr("Watch none"), tr("No folder is watched"))), m_form(new PlainForm) {
    const std::array labels{tr("Before a step"), tr("After it"), tr("Camera ahead")};
    const std::array hints{tr("a photograph is still of it: 5 min"),
                           tr("a photograph is still of it: 10 min"),
                           tr("of the workshop's clock: 0 min; behind: −3 min")};
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rows[i] = &m_form->line(labels[i], hints[i]);
    }
    connect(m_form, &FormBase::left, this, &CameraForm::keep);
    connect(m_choose, &QPushButton::clicked, this, &CameraForm::choose);
    connect(m_none, &QPushButton::clicked, this, [this] { watch({}); });
    layOut();
}

void CameraForm::layOut() {
    m_folder->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_folder->setWordWrap(true);
    auto* words = new Label(Face::small, Ink::quiet,
                            tr("New pictures of the folder are offered wherever you are. One taken "
                               "while a step was being done is put to that step; where two people "
                               "were at work, you say which."));
    words->setRunning();
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kSpace);
    ways->addWidget(m_folder, 1);
    ways->addWidget(m_choose);
    ways->addWidget(m_none);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(new Label(Face::heading, Ink::ink, tr("From the camera")));
    down->addWidget(new HairRule);
    down->addWidget(words);
    down->addLayout(ways);
    down->addWidget(m_form);
}

void CameraForm::refresh() {
    const QString folder = m_session.settings().value(Setting::watchedFolder).toString();
    m_folder->setText(folder.isEmpty() ? tr("No folder is watched.")
                                       : QDir::toNativeSeparators(folder));
    m_folder->setAccessibleName(tr("Watched folder: %1").arg(m_folder->text()));
    m_none->setVisible(!folder.isEmpty());
    m_session.guarded([this] { m_own = core::all<core::HouseValue>(m_session.records()); });
    std::vector<core::HouseValue> own;
    for (const auto& one : m_own) {
        own.push_back(one.record);
    }
    const auto values = valuesOf(core::photoTimesOf(own));
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rows[i]->accept(minutesText(values[i]));
    }
}

void CameraForm::choose() {
    if (const auto folder = m_session.prompts().folder(tr("The camera's folder"))) {
        watch(*folder);
    }
}

void CameraForm::watch(const QString& folder) {
    m_session.settings().set(Setting::watchedFolder, folder);
    refresh();
}

void CameraForm::put(core::Change& change, std::string_view key, core::Minutes minutes) {
    const std::string text = std::to_string(minutes.count());
    for (const auto& one : m_own) {
        if (one.record.key == key) {
            core::HouseValue value = one.record;
            value.value = text;
            change.update(value, one.revision);
            return;
        }
    }
    change.add(core::HouseValue{
        .id = m_session.ids().next<core::HouseValue>(), .key = std::string{key}, .value = text});
}

void CameraForm::keep() {
    core::Change change{.sentence = toCore(tr("House values of photographs changed"))};
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        FieldRow& row = *m_rows[i];
        if (!row.isEdited()) {
            continue;
        }
        QString text = row.text().trimmed();
        text.replace(QChar{0x2212}, QLatin1Char('-'));
        text.remove(QStringLiteral("min"));
        const auto minutes = core::parseDecimal(toCore(text.trimmed()), 0);
        const bool mayBeNegative = kKeys[i] == core::kCameraAhead;
        if (!minutes || (*minutes < 0 && !mayBeNegative)) {
            row.setError(tr("Write it in whole minutes: 5 min."));
            continue;
        }
        put(change, kKeys[i], core::Minutes{*minutes});
    }
    if (!change.writes.empty() && m_session.apply(std::move(change))) {
        refresh();
    }
}

} // namespace headcap::app::photo
