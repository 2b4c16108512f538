package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;

/** Marks of a card in mm, y downwards from its upper left corner. Not shared between threads. */
final class CardMarks {

    private static final int TURN_STEPS = 24;

    private final List<Mark> marks = new ArrayList<>();

    /** The marks, the card's upper left corner at a place of the sheet, v upwards. */
    List<Mark> at(double left, double top) {
        return marks.stream().map(mark -> mark.moved(left, top)).toList();
    }

    void addAll(CardMarks others, double right, double down) {
        marks.addAll(others.at(right, -down));
    }

    /** Draws straight lines, x and y of each point in turn. */
    void line(Layer layer, double... xy) {
        double[] uv = xy.clone();
        for (int i = 1; i < uv.length; i += 2) {
            uv[i] = -uv[i];
        }
        marks.add(Stroke.through(layer, uv));
    }

    void box(double x, double y, double width, double height) {
        line(Layer.OUTLINE, x, y, x + width, y, x + width, y + height, x, y + height, x, y);
    }

    void ring(double x, double y, double radius) {
        arc(x, y, radius, 0, 360);
    }

    /** Draws an arc between two directions in degrees, from the right, anticlockwise as seen. */
    void arc(double x, double y, double radius, double from, double to) {
        double[] xy = new double[2 * TURN_STEPS + 2];
        for (int i = 0; i <= TURN_STEPS; i++) {
            double angle = StrictMath.toRadians(from + (to - from) * i / TURN_STEPS);
            xy[2 * i] = x + radius * StrictMath.cos(angle);
            xy[2 * i + 1] = y - radius * StrictMath.sin(angle);
        }
        line(Layer.OUTLINE, xy);
    }

    /** Draws an arrow to the right or to the left. */
    void arrow(double from, double to, double y) {
        double back = from > to ? 1.6 : -1.6;
        line(Layer.OUTLINE, from, y, to, y);
        line(Layer.OUTLINE, to + back, y - 0.8, to, y, to + back, y + 0.8);
    }

    /** Writes words on the line y. */
    void words(double x, double y, double capital, String words) {
        if (!words.isBlank()) {
            marks.add(new Words(new Spot(x, -y), capital, false, words));
        }
    }

    void centred(double x, double y, double capital, String words) {
        words(x - LetterWidths.mm(words, capital) / 2, y, capital, words);
    }

    void toTheRight(double x, double y, double capital, String words) {
        words(x - LetterWidths.mm(words, capital), y, capital, words);
    }

    /** Returns words as lines of a width; a word that is wider is parted. */
    static List<String> lines(String words, double capital, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int space = LetterWidths.thousandths(" ");
        int wide = 0;
        StringTokenizer rest = new StringTokenizer(words);
        while (rest.hasMoreTokens()) {
            String word = rest.nextToken();
            if (line.length() > 0 && LetterWidths.mm(wide + space + LetterWidths.thousandths(word), capital) > width) {
                lines.add(line.toString());
                line.setLength(0);
                wide = 0;
            }
            line.append(line.length() == 0 ? "" : " ");
            wide += line.length() == 0 ? 0 : space;
            for (int letter : word.codePoints().toArray()) {
                String more = Character.toString(letter);
                int itsWidth = LetterWidths.thousandths(more);
                if (line.length() > 0 && LetterWidths.mm(wide + itsWidth, capital) > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                    wide = 0;
                }
                line.append(more);
                wide += itsWidth;
            }
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }
}
