// A reading frame: page coordinates turned so that text of one direction runs to
// the right and its lines follow downwards. All of layout works in frames, so
// that sideways pages need no code of their own.
//
//     Frame const frame{model::Direction::Up};
//     model::Rect const flow = frame.toFlow(glyph.box);   // flow.x0: where reading starts
#pragma once

#include "model/page_content.h"

namespace standin::layout {

struct Frame {
    model::Direction direction = model::Direction::Right;

    [[nodiscard]] model::Point toFlow(model::Point p) const {
        switch (direction) {
            case model::Direction::Down: return {p.y, -p.x};
            case model::Direction::Up: return {-p.y, p.x};
            case model::Direction::Left: return {-p.x, -p.y};
            default: return p;
        }
    }
    [[nodiscard]] model::Point toPage(model::Point p) const {
        switch (direction) {
            case model::Direction::Down: return {-p.y, p.x};
            case model::Direction::Up: return {p.y, -p.x};
            case model::Direction::Left: return {-p.x, -p.y};
            default: return p;
        }
    }
    [[nodiscard]] model::Rect toFlow(model::Rect const& r) const { return ordered(toFlow(model::Point{r.x0, r.y0}), toFlow(model::Point{r.x1, r.y1})); }
    [[nodiscard]] model::Rect toPage(model::Rect const& r) const { return ordered(toPage(model::Point{r.x0, r.y0}), toPage(model::Point{r.x1, r.y1})); }
    // Sideways: horizontal rules of the page are vertical in the frame.
    [[nodiscard]] bool sideways() const { return direction == model::Direction::Down || direction == model::Direction::Up; }

private:
    static model::Rect ordered(model::Point a, model::Point b) {
        return {a.x < b.x ? a.x : b.x, a.y < b.y ? a.y : b.y, a.x < b.x ? b.x : a.x, a.y < b.y ? b.y : a.y};
    }
};

}  // namespace standin::layout
