package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.drawing.Markup;

/** A drawing with its caption and the key to its letters. Immutable. */
final class Figure {

    /** A letter of the drawing, or none, and its meaning. */
    record Key(String letter, String meaning) {}

    private final String id;
    private final Drawing drawing;
    private final String caption;
    private final List<Key> keys;

    Figure(String id, Drawing drawing, String caption) {
        this(id, drawing, caption, List.of());
    }

    private Figure(String id, Drawing drawing, String caption, List<Key> keys) {
        this.id = id;
        this.drawing = drawing;
        this.caption = caption;
        this.keys = keys;
    }

    Figure key(String letter, String meaning) {
        List<Key> more = new ArrayList<>(keys);
        more.add(new Key(letter, meaning));
        return new Figure(id, drawing, caption, List.copyOf(more));
    }

    String title() {
        return drawing.title();
    }

    String svg() {
        return drawing.toSvg(id);
    }

    void writeOn(Markup page) {
        page.open("figure");
        page.append("\n").append(svg()).append("\n");
        page.open("figcaption");
        page.element("strong", title()).text(". " + caption);
        if (!keys.isEmpty()) {
            page.open("ul", "class", "key");
            for (Key key : keys) {
                page.open("li");
                if (!key.letter().isEmpty()) {
                    page.element("b", key.letter()).text(" ");
                }
                page.text(key.meaning()).close();
            }
            page.close();
        }
        page.close().close();
    }
}
