#include "app/shell/all_jobs.h"

#include <QGuiApplication>

#include "app/look/fonts.h"
#include "app/look/palette.h"
#include "app/session/words.h"
#include "core/custody/job_states.h"

namespace headcap::app {
namespace {

constexpr std::size_t kPage = 100; // its columns are measured whenever they are shown
enum Column { number, book, owner, state, due, columns };

} // namespace

AllJobsModel::AllJobsModel(Session& session, QObject* parent)
    : QAbstractTableModel(parent), m_session(session) {}

void AllJobsModel::reload() {
    beginResetModel();
    const std::size_t wanted = std::max(kPage, m_lines.size());
    m_lines.clear();
    m_total = 0;
    m_session.guarded([&] {
        m_total = m_session.stores().jobs.count();
        m_lines = m_session.stores().jobs.page(0, wanted);
    });
    endResetModel();
}

int AllJobsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int AllJobsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Column::columns;
}

QVariant AllJobsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const core::JobLine& at = line(index.row());
    if (role == Qt::FontRole && index.column() == Column::book) {
        return faceFont(Face::formula);
    }
    if (role == Qt::FontRole && index.column() == Column::due && dueOf(at).isLate) {
        return faceFont(Face::smallStrong);
    }
    if (role == Qt::ForegroundRole && index.column() == Column::due && dueOf(at).isLate) {
        return coloursFor(QGuiApplication::palette()).must;
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) {
        return {};
    }
    switch (index.column()) {
    case Column::number:
        return fromCore(at.number);
    case Column::book:
        return fromCore(at.title);
    case Column::owner:
        return fromCore(at.owner);
    case Column::state:
        return words(at.state);
    case Column::due:
        return dueOf(at).words;
    default:
        return {};
    }
}

Due AllJobsModel::dueOf(const core::JobLine& at) const {
    return core::isInTheHouse(at.state) ? app::dueOf(at.due, m_session.clock().today()) : Due{};
}

QVariant AllJobsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case Column::number:
        return tr("Number");
    case Column::book:
        return tr("Book");
    case Column::owner:
        return tr("Owner");
    case Column::state:
        return tr("State");
    case Column::due:
        return tr("Due");
    default:
        return {};
    }
}

bool AllJobsModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_lines.size() < m_total;
}

void AllJobsModel::fetchMore(const QModelIndex&) {
    std::vector<core::JobLine> more;
    m_session.guarded([&] { more = m_session.stores().jobs.page(m_lines.size(), kPage); });
    if (more.empty()) {
        m_total = m_lines.size();
        return;
    }
    const int first = static_cast<int>(m_lines.size());
    beginInsertRows({}, first, first + static_cast<int>(more.size()) - 1);
    m_lines.insert(m_lines.end(), more.begin(), more.end());
    endInsertRows();
}

} // namespace headcap::app
