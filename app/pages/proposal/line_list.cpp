#include "app/pages/proposal/line_list.h"

#include <algorithm>

#include "app/form/record_choices.h"
#include "app/pages/place_in_book.h"
#include "core/materials/ledger_in_brief.h"
#include "core/treatment/approval.h"
#include "core/treatment/estimate.h"
#include "core/treatment/line_fitness.h"
#include "core/treatment/totals.h"

namespace headcap::app {
namespace {

RowWords lineWords(const core::ProposalLine& line, const core::TechniquesInForce& techniques,
                   const QString& against) {
    const QString title = fromCore(core::lineTitle(line, techniques));
    const bool isDescribed = !line.technique.empty() || title.isEmpty();
    return {.mark = QString::number(line.position),
            .title = title,
            .detail = dotted({isDescribed ? fromCore(line.description) : QString{},
                              fromCore(line.materials), against}),
            .right = dotted({line.minutes > core::Minutes{0} ? printed(line.minutes) : QString{},
                             line.price ? printed(*line.price) : QString{}})};
}

} // namespace

LineList::LineList(Session& session, PageEdits& edits, QWidget* parent)
    : RecordList(
          session, edits,
          {tr("Its lines"), tr("Add a line"),
           tr("What would be done, line by line. An option without lines is to do nothing.")},
          tr("Line"), parent),
      m_session(session), m_aside(new Aside(session, this)) {
    using R = core::ProposalLine;
    m_technique = &form().term(tr("Technique"), &R::technique, techniqueTerms(session));
    form()
        .usedText(tr("Where"), &R::place)
        .placeholder(tr("K7, C1–C4, spine"))
        .understood(placeInBook(m_file));
    m_count = &form().value(tr("How many"), &R::count);
    form().lines(tr("What"), &R::description);
    m_materials = &form().usedText(tr("Materials"), &R::materials);
    m_materials->placeholder(tr("kozo tissue 26-014, grain along the spine"))
        .understood([this](const QString& text) { return againstTyped(text); });
    m_minutes = &form().value(tr("Minutes"), &R::minutes);
    form().value(tr("Price"), &R::price).placeholder(tr("of the work; empty: by the hour"));
    form().value(tr("Materials cost"), &R::materialsCost);
    form().value(tr("Place in it"), &R::position);
    connect(m_technique, &FieldRow::edited, this, [this] { fillFromTechnique(); });
    connect(m_count, &FieldRow::edited, this, &LineList::followCount);
    describe = [this](const R& line) {
        return lineWords(line, m_file ? m_file->techniques : core::TechniquesInForce{},
                         against(line));
    };
    make = [this, &session]() -> std::optional<R> {
        if (!m_option || !m_file) {
            return std::nullopt;
        }
        const auto lines = core::linesOf(*m_file, *m_option);
        m_usualMinutes.clear();
        return R{.id = session.ids().next<R>(),
                 .job = m_file->job.id,
                 .option = *m_option,
                 .position = lines.empty() ? 1 : lines.back()->position + 1};
    };
    list().setMarkWidth(28);
}

void LineList::showOption(const core::JobFile& file,
                          const std::optional<core::Id<core::ProposalOption>>& option) {
    m_file = file;
    m_option = option;
    showLines();
    if (std::ranges::any_of(m_file->lines, [&](const core::ProposalLine& line) {
            return line.option == m_option && !line.materials.empty();
        })) {
        readShelf();
    }
}

void LineList::showLines() {
    std::vector<core::ProposalLine> lines;
    if (m_option) {
        for (const core::ProposalLine* line : core::linesOf(*m_file, *m_option)) {
            lines.push_back(*line);
        }
    }
    show(lines, *m_file);
}

// Read aside: what speaks against the materials is said when the shelf is known.
void LineList::readShelf() {
    m_aside->ask([&store = m_session.records()] { return core::shelfInBrief(store); },
                 [this](std::shared_ptr<const core::Shelf> shelf) {
                     if (m_shelf != shelf) {
                         m_shelf = std::move(shelf);
                         showLines();
                     }
                 });
}

QString LineList::against(const core::ProposalLine& line) const {
    if (!m_file || line.materials.empty() || m_shelf == nullptr) {
        return {};
    }
    QStringList said;
    for (const core::ProposedFitness& one :
         core::fitnessOf(line, *m_shelf, *m_file, m_session.clock().today())) {
        said << QStringLiteral("%1 %2").arg(fromCore(one.name), fromCore(one.point.sentence));
    }
    return said.join(QStringLiteral("; "));
}

QString LineList::againstTyped(const QString& materials) {
    if (!m_option || !m_file || materials.trimmed().isEmpty()) {
        return {};
    }
    if (m_shelf == nullptr) {
        readShelf();
    }
    const core::Uuid none = m_option->uuid();
    core::ProposalLine line{.id = core::Id<core::ProposalLine>{none},
                            .job = m_file->job.id,
                            .option = *m_option,
                            .materials = toCore(materials)};
    if (const core::Technique* technique = techniqueTyped()) {
        line.technique = technique->key;
    }
    return against(line);
}

const core::Technique* LineList::techniqueTyped() const {
    if (!m_file) {
        return nullptr;
    }
    const QString typed = m_technique->text().trimmed();
    for (const core::Technique& technique : m_file->techniques.offered()) {
        if (fromCore(technique.name).compare(typed, Qt::CaseInsensitive) == 0) {
            return &technique;
        }
    }
    return nullptr;
}

void LineList::fillFromTechnique() {
    const core::Technique* technique = techniqueTyped();
    if (technique == nullptr) {
        return;
    }
    const QString usual = usualFor(*technique, m_count->text());
    if (!usual.isEmpty() &&
        (m_minutes->text() == printed(core::Minutes{0}) || m_minutes->text() == m_usualMinutes)) {
        m_minutes->rewrite(usual);
        m_usualMinutes = m_minutes->text();
    }
    if (m_materials->text().isEmpty()) {
        QStringList materials;
        for (const std::string& material : technique->materials) {
            materials << fromCore(material);
        }
        m_materials->rewrite(materials.join(QStringLiteral(", ")));
    }
}

// Minutes that are the technique's usual ones for the number that stood there follow the number;
// what somebody wrote stays.
void LineList::followCount() {
    const core::Technique* technique = techniqueTyped();
    const auto& line = form().record();
    if (technique == nullptr || !line) {
        return;
    }
    const QString before = m_usualMinutes.isEmpty()
                               ? usualFor(*technique, QString::number(line->count))
                               : m_usualMinutes;
    const QString usual = usualFor(*technique, m_count->text());
    if (!usual.isEmpty() && m_minutes->text() == before) {
        m_minutes->rewrite(usual);
        m_usualMinutes = m_minutes->text();
    }
}

// In the field's own words; empty where it is not known, or the number can't be read yet.
QString LineList::usualFor(const core::Technique& technique, const QString& count) {
    bool isNumber = false;
    const qint64 pieces = count.trimmed().toLongLong(&isNumber);
    const core::Minutes usual = core::usualMinutes(technique, pieces);
    return isNumber && pieces > 0 && usual > core::Minutes{0} ? printed(usual) : QString{};
}

} // namespace headcap::app
