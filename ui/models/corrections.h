// Puts a misread row right where it stands: writes an entry into the pair's file
// of corrections (schema standin.corrections/1), makes the comparison anew, and
// takes both back on undo.
//
//     session.corrections().correct({.side = DocumentSide::Reference, .parameter = "p17",
//                                    .texts = {{Field::Max, "4.318"}}, .by = "I. Brandt", …});
//     session.decisions().undoStack().undo();
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QObject>
#include <QString>

#include "extractors/corrections/correction_file.h"
#include "ui/models/document_side.h"

namespace standin::ui {

class Session;

struct RowCorrection {
    DocumentSide side = DocumentSide::Reference;
    std::string parameter;       // id of the row; empty: one is put in that was not read
    int page = 0;                // of a row that is put in, with its place in points
    model::Rect box;
    bool notAParameter = false;  // the row is taken out, `texts` does not count
    std::vector<corrections::FieldText> texts;  // those that stand there otherwise than read
    std::string by, date, why;   // date: YYYY-MM-DD
};

// The text of a corrections file with one more correction in it; a row that an
// entry of the file corrects already gets that entry changed. `file` is the text
// so far, empty where there is none, `path` its name for messages. Errors (Usage):
// the file is none of corrections, or the correction lacks something.
[[nodiscard]] model::Result<std::string> withCorrection(std::string const& file, std::string const& path, ReadPair const& pair, RowCorrection const& correction);

// Values of a row before anyone corrected it, as they name it in a file.
[[nodiscard]] std::string textAsRead(model::Datasheet const& sheet, model::Parameter const& parameter, corrections::Field field);

class Corrections : public QObject {
    Q_OBJECT

public:
    // Part of the session; uses its undo stack.
    explicit Corrections(Session& session);

    // The file that the next correction goes to: the last that the pair was opened
    // with, else the one kept with the pair beside its decisions.
    [[nodiscard]] std::string filePath() const;
    // The one kept with the pair, whether it exists or not; empty: no pair.
    [[nodiscard]] std::string keptPath() const;
    // Corrections that are kept with the pair but that it was opened without.
    [[nodiscard]] int keptCount() const;
    // Opens the pair again with those.
    void applyKept();

    // Undoable. Where the file cannot be written nothing changes, and troubled()
    // says why.
    void correct(RowCorrection const& correction);

Q_SIGNALS:
    void written(QString path);
    void troubled(QString message);

private:
    friend class CorrectCommand;
    // Puts `text` in the place of `expected` (none: no file) and reads again.
    [[nodiscard]] bool replace(std::string const& path, std::optional<std::string> const& expected, std::optional<std::string> const& text);

    Session& m_session;
};

}  // namespace standin::ui
