// The words that stand for enum values in JSON, CSV, text and on screens
// (INTERFACES: one word for one thing).
//
//     nameOf(Severity::Hazard)                 "hazard"
//     fromName<Severity>("hazard")             Severity::Hazard
//     fromName<Severity>("danger")             nullopt
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "model/comparison.h"
#include "model/datasheet.h"

namespace standin::model {

// All words of an enum, in the order of its values.
template <class Enum>
[[nodiscard]] std::span<std::string_view const> namesOf();

template <class Enum>
[[nodiscard]] std::string_view nameOf(Enum value) {
    auto const names = namesOf<Enum>();
    auto const index = static_cast<std::size_t>(value);
    return index < names.size() ? names[index] : std::string_view{};
}

template <class Enum>
[[nodiscard]] std::optional<Enum> fromName(std::string_view name) {
    auto const names = namesOf<Enum>();
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == name) return static_cast<Enum>(i);
    }
    return std::nullopt;
}

template <> std::span<std::string_view const> namesOf<TextLayer>();
template <> std::span<std::string_view const> namesOf<CorrectionOutcome>();
template <> std::span<std::string_view const> namesOf<SectionKind>();
template <> std::span<std::string_view const> namesOf<TableKind>();
template <> std::span<std::string_view const> namesOf<ParameterKind>();
template <> std::span<std::string_view const> namesOf<Grade>();
template <> std::span<std::string_view const> namesOf<FigureReading>();
template <> std::span<std::string_view const> namesOf<Furniture::Kind>();
template <> std::span<std::string_view const> namesOf<FindingKind>();
template <> std::span<std::string_view const> namesOf<Relation>();
template <> std::span<std::string_view const> namesOf<Judgement>();
template <> std::span<std::string_view const> namesOf<WordingClass>();
template <> std::span<std::string_view const> namesOf<Severity>();
template <> std::span<std::string_view const> namesOf<HazardSide>();
template <> std::span<std::string_view const> namesOf<VerdictLevel>();
template <> std::span<std::string_view const> namesOf<ConditionRelation>();
template <> std::span<std::string_view const> namesOf<CheckOutcome>();

}  // namespace standin::model
