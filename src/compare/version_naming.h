// How two sheets name the versions of their parts: what a row without a version holds
// for, and whether versions that have other names are other parts.
//
//     VersionNaming naming(sheetOfLq20, sheetOfLq20AndLq21, vocabulary, memo);
//     naming.areOthers(naming.ofReference(rowWithoutVersion), naming.ofCandidate(rowOfLq21))   // true: the first sheet is that of LQ20
#pragma once

#include <map>
#include <string>
#include <vector>

#include "compare/conditions.h"
#include "compare/variant_words.h"
#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::compare {

class VersionNaming {
public:
    VersionNaming(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::Vocabulary const& vocabulary, ConditionMemo& memo);

    // Words of the version that a row is printed for; of the sheet's own part where it
    // is printed for none and the other sheet has rows for that part. With what the
    // version is made for ("output-voltage=5", then its range of temperatures) where that
    // tells the versions of one of the sheets apart and is met in both.
    [[nodiscard]] VariantWords ofReference(model::Parameter const& row) const { return wordsOf(row, m_reference); }
    [[nodiscard]] VariantWords ofCandidate(model::Parameter const& row) const { return wordsOf(row, m_candidate); }

    // Both rows are for versions, and for two: by code where one version or more is named
    // in both sheets, else by what they are made for.
    [[nodiscard]] bool areOthers(VariantWords const& reference, VariantWords const& candidate) const;

    // The sheets name versions that correspond, and this one has none in the other sheet.
    [[nodiscard]] bool isOnlyOfReference(VariantWords const& version) const { return isAlone(version, m_reference, m_candidate); }
    [[nodiscard]] bool isOnlyOfCandidate(VariantWords const& version) const { return isAlone(version, m_candidate, m_reference); }

private:
    // By setpoint (vocabulary id): its typical value, "" where the version has several.
    using Nominals = std::map<std::string, std::string>;
    struct Naming {
        std::vector<std::string> codes;                        // of all versions that rows are printed for
        std::vector<std::string> own;                          // of the part that the sheet is about
        bool ownIsMeant = false;                               // by rows without a version
        std::map<std::string, Nominals> nominals;              // by version as printed
        std::map<std::string, std::vector<std::string>> made;  // by version: those nominals that tell
        std::map<std::string, VariantWords> words;             // by version as printed; made last, of all the others
        bool corresponds = false;                              // some version of it has a partner in the other sheet
    };
    static Naming namingOf(model::Datasheet const& sheet, vocabulary::Vocabulary const& vocabulary, ConditionMemo& memo);
    static VariantWords wordsOf(model::Parameter const& row, Naming const& naming);
    static VariantWords makeWords(std::string const& version, Naming const& naming);
    static bool correspond(Naming const& own, Naming const& other);
    [[nodiscard]] bool isAlone(VariantWords const& version, Naming const& own, Naming const& other) const;
    void takeNominals(std::string const& setpoint);

    Naming m_reference, m_candidate;
    bool m_shared = false;  // a version is named in both
};

}  // namespace standin::compare
