#include "app/pages/bench/use_row.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/papers/data_sheets.h"
#include "core/materials/shelf_life.h"
#include "core/treatment/step_line.h"

namespace headcap::app {

UseRow::UseRow(Session& session, const core::Shelf& shelf, const core::MaterialUse& use,
               Purpose purpose, QWidget* parent)
    : QWidget(parent), m_session(session), m_shelf(shelf), m_purpose(std::move(purpose)),
      m_form(new RecordForm<core::MaterialUse>(session, tr("Material"))),
      m_sheet(new papers::DataSheetButton(session)), m_more(quietButton(tr("More …"))) {
    build();
    m_form->showDraft(use);
    for (FieldRow* row : m_form->rows()) {
        row->setLeastHeight(kBenchControl);
    }
    for (const FieldRow* row : m_filled) {
        m_fillings.push_back(row->text());
    }
    showMore(false);
}

void UseRow::build() {
    using R = core::MaterialUse;
    addLot();
    m_form->value(tr("Amount"), &R::amount).placeholder(tr("0.4 g"));
    FieldRow& role = m_form->usedText(tr("As"), &R::role).placeholder(tr("adhesive, guard"));
    FieldRow& place = m_form->usedText(tr("Where"), &R::place)
                          .placeholder(tr("where the step is, if nothing is said"));
    FieldRow& stays =
        m_form->check(tr("Stays"), tr("something of it stays in the book"), &R::stays);
    FieldRow& removal = m_form->text(tr("Comes off by"), &R::removal);
    m_grain = &m_form->choice(tr("Its grain"), &R::grainAtSpine);
    m_reason = &m_form->text(tr("Used because"), &R::overrideReason)
                    .placeholder(tr("why a lot past its date, or unfit, was used"));
    m_filled = {&role, &stays, &removal};
    m_further = {&role, &place, &stays, &removal};
    for (FieldRow* row : {&stays, m_grain}) {
        connect(row, &FieldRow::edited, this, &UseRow::follow);
    }

    auto* drop = quietButton(tr("Not used"),
                             tr("Takes this material out of the step that is being written"));
    for (QPushButton* button : {static_cast<QPushButton*>(m_sheet), m_more, drop}) {
        button->setMinimumHeight(kBenchControl);
    }
    connect(m_more, &QPushButton::clicked, this, [this] { showMore(m_more->isChecked()); });
    connect(drop, &QPushButton::clicked, this, &UseRow::removeAsked);
    m_more->setCheckable(true);

    auto* ways = new QHBoxLayout;
    ways->addStretch();
    ways->addWidget(m_sheet);
    ways->addWidget(m_more);
    ways->addWidget(drop);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_form);
    down->addLayout(ways);
    down->addWidget(new HairRule);
}

void UseRow::addLot() {
    using R = core::MaterialUse;
    const Choices lots = lotsOf(m_session);
    m_lot = &m_form->bind(
        tr("Lot"), new QLineEdit, false,
        [lots](const R& use) {
            return use.lot ? app::wordsOf(lots(), use.lot->text()) : fromCore(use.material);
        },
        [this](R& use, const QString& text) {
            const core::Lot* lot = lotOf(text);
            use.lot = lot == nullptr ? std::nullopt : std::optional{lot->id};
            use.material = lot == nullptr ? toCore(text.trimmed()) : std::string{};
            return QString{};
        });
    m_lot->completed([lots] { return app::wordsOf(lots()); })
        .understood([this](const QString& text) { return standingOf(text); })
        .placeholder(tr("scan its label, or type"));
    connect(m_lot, &FieldRow::left, this, &UseRow::fillFromLot);
    connect(m_lot, &FieldRow::edited, this, &UseRow::fillFromLot);
}

const core::Lot* UseRow::lotOf(const QString& text) const {
    if (text.trimmed().isEmpty()) {
        return nullptr;
    }
    std::vector<Choice> choices;
    for (const core::Lot& lot : m_shelf.lots) {
        choices.push_back(
            {lot.id.text(), fromCore(core::lotName(lot, m_shelf.material(lot.material)))});
    }
    // What is offered says behind the name how the lot stands with its date.
    const auto key = keyOf(choices, text.section(QStringLiteral(" · "), 0, 0));
    const auto id = key ? core::Uuid::fromText(*key) : std::nullopt;
    return id ? m_shelf.lot(core::Id<core::Lot>{*id}) : nullptr;
}

