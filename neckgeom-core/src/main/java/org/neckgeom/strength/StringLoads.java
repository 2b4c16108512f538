package org.neckgeom.strength;

import java.util.List;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Line;
import org.neckgeom.solid.StringLine;
import org.neckgeom.units.Amount;

/**
 * The strings of a neck at their heights, as what pulls on it: each along its own middle line, half its diameter above its
 * underside.
 *
 * @param heights of the undersides
 */
record StringLoads(Neck neck, StringHeights heights) {

    /** How high they lie. */
    static final Kind<StringLoads> HEIGHTS = Kind.answer(
            Form.<StringLoads>of("string-heights")
                    .fact("fretHeight", Kind.MM, "over the fingerboard", StringLoads::fretsMm)
                    .fact(
                            "atNut",
                            Kind.MM,
                            "undersides over the fret tops at the nut",
                            strings -> strings.heights.atNut().libraryValue())
                    .fact(
                            "action",
                            Kind.MM,
                            "undersides over the fret tops at half the scale",
                            strings -> strings.heights.action().libraryValue())
                    .fact(
                            "trebleAtNut",
                            Kind.MM,
                            "at the nut, of the outermost treble string",
                            strings -> strings.heights.trebleAtNut().libraryValue())
                    .fact(
                            "trebleAction",
                            Kind.MM,
                            "at half the scale, of the outermost treble string",
                            strings -> strings.heights.trebleAction().libraryValue())
                    .phrase("treble", StringLoads::areLevel, "")
                    .phrase("treble", "; treble side {trebleAtNut:brief}, {trebleAction:brief}")
                    .finds(
                            "string-heights",
                            "frets {fretHeight:brief}, strings {atNut:brief} over them at the nut, {action:brief} at the 12th fret{treble}"));

    /** As the neck is set, or at the usual heights. */
    static StringLoads of(Neck neck) {
        return new StringLoads(neck, neck.neckSet().map(NeckSet::heights).orElseGet(StringHeights::usual));
    }

    /** Whether the load acts at the strings' middle: without diameters it is taken at their undersides. */
    boolean haveDiameters() {
        return NeckModel.strings(neck).diametersMm().length > 0;
    }

    private boolean areLevel() {
        return heights.trebleAtNut().equals(heights.atNut())
                && heights.trebleAction().equals(heights.action());
    }

    private double fretsMm() {
        return neck.fingerboard()
                .fretHeight()
                .map(Amount::libraryValue)
                .orElse(StringLine.usualFretHeight().libraryValue());
    }

    /** The tension of all strings, each along its own middle line. */
    StringPull pull() {
        double[] tensions = StringTensions.of(neck).newton();
        List<StringLine> lines = StringLine.overBoard(neck, heights);
        int inLine = tensions.length * NeckModel.strings(neck).inCourse() / lines.size();
        StringPull pull = StringPull.NONE;
        for (int i = 0; i < lines.size(); i++) {
            double tension = tensions[i * tensions.length / lines.size()];
            pull = pull.plus(inLine * tension, middle(lines.get(i)));
        }
        return pull;
    }

    private static Line middle(StringLine string) {
        double half = string.gauge().libraryValue() / 2;
        return new Line(
                string.underside().from().plus(Direction.UP, half),
                string.underside().to().plus(Direction.UP, half));
    }
}
