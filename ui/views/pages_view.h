// The pages of both documents side by side (one above the other where the window
// is narrow), with the places of findings framed: from a finding to its places,
// and from a place to what was read there.
#pragma once

#include <array>
#include <optional>

#include <QWidget>

#include "ui/models/session.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QSplitter;
class QToolButton;

namespace standin::ui {

class CutLabel;
class PageCanvas;

class PagesView : public QWidget {
    Q_OBJECT

public:
    // Follows Session::placeChosen and currentFindingChanged; `session` outlives
    // the view.
    explicit PagesView(Session& session, QWidget* parent = nullptr);
    ~PagesView() override;

    void focusSearch();
    [[nodiscard]] QLineEdit* searchField() const { return m_search; }
    [[nodiscard]] PageCanvas* canvas(DocumentSide side) const { return m_canvases[indexOf(side)]; }
    // What was read at the place that was clicked or found last.
    [[nodiscard]] QString readText() const;

Q_SIGNALS:
    // A row is to be put right: `parameter` is its id, empty where one is to be put in.
    void correctionWanted(standin::ui::DocumentSide side, std::string parameter, int page, standin::model::Rect box);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    struct Spot {
        DocumentSide side = DocumentSide::Reference;
        int page = 0;
        model::Rect box;
    };

    [[nodiscard]] QWidget* makeBar();
    [[nodiscard]] QWidget* makeSide(DocumentSide side);
    void takePair();
    void takePages(DocumentSide side);
    void showFinding();
    void showSpots();
    void refreshMarks();
    void click(DocumentSide side, int page, model::Point point);
    void point(DocumentSide side, std::size_t place);
    void showRead();
    void correct();
    void search(QString const& text);
    void stepHit(int by);
    void showHit();
    // The row that the other document's is paired with; empty: none.
    [[nodiscard]] std::string partnerOf(DocumentSide side, std::string const& parameter) const;

    Session& m_session;
    std::array<PageCanvas*, 2> m_canvases{};
    std::array<QSpinBox*, 2> m_pageBoxes{};
    std::array<QLabel*, 2> m_pageCounts{};
    std::array<CutLabel*, 2> m_names{};
    std::array<std::optional<Spot>, 2> m_wanted;   // to be brought into view once it can be
    std::array<std::optional<Spot>, 2> m_pointed;  // clicked or found, with its partner
    struct Read {
        DocumentSide side = DocumentSide::Reference;
        std::size_t place = 0;
    };
    std::optional<Read> m_read;
    std::vector<Read> m_hits;
    std::size_t m_hit = 0;
    QSplitter* m_splitter;
    QLineEdit* m_search;
    QLabel* m_hitCount;
    QToolButton* m_previous;
    QToolButton* m_next;
    QLabel* m_zoom;
    CutLabel* m_text;
    QPushButton* m_correct;
};

}  // namespace standin::ui
