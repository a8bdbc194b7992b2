#include "demo-data/pictures/scene/photographer.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include <fmt/format.h>

#include "demo-data/loader/data_error.h"
#include "demo-data/pictures/book/binding.h"
#include "demo-data/pictures/book/leaf.h"
#include "demo-data/pictures/book/text_block.h"
#include "demo-data/pictures/scene/camera.h"
#include "demo-data/pictures/scene/table.h"

namespace headcap::demo {
namespace {

// A thing to be laid, drawn when the table's scale is known.
struct Thing {
    QSizeF size;
    Lying lying;
    std::function<Surface(double scale)> draw;
};

class Scene {
public:
    Scene(const Json& drawn, const std::string& scope, const std::string& name)
        : m_drawn(drawn), m_scope(scope), m_picture(found("pictures", name)), m_name(name) {}

    [[nodiscard]] std::vector<Thing> things() const;
    [[nodiscard]] const Json& picture() const { return m_picture; }
    [[nodiscard]] Seed seed() const { return seedOf(m_scope + "/" + m_name); }
    [[nodiscard]] QRectF detailWindow() const;
    [[nodiscard]] Surface drawDetail(double scale) const;

private:
    [[nodiscard]] const Json& found(const char* group, const std::string& name) const {
        const auto all = m_drawn.find(group);
        if (all == m_drawn.end() || !all->contains(name)) {
            throw DataError{fmt::format("{} draws no {} named {}", m_scope, group, name)};
        }
        return all->at(name);
    }
    [[nodiscard]] bool isTreated(const Json& thing) const {
        return thing.value("treated", m_picture.value("treated", false));
    }
    [[nodiscard]] LeafView leafView(const std::string& name, bool treated) const {
        return {found("leaves", name), seedOf(m_scope + "/leaf/" + name), treated};
    }
    [[nodiscard]] BindingView bindingView(const std::string& name, bool treated) const {
        return {found("bindings", name), seedOf(m_scope + "/binding/" + name), treated};
    }
    [[nodiscard]] Thing leafThing(const Json& thing) const;
    [[nodiscard]] Thing boardThing(const Json& thing) const;
    [[nodiscard]] Thing spineThing(const Json& thing) const;
    void addOpening(const Json& thing, std::vector<Thing>& things) const;

