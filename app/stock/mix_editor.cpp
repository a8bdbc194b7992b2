#include "app/stock/mix_editor.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/column_layout.h"
#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/stock/ledger_words.h"
#include "app/stock/plain_form.h"
#include "core/materials/boiled_away.h"
#include "core/materials/free_lot_number.h"

namespace headcap::app {
namespace {

constexpr int kPairsFrom = 500;

} // namespace

MixEditor::MixEditor(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_down(new QVBoxLayout(this)),
      m_name(new Label(Face::heading)), m_source(new Label(Face::small, Ink::quiet)),
      m_method(new Label(Face::body)), m_caution(new Label(Face::smallStrong, Ink::must)),
      m_book(new QPushButton(tr("Book the mix"))),
      m_label(quietButton({}, tr("Goes to the labels, with this lot's chosen"))),
      m_own(quietButton(tr("Keep as a recipe of our own"),
                        tr("With the amounts as they stand here; to be changed at will"))),
      m_remove(quietButton(tr("Remove this recipe"),
                           tr("Lots mixed by it keep what they say; undo brings it back"))) {
    for (Label* label : {m_source, m_method, m_caution}) {
        label->setRunning();
    }
    m_book->setDefault(true);
    m_label->setAccessibleName(tr("Print its label"));
    m_book->setToolTip(tr("Takes the parts from their lots and puts the mix on the shelf"));
    auto* ways = new QHBoxLayout;
    ways->addWidget(m_book);
    ways->addWidget(m_label);
    ways->addWidget(m_own);
    ways->addWidget(m_remove);
    ways->addStretch(1);
    m_down->setContentsMargins(0, 0, 0, 0);
    m_down->setSpacing(kGap);
    m_down->addWidget(m_name);
    m_down->addWidget(new HairRule);
    for (QWidget* one : {m_source, m_method, m_caution}) {
        m_down->addWidget(one);
    }
    m_down->addLayout(ways);
    m_down->addStretch(1);
    connect(m_book, &QPushButton::clicked, this, &MixEditor::book);
    connect(m_label, &QPushButton::clicked, this, [this] { Q_EMIT labelAsked(m_labelled); });
    connect(m_own, &QPushButton::clicked, this, &MixEditor::keepAsOwn);
    connect(m_remove, &QPushButton::clicked, this, &MixEditor::removeOwn);
}

void MixEditor::show(const core::RecipeCard& recipe, const core::Shelf& shelf) {
    m_recipe = recipe;
    m_scaled = recipe;
    m_shelf = shelf;
    m_name->setText(fromCore(recipe.name));
    const QString strength = recipe.strength ? fromCore(core::toText(*recipe.strength)) : QString{};
    QStringList said{strength, fromCore(recipe.source),
                     recipe.keepsDays > 0 ? counted(static_cast<int>(recipe.keepsDays),
                                                    tr("keeps %1 day"), tr("keeps %1 days"))
                                          : QString{}};
    m_source->setText(dotted(said));
    m_method->setText(fromCore(recipe.method));
    m_caution->setText(fromCore(recipe.caution));
    m_method->setVisible(!recipe.method.empty());
    m_caution->setVisible(!recipe.caution.empty());
    m_remove->setVisible(recipe.isOwn);
    m_label->hide();
    build();
}

void MixEditor::standAfter(QWidget* before) {
    for (FieldRow* row : m_form->rows()) {
        setTabOrder(before, row->control());
        before = row->control();
    }
    for (QPushButton* way : {m_book, m_label, m_own, m_remove}) {
        setTabOrder(before, way);
        before = way;
    }
}

void MixEditor::offerLabel(const QString& number) {
    m_labelled = number;
    m_label->setText(tr("Print the label of %1").arg(number));
    m_label->show();
    m_label->setFocus(Qt::OtherFocusReason);
}

void MixEditor::build() {
    delete m_form;
    m_parts.clear();
    m_form = new PlainForm;
    const core::Day today = m_session.clock().today();
    m_yield = &m_form->line(tr("To make"), tr("450 g"));
    m_yield->tip(tr("What it comes to once it is made")).understood([this](const QString& text) {
        return lossOf(text);
    });
    m_yield->accept(m_recipe.yields ? fromCore(core::toText(*m_recipe.yields)) : QString{});
    connect(m_yield, &FieldRow::left, this, &MixEditor::scale);
    m_number = &m_form->line(tr("Its number"), tr("on its label"));
    std::optional<std::string> number;
    m_session.guarded([&] { number = core::freeLotNumber(m_session.records(), today); });
    m_number->accept(fromCore(number.value_or(std::string{})));
    for (const core::RecipeCardPart& part : m_recipe.parts) {
        addPart(part);
    }
    m_keptAt = &m_form->line(tr("Kept at"), fromCore(core::usualPlaceOf(m_recipe)));
    m_until = &m_form->line(tr("Good until"), tr("a day; look and smell before use all the same"));
    if (m_recipe.keepsDays > 0) {
        m_until->accept(printed(
            core::Day{std::chrono::sys_days{today} + std::chrono::days{m_recipe.keepsDays}}));
    }
    m_called = &m_form->line(tr("Recipe's name"), tr("under which it is kept as our own"), true);
    m_called->accept(fromCore(m_recipe.name));
    alignPairs();
    m_down->insertWidget(5, m_form);
}

// A part and the lot it comes from share a line, in a narrow window too.
void MixEditor::alignPairs() {
    static_cast<ColumnLayout*>(m_form->layout())->setTwoColumnsFrom(kPairsFrom);
    std::vector<FieldRow*> seconds{m_number, m_until};
    for (const PartRows& rows : m_parts) {
        seconds.push_back(rows.lot);
    }
    int widest = 0;
    for (const FieldRow* row : seconds) {
        widest = std::max(widest, row->labelWidth());
    }
    for (FieldRow* row : seconds) {
        row->setLabelWidth(widest);
    }
}

// Where the parts together are more than what they come to.
QString MixEditor::lossOf(const QString& yield) const {
    const auto amount = core::parseAmount(toCore(yield));
    if (!amount) {
        return tr("once it is made");
    }
    const auto scaled = core::scaledToYield(m_recipe, *amount);
    const auto lost = scaled ? core::boiledAway(*scaled) : std::nullopt;
    return lost ? tr("once it is made: %1 of water boils off or stays behind")
                      .arg(fromCore(core::toText(*lost)))
                : tr("once it is made");
}

void MixEditor::book() {
    const ReadingContext context{.today = m_session.clock().today()};
    auto from = parts();
    const auto yield = valueOf<core::Amount>(*m_yield, context);
    const auto until = valueOf<core::Day>(*m_until, context);
    if (!from || !yield || m_until->hasError()) {
        return;
    }
    const core::RecipeMix mix{.recipe = m_recipe,
                              .parts = std::move(*from),
                              .number = toCore(m_number->text().trimmed()),
                              .yield = *yield,
                              .goodUntil = until,
                              .keptAt = toCore(m_keptAt->text().trimmed()),
                              .on = context.today};
    auto change = core::mixByRecipe(mix, m_shelf, {m_session.person(), m_session.clock().now()},
                                    m_session.ids());
    if (!change) {
        m_session.say({Notice::Kind::refused,
                       ledgerSentence(change.error(), core::materialMade(m_recipe, m_shelf))});
        return;
    }
    const QString done = fromCore(change->sentence);
    if (m_session.apply(std::move(*change))) {
        m_session.say({Notice::Kind::done, done, true});
        Q_EMIT booked(fromCore(mix.number));
    }
}

core::RecipeCard MixEditor::asTyped() {
    const ReadingContext context{.today = m_session.clock().today()};
    core::RecipeCard card = m_scaled;
    card.name = toCore(m_called->text().trimmed());
    card.yields = valueOf<core::Amount>(*m_yield, context);
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        if (const auto amount = valueOf<core::Amount>(*m_parts[i].amount, context)) {
            card.parts[i].amount = *amount;
        }
    }
    return card;
}

void MixEditor::removeOwn() {
    core::Change change{.who = m_session.person()};
    m_session.guarded([&] {
        const auto id = core::Uuid::fromText(m_recipe.key);
        const auto recipe =
            id ? core::find(m_session.records(), core::Id<core::Recipe>{*id}) : std::nullopt;
        if (!recipe) {
            return;
        }
        change.sentence = toCore(tr("Recipe removed: %1").arg(fromCore(recipe->record.name)));
        for (const auto& part :
             core::allWith(m_session.records(), &core::RecipePart::recipe, recipe->record.id)) {
            change.remove(part.record, part.revision);
        }
        change.remove(recipe->record, recipe->revision);
    });
    if (change.writes.empty()) {
        return;
    }
    const QString done = fromCore(change.sentence);
    if (m_session.apply(std::move(change))) {
        m_session.say({Notice::Kind::done, done, true});
    }
}

void MixEditor::keepAsOwn() {
    if (m_called->text().trimmed().isEmpty()) {
        m_called->setError(tr("Give it a name first."));
        return;
    }
    core::OwnRecipe own = core::ownCopy(asTyped(), m_shelf, m_session.ids());
    core::Change change{.sentence = toCore(tr("Recipe kept: %1").arg(fromCore(own.recipe.name))),
                        .who = m_session.person()};
    change.add(own.recipe);
    for (const core::RecipePart& part : own.parts) {
        change.add(part);
    }
    const QString done = fromCore(change.sentence);
    if (m_session.apply(std::move(change))) {
        m_session.say({Notice::Kind::done, done, true});
    }
}

} // namespace headcap::app
