#include "app/shell/lot_movements.h"

#include <algorithm>

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/ruled_table.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/sentences.h"
#include "app/session/words.h"
#include "app/stock/fit_height.h"
#include "app/stock/ledger_words.h"
#include "app/stock/lot_story.h"
#include "core/materials/mix_text.h"
#include "core/materials/uses_not_entered.h"

namespace headcap::app {
namespace {

constexpr int kLedgerHeight = 280;

QString sentenceFor(const core::MixTextError& error) {
    switch (error.problem) {
    case core::MixTextProblem::empty:
        return LotMovements::tr("Say what it was mixed from: 26-001 57 g, 26-026 400 ml.");
    case core::MixTextProblem::lotUnknown:
        return LotMovements::tr("No lot has the number written from letter %1 on.")
            .arg(error.at + 1);
    case core::MixTextProblem::amountUnread:
        return LotMovements::tr("The amount in the part from letter %1 on could not be read: "
                                "write it as 57 g or 400 ml.")
            .arg(error.at + 1);
    }
    return {};
}

} // namespace

LotMovements::LotMovements(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_heading(new Label(Face::heading)),
      m_balance(new Label(Face::strong)), m_what(new QComboBox), m_amount(new QLineEdit),
      m_note(new QLineEdit), m_enter(new QPushButton(tr("Enter it"))),
      m_ledger(new RuledTable(tr("Ledger of the lot"),
                              {.mark = 88, .right = 120, .title = 2, .middle = {5}})) {
    m_what->addItems({tr("came in"), tr("mixed from"), tr("thrown away"), tr("counted")});
    m_what->setAccessibleName(tr("What happened to the lot"));
    m_amount->setAccessibleName(tr("How much"));
    m_amount->setPlaceholderText(tr("500 g"));
    m_note->setAccessibleName(tr("From what, or why"));
    layOut();
    connect(m_what, &QComboBox::currentIndexChanged, this, &LotMovements::showHints);
    connect(m_enter, &QPushButton::clicked, this, &LotMovements::enterMovement);
    for (QLineEdit* field : {m_amount, m_note}) {
        connect(field, &QLineEdit::returnPressed, this, &LotMovements::enterMovement);
    }
    m_enter->setToolTip(tr("Ins in the ledger begins an entry; Enter in its fields makes it"));
    showHints();
}

// Ins is the ledger's here, before it is the list's of lots that it stands in.
bool LotMovements::event(QEvent* event) {
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Insert) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            m_amount->setFocus(Qt::ShortcutFocusReason);
            m_amount->selectAll();
        }
        return true;
    }
    return QWidget::event(event);
}

void LotMovements::layOut() {
    auto* head = new QHBoxLayout;
    head->addWidget(m_heading);
    head->addStretch(1);
    head->addWidget(m_balance);
    auto* line = new QHBoxLayout;
    line->setSpacing(kGap);
    line->addWidget(m_what);
    line->addWidget(m_amount, 1);
    line->addWidget(m_note, 3);
    line->addWidget(m_enter);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->addLayout(head);
    down->addWidget(new HairRule);
    down->addSpacing(kGap);
    down->addLayout(line);
    down->addSpacing(kGap);
    down->addWidget(m_ledger);
}

LotMovements::Movement LotMovements::movement() const {
    return static_cast<Movement>(m_what->currentIndex());
}

void LotMovements::showHints() {
    switch (movement()) {
    case Movement::cameIn:
        m_note->setPlaceholderText(tr("nothing more to say"));
        break;
    case Movement::mixed:
        m_note->setPlaceholderText(tr("26-001 57 g, 26-026 400 ml"));
        break;
    case Movement::thrownAway:
        m_note->setPlaceholderText(tr("why"));
        break;
    case Movement::counted:
        m_note->setPlaceholderText(tr("how it was counted"));
        break;
    }
    m_note->setEnabled(movement() != Movement::cameIn);
}

void LotMovements::show(const core::Shelf& shelf, const LotStory* story, const Uses& uses) {
    m_shelf = shelf;
    m_lot = story != nullptr && story->trace ? std::optional{story->trace->lot->id} : std::nullopt;
    const core::Lot* chosen = m_lot ? m_shelf.lot(*m_lot) : nullptr;
    setVisible(chosen != nullptr);
    if (chosen != nullptr) {
        showLedger(*chosen, *story, uses);
    }
}

