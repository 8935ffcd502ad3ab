// Which findings are shown and in which order. Hazard findings are always shown;
// what is hidden is counted.
#pragma once

#include <array>
#include <set>

#include <QSortFilterProxyModel>

#include "ui/models/findings_model.h"

namespace standin::ui {

enum class FindingOrder { Severity, Section, Kind, Name, Decision };

class FindingsFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    // Editorial findings are hidden at first.
    explicit FindingsFilter(FindingsModel& findings, QObject* parent = nullptr);

    // Hazard cannot be hidden: asking for it changes nothing.
    void setShown(model::Severity severity, bool shown);
    [[nodiscard]] bool isShown(model::Severity severity) const;
    void setKind(std::optional<model::FindingKind> kind);
    // A rung of the ladder (index into Comparison::sections), or all.
    void setSection(std::optional<int> rung);
    [[nodiscard]] std::optional<int> section() const { return m_section; }
    // Words that title, condition, values or relation must hold, in any order.
    void setText(QString const& text);
    void setOnlyUndecided(bool only);
    void setOrder(FindingOrder order);
    [[nodiscard]] FindingOrder order() const { return m_order; }
    // No filter any more, editorial findings included.
    void showEverything();

    [[nodiscard]] FindingRow const& rowAt(int proxyRow) const;
    [[nodiscard]] int proxyRowOf(std::string const& findingId) const;  // -1: hidden or none
    // The heading over a row where it opens a group in the present order, else empty.
    [[nodiscard]] QString headingAt(int proxyRow) const;

    [[nodiscard]] int hiddenCount() const;
    // "12 note, 59 editorial hidden", or empty.
    [[nodiscard]] QString hiddenText() const;

Q_SIGNALS:
    void filterChanged();

protected:
    [[nodiscard]] bool filterAcceptsRow(int sourceRow, QModelIndex const& sourceParent) const override;
    [[nodiscard]] bool lessThan(QModelIndex const& left, QModelIndex const& right) const override;

private:
    void apply();
    [[nodiscard]] QString groupOf(FindingRow const& row) const;

    FindingsModel& m_findings;
    std::array<bool, 5> m_shown{false, true, true, true, true};  // by Severity
    std::optional<model::FindingKind> m_kind;
    std::optional<int> m_section;
    QStringList m_words;
    bool m_onlyUndecided = false;
    FindingOrder m_order = FindingOrder::Severity;
};

}  // namespace standin::ui
