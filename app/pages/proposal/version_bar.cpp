#include "app/pages/proposal/version_bar.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/quiet_button.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"

namespace headcap::app {
namespace {

QString wordsOf(const core::JobFile& file, const core::Proposal& proposal, core::Day today) {
    QStringList said{VersionBar::tr("Version %1").arg(proposal.version)};
    said << (proposal.sentOn ? VersionBar::tr("sent %1").arg(shortDay(*proposal.sentOn, today))
                             : VersionBar::tr("not sent"));
    if (const core::Decision* decision = core::latestDecision(file, proposal.id)) {
        said << words(decision->kind);
    }
    return dotted(said);
}

} // namespace

VersionBar::VersionBar(QWidget* parent)
    : QWidget(parent), m_versions(new QHBoxLayout),
      m_print(quietButton(tr("Print …"), tr("Prints this version on the letterhead (Ctrl+P)"))),
      m_save(
          quietButton(tr("Save as PDF …"), tr("Writes this version on the letterhead to a PDF"))),
      m_sent(quietButton(tr("Sent today"),
                         tr("It went to the owner today; the job is then proposed"))),
      m_next(quietButton(tr("New version"),
                         tr("Begins the next version with the options and lines of the latest"))) {
    connect(m_sent, &QPushButton::clicked, this, &VersionBar::sentAsked);
    connect(m_print, &QPushButton::clicked, this, &VersionBar::printAsked);
    connect(m_save, &QPushButton::clicked, this, &VersionBar::saveAsked);
    connect(m_next, &QPushButton::clicked, this, &VersionBar::nextAsked);
    m_versions->setSpacing(kGap);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(kGap);
    across->addLayout(m_versions);
    across->addStretch();
    across->addWidget(m_print);
    across->addWidget(m_save);
    across->addWidget(m_sent);
    across->addWidget(m_next);
}

void VersionBar::show(const core::JobFile& file, const core::Id<core::Proposal>& shown,
                      core::Day today) {
    std::vector<const core::Proposal*> proposals;
    for (const core::Proposal& proposal : file.proposals) {
        proposals.push_back(&proposal);
    }
    std::ranges::stable_sort(proposals, {}, &core::Proposal::version);
    while (m_versions->count() > static_cast<int>(proposals.size())) {
        QLayoutItem* last = m_versions->takeAt(m_versions->count() - 1);
        last->widget()->deleteLater();
        delete last;
    }
    while (m_versions->count() < static_cast<int>(proposals.size())) {
        auto* button = new QPushButton;
        button->setCheckable(true);
        m_versions->addWidget(button);
    }
    for (std::size_t i = 0; i < proposals.size(); ++i) {
        const core::Proposal& proposal = *proposals[i];
        auto* button =
            qobject_cast<QPushButton*>(m_versions->itemAt(static_cast<int>(i))->widget());
        button->disconnect(this);
        button->setText(wordsOf(file, proposal, today));
        button->setChecked(proposal.id == shown);
        connect(button, &QPushButton::clicked, this,
                [this, button, id = proposal.id, isShown = proposal.id == shown] {
                    button->setChecked(isShown);
                    Q_EMIT chosen(id);
                });
        if (proposal.id == shown) {
            if (m_sent->hasFocus() && proposal.sentOn) {
                m_print->setFocus(Qt::OtherFocusReason); // a second Enter begins no new version
            }
            m_sent->setVisible(!proposal.sentOn);
        }
    }
}

} // namespace headcap::app
