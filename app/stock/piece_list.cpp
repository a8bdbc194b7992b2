#include "app/stock/piece_list.h"

#include <algorithm>
#include <limits>

#include <QCheckBox>
#include <QComboBox>

#include "app/drawing/cutting_drawing.h"
#include "app/session/words.h"
#include "app/stock/plain_form.h"

namespace headcap::app {
namespace {

constexpr int kAlongHeight = 0; // as the choices stand
constexpr int kAlongWidth = 1;

QWidget* grainChoice() {
    auto* box = new QComboBox;
    box->addItems({PieceList::tr("along its height"), PieceList::tr("along its width"),
                   PieceList::tr("does not matter")});
    return box;
}

core::GrainWay grainOf(int choice) {
    return choice == kAlongHeight  ? core::GrainWay::alongHeight
           : choice == kAlongWidth ? core::GrainWay::alongWidth
                                   : core::GrainWay::none;
}

int choiceOf(core::GrainWay grain) {
    return grain == core::GrainWay::alongHeight  ? kAlongHeight
           : grain == core::GrainWay::alongWidth ? kAlongWidth
                                                 : 2;
}

QString detailOf(const core::WantedPiece& piece) {
    QStringList said{PieceList::tr("%1 mm").arg(sizeWords(piece.width, piece.height))};
    switch (piece.grain) {
    case core::GrainWay::alongHeight:
        said << PieceList::tr("grain along its height");
        break;
    case core::GrainWay::alongWidth:
        said << PieceList::tr("grain along its width");
        break;
    case core::GrainWay::none:
        said << PieceList::tr("grain does not matter");
        break;
    }
    if (piece.isPasted) {
        said << PieceList::tr("pasted: cut smaller by its stretch");
    }
    if (!piece.overlap.isZero()) {
        said << PieceList::tr("%1 left to trim").arg(fromCore(core::toText(piece.overlap)));
    }
    return dotted(said);
}

} // namespace

PieceList::PieceList(Session& session, QWidget* parent)
    : PieceList(session, new PlainForm, parent) {}

PieceList::PieceList(Session& session, PlainForm* form, QWidget* parent)
    : ListSection({tr("Pieces wanted"), tr("Add a piece"),
                   tr("What is to be cut: propose the pieces of a piece of work above, or add one "
                      "and say its size.")},
                  form, parent),
      m_session(session), m_form(form), m_name(&form->line(tr("What for"), tr("endpaper fold"))),
      m_count(&form->line(tr("How many"), QStringLiteral("1"))),
      m_width(&form->line(tr("Width"), tr("242 mm"))),
      m_height(&form->line(tr("Height"), tr("196 mm"))),
      m_grain(&form->control(tr("Grain"), grainChoice())),
      m_pasted(&form->control(tr("Pasted"), new QCheckBox(tr("all over, so that it stretches")))),
      m_overlap(&form->line(tr("Left to trim"), tr("on each edge: 3 mm"))) {
    list().setMarkWidth(48);
    connect(this, &ListSection::addAsked, this, &PieceList::startNew);
    connect(this, &ListSection::removeAsked, this, &PieceList::removeCurrent);
    connect(this, &ListSection::currentMoved, this, [this] {
        if (!m_isShowing) {
            showCurrent();
        }
    });
    connect(form, &FormBase::edited, this, &PieceList::take);
    showAll();
}

std::vector<core::WantedPiece> PieceList::pieces() const {
    std::vector<core::WantedPiece> pieces;
    for (const Kept& one : m_pieces) {
        pieces.push_back(one.piece);
    }
    return pieces;
}

void PieceList::add(const core::WantedPiece& piece) {
    m_pieces.push_back({m_session.ids().nextUuid(), piece});
    showAll();
    Q_EMIT changed();
}

void PieceList::propose(Work work, const std::vector<core::WantedPiece>& pieces) {
    std::erase_if(m_pieces, [work](const Kept& kept) {
        return kept.proposedFor && isInsteadOf(*kept.proposedFor, work);
    });
    for (const core::WantedPiece& piece : pieces) {
        m_pieces.push_back({m_session.ids().nextUuid(), piece, work});
    }
    showAll();
    showCurrent();
    Q_EMIT changed();
}

void PieceList::clear() {
    m_pieces.clear();
    showAll();
    showCurrent();
    Q_EMIT changed();
}

PieceList::Kept* PieceList::current() {
    const auto id = list().current();
    const auto at =
        std::ranges::find_if(m_pieces, [&](const Kept& k) { return id && k.key == *id; });
    return at == m_pieces.end() ? nullptr : &*at;
}

void PieceList::startNew() {
    m_pieces.push_back({m_session.ids().nextUuid(),
                        {.id = toCore(tr("piece")),
                         .width = core::Length::millimetres(100),
                         .height = core::Length::millimetres(100),
                         .grain = core::GrainWay::alongHeight}});
    const core::Uuid key = m_pieces.back().key;
    showAll();
    list().select(key);
    showCurrent();
    openForm(true);
    Q_EMIT changed();
}

void PieceList::removeCurrent() {
    if (const Kept* kept = current()) {
        const core::Uuid key = kept->key;
        std::erase_if(m_pieces, [&](const Kept& k) { return k.key == key; });
        showAll();
        showCurrent();
        Q_EMIT changed();
    }
}

void PieceList::showCurrent() {
    const Kept* kept = current();
    if (kept == nullptr) {
        closeForm();
        return;
    }
    const core::WantedPiece& piece = kept->piece;
    m_isShowing = true;
    m_name->accept(fromCore(piece.id));
    m_count->accept(QString::number(piece.count));
    m_width->accept(fromCore(core::toText(piece.width)));
    m_height->accept(fromCore(core::toText(piece.height)));
    m_grain->accept(QString::number(choiceOf(piece.grain)));
    m_pasted->accept(QString::number(piece.isPasted ? 1 : 0));
    m_overlap->accept(piece.overlap.isZero() ? QString{} : fromCore(core::toText(piece.overlap)));
    m_isShowing = false;
    openForm(false);
}

// What can be read of the fields; a field that can't says so and the piece stays as it was.
void PieceList::take() {
    Kept* kept = current();
    if (kept == nullptr || m_isShowing) {
        return;
    }
    const ReadingContext context{.today = m_session.clock().today()};
    core::WantedPiece& piece = kept->piece;
    kept->proposedFor.reset();
    piece.id = toCore(m_name->text().trimmed());
    if (const auto count = valueOf<std::int64_t>(*m_count, context)) {
        piece.count =
            static_cast<int>(std::clamp<std::int64_t>(*count, 0, std::numeric_limits<int>::max()));
    }
    if (const auto width = valueOf<core::Length>(*m_width, context)) {
        piece.width = *width;
    }
    if (const auto height = valueOf<core::Length>(*m_height, context)) {
        piece.height = *height;
    }
    piece.grain = grainOf(m_grain->text().toInt());
    piece.isPasted = m_pasted->text() == QLatin1String("1");
    piece.overlap = valueOf<core::Length>(*m_overlap, context).value_or(core::Length{});
    m_isShowing = true;
    showAll();
    m_isShowing = false;
    Q_EMIT changed();
}

void PieceList::showAll() {
    std::vector<RuledModel::Row> rows;
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        const core::WantedPiece& piece = m_pieces[i].piece;
        rows.push_back({m_pieces[i].key,
                        RowWords{.mark = letterOf(i),
                                 .title = fromCore(piece.id),
                                 .detail = detailOf(piece),
                                 .right = counted(piece.count, tr("%1 piece"), tr("%1 pieces"))}});
    }
    showRows(std::move(rows));
}

} // namespace headcap::app