    const Json& m_drawn;
    const std::string& m_scope;
    const Json& m_picture;
    const std::string& m_name;
};

Lying lyingOf(const Json& thing, double rise) {
    return {.at = thing.contains("at") ? pointOf(thing.at("at")) : QPointF{},
            .turn = thing.value("turn", 0.25),
            .rise = thing.value("rise", rise)};
}

Thing Scene::leafThing(const Json& thing) const {
    const LeafView view = leafView(thing.at("leaf").get<std::string>(), isTreated(thing));
    const QSizeF size = leafSize(view.leaf);
    return {size, lyingOf(thing, 0.35),
            [view, size](double scale) { return drawLeaf(view, QRectF(QPointF{}, size), scale); }};
}

Thing Scene::boardThing(const Json& thing) const {
    const BindingView view = bindingView(thing.at("board").get<std::string>(), isTreated(thing));
    return {{view.width(), view.height()},
            lyingOf(thing, view.thickness() * 0.16),
            [view](double scale) { return drawBoard(view, scale); }};
}

Thing Scene::spineThing(const Json& thing) const {
    const BindingView view = bindingView(thing.at("spine").get<std::string>(), isTreated(thing));
    return {{view.thickness() + 2 * kBesideSpine, view.height()},
            lyingOf(thing, 7),
            [view](double scale) { return drawSpine(view, scale); }};
}

// Two pages side by side in their book: the boards' edges, the block beneath, then the leaves.
void Scene::addOpening(const Json& thing, std::vector<Thing>& things) const {
    const bool treated = isTreated(thing);
    const Json& names = thing.at("opening");
    const QSizeF size = leafSize(found("leaves", names.at(1).get<std::string>()));
    const BindingView binding = bindingView(thing.at("in").get<std::string>(), treated);
    const double square = 3.6;
    const OpenBook book{size, square, thing.value("leaves_left", 60),
                        thing.value("leaves_right", 60)};
    things.push_back(
        {book.size(),
         {.at = {-square - book.left(), -square}, .turn = 0.2, .rise = 3},
         [binding, book](double scale) { return drawOpenBook(book, binding, scale); }});
    for (const int side : {0, 1}) {
        const LeafView view =
            leafView(names.at(static_cast<std::size_t>(side)).get<std::string>(), treated);
        const bool left = side == 0;
        things.push_back({size,
                          {.at = {left ? 0.0 : size.width(), 0},
                           .turn = 0.2,
                           .rise = 0.15,
                           .bow = thing.value("bow", 2.2),
                           .foldAtRight = left},
                          [view, size, left](double scale) {
                              Surface page = drawLeaf(view, QRectF(QPointF{}, size), scale);
                              curveTowardsFold(page, left);
                              return page;
                          }});
    }
}

std::vector<Thing> Scene::things() const {
    std::vector<Thing> things;
    for (const Json& thing : m_picture.at("shows")) {
        if (thing.contains("opening")) {
            addOpening(thing, things);
        } else if (thing.contains("board")) {
            things.push_back(boardThing(thing));
        } else if (thing.contains("spine")) {
            things.push_back(spineThing(thing));
        } else {
            things.push_back(leafThing(thing));
        }
    }
    return things;
}

QRectF Scene::detailWindow() const {
    const Json& window = m_picture.at("window");
    return {window.at(0).get<double>(), window.at(1).get<double>(), window.at(2).get<double>(),
            window.at(3).get<double>()};
}

Surface Scene::drawDetail(double scale) const {
    return drawLeaf(leafView(m_picture.at("detail").get<std::string>(), isTreated(m_picture)),
                    detailWindow(), scale);
}

QRectF around(const std::vector<Thing>& things) {
    QRectF box;
    for (const Thing& thing : things) {
        box |= QRectF(thing.lying.at, thing.size);
    }
    return box;
}

QSize pixelsOf(const Json& picture, double scale) {
    const QPointF size =
        picture.contains("size") ? pointOf(picture.at("size")) : QPointF{2400, 1800};
    const auto part = [&](double value) {
        return std::max(48, static_cast<int>(std::lround(value * scale)));
    };
    return {part(size.x()), part(size.y())};
}

// A bar as long as half of what is shown, in whole steps.
int barFor(double width) {
    for (const int length : {200, 150, 100, 80, 50, 30, 20}) {
        if (length < width * 0.62) {
            return length;
        }
    }
    return 10;
}

QImage onTable(const Scene& scene, const QSize& pixels) {
    const std::vector<Thing> things = scene.things();
    const QRectF box = around(things);
    const double margin =
        std::max(box.width(), box.height()) * scene.picture().value("margin", 0.06);
    const double foot = 17 + box.height() * 0.02;
    const double scale = std::min(pixels.width() / (box.width() + 2 * margin),
                                  pixels.height() / (box.height() + 1.6 * margin + foot));
    Table table{pixels, scale, mixed(scene.seed(), 1), scene.picture().value("grey", 0.47F)};
    const QPointF shift{(table.size().width() - box.width()) / 2 - box.left(),
                        (table.size().height() - foot - box.height()) / 2 - box.top() +
                            margin * 0.1};
    for (const Thing& thing : things) {
        Lying lying = thing.lying;
        lying.at += shift;
        table.lay(thing.draw(scale), lying);
    }
    const double width = table.size().width();
    const int bar = barFor(std::max(box.width(), width * 0.62));
    const double y = table.size().height() - 15.5 - margin * 0.15;
    const double cardSide = 24;
    const double left = (width - bar - 8 - cardSide - 8) / 2;
    table.layScaleBar({left, y}, bar);
    table.layGreyCard({left + bar + 16, y - 1}, cardSide);
    return std::move(table.image());
}

// Close by: no table is seen, only a short scale at the edge.
QImage closeBy(const Scene& scene, const QSize& pixels) {
    const QRectF window = scene.detailWindow();
    const double scale = pixels.width() / window.width();
    Table table{pixels, scale, mixed(scene.seed(), 1), 0.40F};
    const Surface thing = scene.drawDetail(scale);
    table.lay(thing, {.at = {0, 0}, .turn = 0, .rise = 0.4});
    const int bar = window.width() > 70 ? 20 : 10;
    const bool high = scene.picture().value("bar", std::string{"foot"}) == "head";
    table.layScaleBar({window.width() - bar - 10.5, high ? 2.0 : table.size().height() - 14.5},
                      bar);
    return std::move(table.image());
}

} // namespace

Photographed photographed(const Json& drawn, const std::string& scope, const std::string& name,
                          const std::string& takenAt, double scale) {
    const Scene scene{drawn, scope, name};
    const QSize pixels = pixelsOf(scene.picture(), scale);
    QImage image =
        scene.picture().contains("detail") ? closeBy(scene, pixels) : onTable(scene, pixels);
    expose(image, {.seed = scene.seed(),
                   .lift = scene.picture().value("lift", 1.08F),
                   .noise = static_cast<float>(0.8 + 0.3 * pixels.width() / 3000.0)});
    const Frame frame{.takenAt = takenAt,
                      .sideways = scene.picture().value("sideways", false),
                      .title = scope + " " + name};
    return {developed(image, frame), pixels.width(), pixels.height()};
}

} // namespace headcap::demo