std::vector<core::FitnessPoint> UseRow::fitness(const core::Lot& lot) const {
    const core::Material* kind = m_shelf.material(lot.material);
    return kind == nullptr ? std::vector<core::FitnessPoint>{}
                           : core::fitnessOf(lot, *kind, purpose());
}

core::FitnessPurpose UseRow::purpose() const {
    if (!m_form->record()) {
        return {.on = m_session.clock().today()};
    }
    core::MaterialUse use = *m_form->record();
    use.stays = m_filled[1]->text() == QLatin1String("1");
    use.grainAtSpine = static_cast<core::GrainAtSpine>(m_grain->text().toInt());
    return m_purpose(use);
}

// Of a sheet that follows the spine, or where it was said.
bool UseRow::asksGrain(const core::Lot* lot) const {
    const core::Material* kind = lot == nullptr ? nullptr : m_shelf.material(lot->material);
    const bool isSaid = m_grain->text().toInt() != 0;
    return kind != nullptr && core::isSheet(kind->kind) &&
           (isSaid || (lot->grain != core::Grain::none && purpose().followsSpine));
}

void UseRow::follow() {
    const core::Lot* lot = lotOf(m_lot->text());
    m_grain->setVisible(asksGrain(lot));
    m_sheet->setKind(lot == nullptr ? std::nullopt : std::optional{lot->material});
    m_reason->setVisible(asksReason(lot) || !m_reason->text().isEmpty());
}

FieldRow* UseRow::owedReason() {
    const core::Lot* lot = lotOf(m_lot->text());
    if (!asksReason(lot) || !m_reason->text().trimmed().isEmpty()) {
        return nullptr;
    }
    follow();
    m_reason->setError(tr("Why is it used all the same?"));
    return m_reason;
}

bool UseRow::asksReason(const core::Lot* lot) const {
    return lot != nullptr && std::ranges::any_of(fitness(*lot), &core::FitnessPoint::asksReason);
}

QString UseRow::standingOf(const QString& text) const {
    const core::Lot* lot = lotOf(text);
    if (lot == nullptr) {
        return text.trimmed().isEmpty() ? QString{} : tr("no such lot: kept in words");
    }
    QStringList said{fromCore(core::lotName(*lot, m_shelf.material(lot->material)))};
    if (const auto balance = m_shelf.balanceOf(lot->id)) {
        said << tr("%1 left").arg(fromCore(core::toText(*balance)));
    }
    for (const core::FitnessPoint& point : fitness(*lot)) {
        said << fromCore(point.sentence);
    }
    return dotted(said);
}

// What a lot is for and how it comes off, where nothing else has been written there by hand.
void UseRow::fillFromLot() {
    const core::Lot* lot = lotOf(m_lot->text());
    follow();
    const core::Material* kind = lot == nullptr ? nullptr : m_shelf.material(lot->material);
    if (kind == nullptr || !m_form->record()) {
        return;
    }
    core::MaterialUse use = *m_form->record();
    core::fillFrom(use, *kind);
    const std::array<QString, 3> words{fromCore(use.role),
                                       use.stays ? QStringLiteral("1") : QStringLiteral("0"),
                                       fromCore(use.removal)};
    for (std::size_t i = 0; i < m_filled.size(); ++i) {
        if (m_filled[i]->text() == m_fillings[i]) {
            m_filled[i]->rewrite(words[i]);
            m_fillings[i] = m_filled[i]->text();
        }
    }
    follow();
}

void UseRow::showMore(bool isShown) {
    for (FieldRow* row : m_further) {
        row->setVisible(isShown);
    }
    follow();
    m_more->setText(isShown ? tr("Less") : tr("More …"));
}

bool UseRow::isEmpty() const {
    return m_lot->text().trimmed().isEmpty();
}

core::MaterialUse UseRow::taken() {
    QStringList labels;
    return m_form->taken(labels);
}

} // namespace headcap::app
