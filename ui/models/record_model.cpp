// Tested by tests/ui/models/record_test.cpp.
#include "ui/models/record_model.h"

#include <algorithm>

#include <QFileInfo>

#include "record/record_view.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

// Hazards first; in the order of the findings among their own.
bool isGraver(record::Line const& a, record::Line const& b) { return a.severity > b.severity; }

QString standingOf(ReadRecord const& read, record::Line const& line) {
    QString text = standingWord(line.standing);
    if (line.standing == record::Standing::Closed) text += QStringLiteral(", ") + dispositionWord(record::decisionIn(read.record.entries[line.inForce.back()])->disposition);
    if (!line.mustClose && line.standing == record::Standing::Open) return RecordModel::tr("needs no decision");
    if (!line.why.empty()) text += QStringLiteral(": ") + shownText(line.why);
    bool const carried = std::any_of(line.inForce.begin(), line.inForce.end(), [&](std::size_t entry) { return std::holds_alternative<record::Carried>(read.record.entries[entry].body); });
    return carried ? RecordModel::tr("%1 (carried)").arg(text) : text;
}

QString paragraph(QString const& text) { return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped()); }

}  // namespace

QString dispositionWord(record::Disposition disposition) { return dispositionWord(dispositionOf(record::nameOf(disposition)).value_or(Disposition::Open)); }

QString roleWord(record::Role role) {
    switch (role) {
        case record::Role::Author: return RecordModel::tr("author");
        case record::Role::Reviewer: return RecordModel::tr("reviewer");
        case record::Role::Approver: return RecordModel::tr("approver");
    }
    return {};
}

QString standingWord(record::Standing standing) {
    switch (standing) {
        case record::Standing::Open: return RecordModel::tr("open");
        case record::Standing::SecondPerson: return RecordModel::tr("second person missing");
        case record::Standing::Waiting: return RecordModel::tr("waiting");
        case record::Standing::Closed: return RecordModel::tr("closed");
        case record::Standing::Rejected: return RecordModel::tr("rejected");
    }
    return {};
}

QString recordStateWord(record::RecordState state) {
    switch (state) {
        case record::RecordState::Draft: return RecordModel::tr("draft");
        case record::RecordState::InReview: return RecordModel::tr("in review");
        case record::RecordState::Approved: return RecordModel::tr("approved");
        case record::RecordState::ApprovedWithConditions: return RecordModel::tr("approved with conditions");
        case record::RecordState::Rejected: return RecordModel::tr("refused");
        case record::RecordState::Superseded: return RecordModel::tr("superseded");
    }
    return {};
}

RecordModel::RecordModel(RecordBook& book, QObject* parent) : QAbstractTableModel(parent), m_book(book) {
    connect(&book, &RecordBook::changed, this, &RecordModel::refill);
    refill();
}

int RecordModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }

int RecordModel::columnCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant RecordModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    auto const& row = rowAt(index.row());
    auto const text = [&] {
        switch (index.column()) {
            case Finding: return toQt(row.finding);
            case Severity: return row.severity;
            case Level: return QString::number(row.level);
            case Title: return row.title;
            case Standing: return row.standing;
            default: return QString{};
        }
    }();
    return role == Qt::ToolTipRole ? text.toHtmlEscaped() : text;
}

QVariant RecordModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Finding: return tr("Finding");
        case Severity: return tr("Severity");
        case Level: return tr("Level");
        case Title: return tr("What differs");
        case Standing: return tr("How it stands");
        default: return {};
    }
}

int RecordModel::rowOf(std::string const& finding) const {
    if (!m_book.record()) return -1;
    auto const& lines = m_book.record()->overview.lines;
    for (int row = 0; row < rowCount(); ++row) {
        auto const& line = lines[rowAt(row).line];
        if (line.finding == finding || std::find(line.consequences.begin(), line.consequences.end(), finding) != line.consequences.end()) return row;
    }
    return -1;
}

QString RecordModel::stateLine() const {
    if (!m_book.record()) return tr("No record is in hand. Open a new one for this pair, or take up one that was begun.");
    auto const& read = *m_book.record();
    auto const text = m_book.isOfPair() ? tr("%1: %2; %3 of %4 lines open") : tr("%1: %2; %3 of %4 lines open. It is about other documents than those shown here.");
    return text.arg(QFileInfo(shownText(read.file)).fileName(), recordStateWord(read.overview.state), QString::number(read.overview.open.size()), QString::number(read.overview.lines.size()));
}

QString RecordModel::lineText(int row) const {
    if (!m_book.record() || row < 0 || row >= rowCount()) return {};
    auto const& read = *m_book.record();
    auto const& line = read.overview.lines[rowAt(row).line];
    auto html = QStringLiteral("<p><b>%1</b> (%2)</p>").arg(rowAt(row).title.toHtmlEscaped(), tr("%1, level %2").arg(rowAt(row).severity).arg(line.level).toHtmlEscaped());
    html += paragraph(rowAt(row).standing);
    for (auto const& consequence : line.consequences) {
        if (auto const* finding = record::findingOf(read.record.opened(), consequence)) html += paragraph(tr("Follows from it: %1").arg(shownText(finding->title)));
    }
    for (auto const entry : line.decisions) html += paragraph(QStringLiteral("– ") + shownText(record::decisionText(read.record.entries[entry])));
    for (auto const entry : line.results) html += paragraph(tr("Measured: %1").arg(shownText(record::resultText(read.record.entries[entry], read.record.opened()))));
    return html;
}

QString RecordModel::signatureLines() const {
    if (!m_book.record()) return {};
    QStringList lines;
    for (auto const& signature : m_book.record()->overview.signatures) lines += shownText(record::signatureText(m_book.record()->record, signature));
    return lines.isEmpty() ? tr("Nobody has signed yet.") : lines.join(QLatin1Char('\n'));
}

QString RecordModel::distributionLines() const {
    if (!m_book.record()) return {};
    auto const& entries = m_book.record()->record.entries;
    auto const& overview = m_book.record()->overview;
    QStringList lines;
    for (auto const entry : overview.supersessions) lines += tr("Superseded %1").arg(shownText(record::supersededText(entries[entry], record::Hashes::Left)));
    QStringList recipients;
    for (auto const entry : overview.distributions) recipients += shownText(std::get<record::Distributed>(entries[entry].body).to);
    recipients.removeDuplicates();
    if (!recipients.isEmpty()) lines += tr("Given to: %1").arg(recipients.join(QStringLiteral(", ")));
    QStringList waiting;
    for (auto const& to : overview.notTold) waiting += shownText(to);
    if (!waiting.isEmpty()) lines += QStringLiteral("⚠  ") + tr("Not yet told that it is superseded: %1").arg(waiting.join(QStringLiteral(", ")));
    return lines.join(QLatin1Char('\n'));
}

void RecordModel::refill() {
    beginResetModel();
    m_rows.clear();
    if (m_book.record()) {
        auto const& lines = m_book.record()->overview.lines;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            auto const& line = lines[i];
            if (line.severity == model::Severity::Editorial && line.decisions.empty()) continue;
            bool const closed = line.standing == record::Standing::Closed || line.standing == record::Standing::Rejected;
            m_rows.push_back({i, line.finding, severityMark(line.severity) + QLatin1Char(' ') + severityWord(line.severity), shownText(line.title),
                              standingOf(*m_book.record(), line), line.level, closed});
        }
        std::stable_sort(m_rows.begin(), m_rows.end(), [&](RecordRow const& a, RecordRow const& b) { return isGraver(lines[a.line], lines[b.line]); });
    }
    endResetModel();
}

}  // namespace standin::ui
