#include "app/photo/photo_form.h"

#include <QCoreApplication>
#include <QLocale>

#include "app/form/record_choices.h"
#include "app/pages/place_in_book.h"
#include "app/session/words.h"
#include "core/survey/condition_terms.h"

namespace headcap::app::photo {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("photo", text);
}

QString joined(QStringList parts) {
    parts.removeAll({});
    return parts.join(QStringLiteral(", "));
}

QString wordsOf(const core::JobFile&, const core::Finding& finding) {
    return joined({fromCore(core::componentName(finding.component)),
                   fromCore(core::termName(finding.component, finding.term)),
                   fromCore(finding.place)});
}

QString wordsOf(const core::JobFile& file, const core::Step& step) {
    return joined({fromCore(file.techniques.nameOf(step.technique)), fromCore(step.place),
                   clockTime(step.at)});
}

QString wordsOf(const core::JobFile&, const core::Facsimile& facsimile) {
    return joined(
        {words(facsimile.kind), fromCore(facsimile.place), fromCore(facsimile.institution)});
}

// Two records of the same words are told apart by their number in the list.
template <class Record>
Choices choicesOf(const FileNow& file, std::vector<Record> core::JobFile::*records) {
    return [file, records] {
        std::vector<Choice> choices;
        const core::JobFile* now = file();
        if (now == nullptr) {
            return choices;
        }
        int number = 0;
        for (const Record& one : now->*records) {
            ++number;
            QString said = wordsOf(*now, one);
            for (const Choice& other : choices) {
                if (other.words == said) {
                    said = tr("%1 (no. %2)").arg(said).arg(number);
                    break;
                }
            }
            choices.push_back({one.id.text(), said});
        }
        return choices;
    };
}

} // namespace

void buildPhotoForm(RecordForm<core::Photograph>& form, const FileNow& file) {
    using P = core::Photograph;
    form.lines(tr("Caption"), &P::caption).placeholder(tr("as it stands under the figure"));
    form.choice(tr("Taken"), &P::role);
    form.usedText(tr("Place"), &P::place)
        .placeholder(tr("leaf, board, spine"))
        .understood(placeInBook(file));
    form.pick(tr("Shows finding"), &P::finding, choicesOf(file, &core::JobFile::findings))
        .placeholder(tr("Down chooses one of the survey"));
    form.pick(tr("Shows step"), &P::step, choicesOf(file, &core::JobFile::steps))
        .placeholder(tr("Down chooses one of the log"));
    form.pick(tr("Shows facsimile"), &P::facsimile, choicesOf(file, &core::JobFile::facsimiles))
        .placeholder(tr("Down chooses one of the leaves supplied"));
    form.pick(tr("Volume"), &P::part, volumesOf(file));
    form.check(tr("Report"), tr("stands in the report"), &P::inReport);
    form.choice(tr("Figure"), &P::figureWidth);
    form.setDescription([](const P& photo) {
        return fromCore(photo.caption.empty() ? photo.fileName : photo.caption);
    });
}

QString factsOf(const core::Photograph& photograph, const core::Clock& clock) {
    QStringList facts{fromCore(photograph.fileName)};
    if (photograph.widthPx > 0) {
        facts << tr("%1 × %2 pixels").arg(photograph.widthPx).arg(photograph.heightPx);
    }
    facts << QLocale{QLocale::English}.formattedDataSize(photograph.bytes, 1,
                                                         QLocale::DataSizeTraditionalFormat);
    if (photograph.takenAt) {
        facts << tr("taken %1, %2")
                     .arg(shortDay(clock.dayOf(*photograph.takenAt), clock.today()),
                          clockTime(*photograph.takenAt));
    }
    return joined(facts);
}

} // namespace headcap::app::photo
