// Everything that was read of one document, by its place: what stands under a
// point of a page, what a text is found in, what a dragged frame holds.
//
//     ReadPlaces places(pair->reference);
//     for (auto const index : places.at(3, point)) places[index].text;
#pragma once

#include <vector>

#include <QString>

#include "ui/models/document_side.h"

namespace standin::ui {

// Parameter rows lie over the cells that they were read from.
enum class PlaceKind { Parameter, Cell, Sentence, Heading, Figure, Lettering, RunningText };

struct ReadPlace {
    PlaceKind kind = PlaceKind::Sentence;
    int page = 0;
    model::Rect box;
    QString text;       // as printed, made visible
    std::string id;     // of the parameter, table, sentence, section or figure; may be empty
    bool first = true;  // of a sentence that goes on at another place: its beginning
};

class ReadPlaces {
public:
    ReadPlaces() = default;
    // Takes texts and places, not the sheet.
    explicit ReadPlaces(model::Datasheet const& sheet);

    [[nodiscard]] std::size_t size() const { return m_places.size(); }
    [[nodiscard]] ReadPlace const& operator[](std::size_t index) const { return m_places[index]; }

    // What stands under a point: parameter rows first, then the smallest.
    [[nodiscard]] std::vector<std::size_t> at(int page, model::Point point) const;
    // Places that hold all of the words of `text` next to each other, whatever the
    // case, in reading order. A row that was read from cells is found as cells.
    [[nodiscard]] std::vector<std::size_t> find(QString const& text) const;
    // Texts (no parameter rows, no figures) whose middle line the frame touches.
    [[nodiscard]] std::vector<std::size_t> within(int page, model::Rect const& frame) const;
    // Texts joined as they stand: cells of one line by tabs, all else by new lines.
    [[nodiscard]] QString joined(std::vector<std::size_t> const& places) const;
    // -1: none.
    [[nodiscard]] int parameterPlace(std::string const& id) const;

private:
    std::vector<ReadPlace> m_places;       // by page, then from top to bottom
    std::vector<std::size_t> m_pageStart;  // first place of page N at N-1
    [[nodiscard]] std::pair<std::size_t, std::size_t> rangeOf(int page) const;
    [[nodiscard]] static bool isText(ReadPlace const& place);
};

// "parameter row", "cell of a table" …
[[nodiscard]] QString placeWord(PlaceKind kind);

// The finding about a place, the gravest and then the smallest; null: none.
[[nodiscard]] model::Finding const* findingAt(ReadPair const& pair, DocumentSide side, int page, model::Point point);

}  // namespace standin::ui
