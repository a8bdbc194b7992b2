#include "app/print/layout/marks.h"

namespace headcap::app::print {

namespace {

struct Mover {
    QPointF by;
    void operator()(TextLine& line) const { line.at += by; }
    void operator()(Rule& rule) const {
        rule.from += by;
        rule.to += by;
    }
    void operator()(Hatch& hatch) const { hatch.area.translate(by); }
    void operator()(Frame& frame) const { frame.area.translate(by); }
    void operator()(Picture& picture) const { picture.area.translate(by); }
};

} // namespace

Mark moved(Mark mark, QPointF by) {
    std::visit(Mover{by}, mark);
    return mark;
}

} // namespace headcap::app::print
