#include "app/stock/work_proposer.h"

#include <algorithm>

#include <QComboBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/stock/plain_form.h"
#include "core/values/length_words.h"

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
      m_width(&m_form->line(tr("Width"), tr("118 mm"))),
      m_height(&m_form->line(tr("Height"), tr("186 mm"))),
      m_thickness(&m_form->line(tr("Thickness"), tr("over the spine: 27 mm"))),
      m_board(&m_form->line(tr("Board"), tr("its thickness: 2.5 mm"))),
      m_count(&m_form->line(tr("How many"), QStringLiteral("12"))),
      m_length(&m_form->line(tr("How long"), tr("180 mm"))),
      m_measured(new Label(Face::small, Ink::quiet)),
      m_propose(new QPushButton(tr("Propose its pieces"))) {
    m_measured->setRunning();
    m_board->accept(QStringLiteral("2 mm"));
    m_propose->setToolTip(
        tr("The pieces of this work, by the measures and the house values, in the place of "
           "those proposed for the like before"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_form);
    down->addWidget(m_measured);
    down->addWidget(m_propose, 0, Qt::AlignLeft);
    connect(m_form, &FormBase::edited, this, &WorkProposer::showAsked);
    connect(m_propose, &QPushButton::clicked, this, &WorkProposer::proposeAsked);
    showAsked();
}

Work WorkProposer::work() const {
    return static_cast<Work>(m_work->text().toInt());
}

void WorkProposer::showAsked() {
    const bool isStrips = work() == Work::guards || work() == Work::hinges;
    m_count->setVisible(asksCount(work()));
    m_length->setVisible(isStrips);
    for (FieldRow* row : {m_width, m_height, m_thickness, m_board}) {
        row->setVisible(!isStrips);
    }
    m_measured->setVisible(!isStrips);
    putMeasures();
}

void WorkProposer::setBook(const core::Item& item, const core::WorkHouseValues& house) {
    const bool isSame = m_book && m_book->id == item.id;
    m_book = item;
    m_house = house;
    if (!isSame) {
        for (FieldRow* row : {m_width, m_height, m_thickness}) {
            row->accept({});
        }
    }
    putMeasures();
}

void WorkProposer::setBoard(const core::Length& thickness) {
    if (!m_board->isEdited()) {
        m_board->accept(fromCore(core::toText(thickness)));
        putMeasures();
    }
}

// A book is measured over its covers: the text block is reckoned from it where nothing is typed.
void WorkProposer::putMeasures() {
    m_measured->setText(isOverCovers(work())
                            ? tr("Measured over the covers.")
                            : tr("Of the text block: a leaf from fold to fore edge, its height, "
                                 "and the thickness over the spine."));
    if (!m_book) {
        return;
    }
    const ReadingContext context{.today = m_session.clock().today()};
    const core::MeasuredBook over{
        .width = m_book->width.value_or(core::Length{}),
        .height = m_book->height.value_or(core::Length{}),
        .thickness = m_book->thickness.value_or(core::Length{}),
        .board = Reader<core::Length>::read(toCore(m_board->text().trimmed()), context)
                     .value_or(core::Length{})};
    const bool isOver = isOverCovers(work());
    const core::MeasuredBook book = isOver ? over : core::textBlockOf(over, m_house);
    const auto put = [](FieldRow& row, core::Length length) {
        if (!row.isEdited()) {
            row.accept(length.isZero() ? QString{}
                                       : fromCore(core::toText(core::toHalfMillimetre(length))));
        }
    };
    put(*m_width, book.width);
    put(*m_height, book.height);
    put(*m_thickness, book.thickness);
    if (!isOver && m_book->height) {
        m_measured->setText(tr("Reckoned for the text block from the book as measured over its "
                               "covers, less squares of %1 and both boards: measure the block "
                               "itself where you can.")
                                .arg(fromCore(core::toText(m_house.square))));
    }
}

std::vector<core::WorkPiece> WorkProposer::pieces(const core::WorkHouseValues& house) {
    const ReadingContext context{.today = m_session.clock().today()};
    const Work work = this->work();
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
