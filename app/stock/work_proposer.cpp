#include "app/stock/work_proposer.h"

#include <algorithm>

#include <QComboBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/stock/plain_form.h"

namespace headcap::app {
namespace {

constexpr std::int64_t kMostStrips = 1'000;

QWidget* workChoice() {
    auto* box = new QComboBox;
    box->addItems(workNames());
    return box;
}

} // namespace

WorkProposer::WorkProposer(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_form(new PlainForm),
      m_work(&m_form->control(tr("The work"), workChoice(), true)),
      m_width(&m_form->line(tr("Leaf's width"), tr("118 mm; of its covers for a box"))),
      m_height(&m_form->line(tr("Leaf's height"), tr("186 mm"))),
      m_thickness(&m_form->line(tr("Thickness"), tr("over the spine: 27 mm"))),
      m_board(&m_form->line(tr("Board"), tr("its thickness: 2.5 mm"))),
      m_count(&m_form->line(tr("How many"), QStringLiteral("12"))),
      m_length(&m_form->line(tr("How long"), tr("180 mm"))),
      m_propose(new QPushButton(tr("Propose its pieces"))) {
    m_board->accept(QStringLiteral("2 mm"));
    m_propose->setToolTip(tr("Adds the pieces of this work, by the measures and the house values"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_form);
    down->addWidget(m_propose, 0, Qt::AlignLeft);
    connect(m_form, &FormBase::edited, this, &WorkProposer::showAsked);
    connect(m_propose, &QPushButton::clicked, this, &WorkProposer::proposeAsked);
    showAsked();
}

void WorkProposer::showAsked() {
    const auto work = static_cast<Work>(m_work->text().toInt());
    m_count->setVisible(asksCount(work));
    m_length->setVisible(asksCount(work) && work != Work::spineLinings);
}

void WorkProposer::setBook(const core::Item& item) {
    const auto put = [](FieldRow& row, const std::optional<core::Length>& length) {
        if (length && !row.isEdited()) {
            row.accept(fromCore(core::toText(*length)));
        }
    };
    put(*m_width, item.width);
    put(*m_height, item.height);
    put(*m_thickness, item.thickness);
}

std::vector<core::WorkPiece> WorkProposer::pieces(const core::WorkHouseValues& house) {
    const ReadingContext context{.today = m_session.clock().today()};
    const auto work = static_cast<Work>(m_work->text().toInt());
    const auto needed = [&](FieldRow& row) {
        const auto length = valueOf<core::Length>(row, context);
        if (!row.hasError() && (!length || *length <= core::Length{})) {
            row.setError(tr("This measure is needed."));
        }
        return length.value_or(core::Length{});
    };
    core::StripsWanted strips;
    if (asksCount(work)) {
        strips.count = static_cast<int>(std::clamp<std::int64_t>(
            valueOf<std::int64_t>(*m_count, context).value_or(1), 1, kMostStrips));
    }
    core::MeasuredBook book;
    if (work == Work::guards || work == Work::hinges) {
        strips.length = needed(*m_length);
        if (m_length->hasError()) {
            return {};
        }
    } else {
        book = {.width = needed(*m_width),
                .height = needed(*m_height),
                .thickness = needed(*m_thickness),
                .board = needed(*m_board)};
        if (m_form->troubled() != nullptr) {
            return {};
        }
    }
    return piecesOf(work, book, strips, house);
}

} // namespace headcap::app
