// One datasheet as understood: the value that `standin read --json` writes
// (schema standin.datasheet/1) and that comparison takes. A plain value: no
// pointers, no handles; refer by id.
//
// Boxes are points, top left origin (geometry.h); pages count from 1. Ids are
// unique within the document ("s3", "t2", "p17", "x40" …).
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "model/geometry.h"
#include "model/table.h"

namespace standin::model {

enum class TextLayer : std::uint8_t { Full, Partial, None };

// What became of a correction that a person wrote for this sheet. NotNeeded: the
// program reads it so by itself; NotFound, Ambiguous: it fits no row, or several.
enum class CorrectionOutcome : std::uint8_t { Applied, NotNeeded, NotFound, Ambiguous };

// One value that a person put right where the program misread the page.
struct Correction {
    std::string id;  // 12 hex digits over what was written, the same for each field of one entry
    CorrectionOutcome outcome = CorrectionOutcome::Applied;
    std::string parameter;  // id; empty where there is none (any more)
    int page = 0;
    Rect box;
    std::string row;        // name and symbol, as a person would call it
    std::string field;      // "name", "min", "unit" …; "parameter": a row taken out or put in
    std::string read;       // what the program had read; empty: nothing
    std::string corrected;  // what stands there instead; empty: nothing
    std::string by, date, why;
    bool operator==(Correction const&) const = default;
};

struct DocumentInfo {
    std::string file;    // as given by the user
    std::string sha256;  // lower-case hex of the bytes that were parsed
    std::uint64_t bytes = 0;
    int pages = 0;
    std::string producer;
    std::string creator;
    std::string title;
    TextLayer textLayer = TextLayer::Full;
    std::vector<std::string> languages;    // BCP 47, prevailing first
    std::vector<std::string> partNumbers;  // prevailing first
    std::string maker;
    std::string revision;
    std::string date;
    std::vector<std::string> warnings;
    std::vector<Correction> corrections;  // every one that names this document, used or not
    bool operator==(DocumentInfo const&) const = default;
};

enum class SectionKind : std::uint8_t {
    Features, Description, Ordering, Selection, Marking, Pins, BlockDiagram, Ratings, OperatingConditions, Thermal,
    Characteristics, Timing, TestCircuit, Curves, Function, Application, Precautions, Package, Packing, Revision, Legal, Other
};

struct Section {
    std::string id;
    SectionKind kind = SectionKind::Other;
    std::string title;  // as printed, numbering included
    int level = 1;
    int page = 0;
    Rect box;
    bool operator==(Section const&) const = default;
};

enum class ParameterKind : std::uint8_t { Rating, OperatingCondition, Thermal, Characteristic, Timing, Mechanical, Other };

// DOMAIN grades of a printed value: guaranteed, at 25 °C only, by design,
// typical, curve, nominal, absolute maximum.
enum class Grade : std::uint8_t { G, G25, GD, T, C, N, A };

struct Value {
    std::string text;     // corpus/LABELS form: "4.250", "VCU-0.025", "±50"
    std::string printed;  // raw, as printed
    std::optional<std::string> value;  // decimal string in Interval::unit; none where it is not a number
    Rect box;
    bool operator==(Value const&) const = default;
};

// What is judged. Decimal strings in the coherent SI unit (temperatures degC).
struct Interval {
    std::optional<std::string> lo, typ, hi;
    bool loOpen = false;  // "<" and ">" exclude the bound
    bool hiOpen = false;
    std::string unit;        // "V", "A", "Ω", "s", "F", "degC", "W", "K/W", "1" …
    std::string relativeTo;  // "VDD" for "VDD-0.3"; empty: absolute
    std::string factor;      // "0.7" for "0.7×VDD", then lo/typ/hi hold the ratio; empty: none
    bool operator==(Interval const&) const = default;
};

struct Confidence {
    double score = 0;  // 0 … 1
    std::vector<std::string> reasons;
    bool operator==(Confidence const&) const = default;
};

struct Parameter {
    std::string id;
    std::string section;
    std::string table;  // id, or empty (bullet and leader lists)
    ParameterKind kind = ParameterKind::Other;
    std::string name;            // empty where none is printed
    std::string symbol;          // empty where none is printed
    std::string canonical;       // vocabulary id, or empty
    std::string condition;       // empty: none printed
    std::string tableCondition;  // empty: none printed
    std::string variant;         // empty: none
    std::optional<Value> min, typ, max;
    std::string unit;  // as printed; empty: none
    std::optional<Interval> interval;
    Grade grade = Grade::G;
    std::vector<std::string> notes;  // resolved footnotes
    Confidence confidence;
    std::vector<std::string> corrected;  // fields that a person put right: see DocumentInfo::corrections
    int page = 0;
    Rect box;
    std::string printed;      // the whole row as printed, cells joined by " | ", leader dots behind their cell
    bool recognised = false;  // in a picture, some of it at least
    bool operator==(Parameter const&) const = default;
};

struct Pin {
    std::string number;
    std::string name;
    std::string function;
    std::string package;  // empty where the sheet has one only
    int page = 0;
    Rect box;
    bool recognised = false;  // in a picture, some of it at least
    bool operator==(Pin const&) const = default;
};

struct Package {
    std::string name;       // as printed
    std::string canonical;  // "SOT-23-6"; empty: not known
    std::optional<int> pins;
    int page = 0;
    Rect box;
    bool operator==(Package const&) const = default;
};

struct OrderingLine {
    std::string code;
    std::vector<std::pair<std::string, std::string>> attributes;  // column title, text as printed, in column order
    std::string table;
    int page = 0;
    Rect box;
    bool operator==(OrderingLine const&) const = default;
};

struct Feature {
    std::string canonical;  // "zero-volt-charging"
    std::string state;      // a token of the vocabulary ("inhibited"), or "unstated"
    int page = 0;
    Rect box;
    std::string text;  // the sentence or cell it was taken from
    bool operator==(Feature const&) const = default;
};

struct Place {
    int page = 0;
    Rect box;
    bool operator==(Place const&) const = default;
};

// A sentence or list entry, in reading order; it may cross a page.
struct Sentence {
    std::string id;
    std::string section;
    std::string text;
    std::vector<Place> places;
    bool recognised = false;  // in a picture, some of it at least
    bool operator==(Sentence const&) const = default;
};

// A printed piece of text with its place (inside a figure, in a running head …).
struct PlacedText {
    std::string text;
    int page = 0;
    Rect box;
    bool operator==(PlacedText const&) const = default;
};

enum class FigureReading : std::uint8_t { Text, Vector, Image };

struct Figure {
    std::string id;
    std::string section;
    std::string caption;
    int page = 0;
    Rect box;
    FigureReading read = FigureReading::Vector;
    std::vector<PlacedText> texts;  // what is lettered inside it
    std::string shape;              // hash of its drawing, for comparing; may be empty
    bool operator==(Figure const&) const = default;
};

// Running heads, page numbers, watermarks: one entry for equal texts over pages.
struct Furniture {
    enum class Kind : std::uint8_t { RunningHead, PageNumber, Watermark };
    Kind kind = Kind::RunningHead;
    std::string text;
    std::vector<Place> places;
    bool operator==(Furniture const&) const = default;
};

// Account of every number and sentence: numbers = the owners + unaccounted.
struct Coverage {
    int numbers = 0;
    int inParameters = 0;
    int inTables = 0;
    int inText = 0;
    int inFigures = 0;
    int inFurniture = 0;
    std::vector<PlacedText> unaccounted;
    int sentences = 0;
    std::vector<int> pagesWithoutText;
    std::vector<std::string> unreadTables;   // table ids, or "page N" where only an image was seen
    std::vector<std::string> unreadFigures;  // figure ids
    std::vector<PlacedText> drawnSigns;      // "before \"8\"": a sign among the text that is a drawing and was not read
    std::vector<PlacedText> unreadPins;      // a heading, "pin 6", "pins 1 to 18": printed of pins and not read
    std::vector<PlacedText> recognised;  // lines read by character recognition: to be compared with the page
    std::vector<Place> unrecognised;     // looked like lettering of a picture and was not made out
    bool operator==(Coverage const&) const = default;
};

struct Datasheet {
    DocumentInfo document;
    std::vector<Section> sections;
    std::vector<Table> tables;  // without word indices once read
    std::vector<Parameter> parameters;
    std::vector<Pin> pins;
    std::vector<Package> packages;
    std::vector<OrderingLine> ordering;
    std::vector<Feature> features;
    std::vector<Sentence> text;
    std::vector<Figure> figures;
    std::vector<Furniture> furniture;
    Coverage coverage;
    bool operator==(Datasheet const&) const = default;
};

}  // namespace standin::model