void LotMovements::showLedger(const core::Lot& lot, const LotStory& story, const Uses& uses) {
    const core::Material* kind = m_shelf.material(lot.material);
    m_heading->setText(tr("Ledger of %1").arg(fromCore(core::lotName(lot, kind))));
    const auto balance = m_shelf.balanceOf(lot.id);
    m_balance->setInk(balance && balance->count >= 0 ? Ink::ink : Ink::must);
    m_balance->setText(balance ? tr("%1 left").arg(fromCore(core::toText(*balance)))
                               : tr("does not add up"));
    const core::Clock& clock = m_session.clock();
    std::vector<TableRow> rows;
    if (story.hasEarlier) {
        rows.push_back(
            {.title = {tr("Earlier movements are not listed here."), Face::small, Ink::quiet}});
    }
    for (const core::LedgerEntry& entry : story.newest) {
        const auto use = entry.use ? uses.find(*entry.use) : uses.end();
        QString amount = fromCore(core::toText(entry.amount));
        rows.push_back(
            {.id = entry.id.uuid(),
             .title = {words(entry.kind), Face::body, Ink::ink},
             .mark = shortDay(clock.dayOf(entry.at), clock.today()),
             .middle = {{use == uses.end() ? fromCore(entry.note)
                                           : dotted({use->second, fromCore(entry.note)})}},
             .right = {amount.replace(QLatin1Char('-'), QChar(0x2212)), Face::body,
                       entry.amount.count < 0 ? Ink::quiet : Ink::ink}});
    }
    // Of older entries nothing is known here.
    const auto open = story.trace && !story.hasEarlier
                          ? core::usesNotEntered(*story.trace, story.newest)
                          : std::vector<core::TracedUse>{};
    for (const core::TracedUse& one : open) {
        const auto use = uses.find(one.use->id);
        rows.push_back(
            {.id = one.use->id.uuid(),
             .title = {tr("used, not entered"), Face::body, Ink::must},
             .mark = shortDay(clock.dayOf(one.step->at), clock.today()),
             .middle = {{use == uses.end() ? QString{} : use->second}},
             .right = {one.use->amount ? fromCore(core::toText(*one.use->amount)) : tr("how much?"),
                       Face::body, Ink::must}});
    }
    m_ledger->setVisible(!rows.empty());
    m_ledger->show(std::move(rows));
    fitHeight(*m_ledger, kLedgerHeight);
}

tl::expected<core::Change, QString> LotMovements::composed(const core::Lot& lot) const {
    const auto amount = amountTyped(m_amount->text(), m_shelf.material(lot.material));
    if (!amount) {
        return tl::unexpected(sentence(amount.error(), Reading::amount));
    }
    const std::string note = toCore(m_note->text().trimmed());
    const core::Hand hand{m_session.person(), m_session.clock().now()};
    core::IdSource& ids = m_session.ids();
    const auto inWords = [&](core::LedgerProblem problem) {
        return ledgerSentence(problem, m_shelf.material(lot.material));
    };
    switch (movement()) {
    case Movement::cameIn:
        return core::takeIn(lot, *amount, m_shelf, hand, ids).map_error(inWords);
    case Movement::mixed: {
        const auto parts = core::parseMixParts(note, m_shelf);
        if (!parts) {
            return tl::unexpected(sentenceFor(parts.error()));
        }
        return core::mixInto(lot, *parts, *amount, m_shelf, hand, ids).map_error(inWords);
    }
    case Movement::thrownAway:
        return core::discardFrom(lot, *amount, note, m_shelf, hand, ids).map_error(inWords);
    case Movement::counted:
        return core::countLot(lot, *amount, note, m_shelf, hand, ids).map_error(inWords);
    }
    return tl::unexpected(QString{});
}

void LotMovements::enterMovement() {
    const core::Lot* lot = m_lot ? m_shelf.lot(*m_lot) : nullptr;
    if (lot == nullptr) {
        return;
    }
    auto change = composed(*lot);
    if (!change) {
        m_session.say({Notice::Kind::refused, change.error()});
        m_amount->setFocus();
        return;
    }
    const QString done = fromCore(change->sentence);
    if (m_session.apply(std::move(*change))) {
        m_amount->clear();
        m_note->clear();
        m_session.say({Notice::Kind::done, done, true});
    }
}

} // namespace headcap::app
