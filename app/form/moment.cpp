#include "app/form/moment.h"

#include <QRegularExpression>
#include <QTime>

#include "app/session/words.h"
#include "core/values/local_time.h"
#include "core/values/spoken_time.h"

namespace headcap::app {

QString momentText(core::Instant at, const core::Clock& clock) {
    const core::Day day = clock.dayOf(at);
    return day == clock.today()
               ? clockTime(at)
               : QStringLiteral("%1 %2").arg(fromCore(core::toText(day)), clockTime(at));
}

std::optional<core::Instant> readMoment(const QString& text, const core::Clock& clock) {
    static const QRegularExpression kTime{QStringLiteral(R"(\b(\d{1,2}):(\d{2})\s*$)")};
    const auto found = kTime.match(text.trimmed());
    if (!found.hasMatch()) {
        return std::nullopt;
    }
    const QTime time{found.captured(1).toInt(), found.captured(2).toInt()};
    QString rest = text.trimmed().left(found.capturedStart());
    rest = rest.remove(QLatin1Char(',')).trimmed();
    const auto day = rest.isEmpty() ? tl::expected<core::Day, core::TextError>{clock.today()}
                                    : core::parseDay(toCore(rest), clock.today());
    if (!time.isValid() || !day) {
        return std::nullopt;
    }
    const core::Minutes sinceMidnight{time.hour() * 60 + time.minute()};
    return core::momentAt(*day, sinceMidnight, core::systemUtcOffset);
}

} // namespace headcap::app
