package org.neckgeom.budget;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/**
 * A sentence that places a feature, begun by {@link Registration#place}: {@code place("heel").on("rod channel")}, then
 * {@code .at(x1, x2).each(spread)} or {@code .by(spread)}. Immutable.
 */
public final class Placing {

    private final Registration tree;
    private final Registration.Direction direction;
    private final String feature;

    Placing(Registration tree, Registration.Direction direction, String feature) {
        this.tree = tree;
        this.direction = direction;
        this.feature = feature;
    }

    /**
     * Says what the feature is located on.
     *
     * @param parent a feature placed before in the same direction, or the blank
     * @return where the sentence goes on
     * @throws IllegalArgumentException if there is no such feature
     */
    public On on(String parent) {
        tree.requireKnown(direction, parent);
        return new On(parent);
    }

    @Override
    public String toString() {
        return "placing " + feature + ": go on with on(...)";
    }

    /** The sentence once it is known what the feature sits on. Immutable. */
    public final class On {

        private final String parent;

        private On(String parent) {
            this.parent = parent;
        }

        /**
         * Says at which two stations it is located.
         *
         * @param first x of one station
         * @param second x of the other, not the same
         * @return where the sentence goes on
         * @throws IllegalArgumentException if the stations are equal, or the feature is placed along the neck, where one
         *     stop locates it
         */
        public At at(Quantity<Length> first, Quantity<Length> second) {
            double x1 = HouseUnits.mm(first, "first station");
            double x2 = HouseUnits.mm(second, "second station");
            if (direction == Registration.Direction.ALONG) {
                throw Refusal.because(
                        "feature",
                        "one-stop",
                        "\"" + feature + "\" is located by one stop along the neck: say by(...) instead of at(...)");
            }
            if (x1 == x2) {
                throw Refusal.of(
                        "the two stations of \"" + feature + "\"",
                        "differ",
                        "differ",
                        "",
                        "both were " + Amount.from(first, "first station").toString());
            }
            return new At(this, x1, x2, LengthStyle.of(first));
        }

        /**
         * Places the feature by one error that is the same all along it, as a parallel stop or a stop's face gives.
         *
         * @param error how it spreads
         * @return the tree with the feature
         */
        public Registration by(Spread<Length> error) {
            return tree.with(direction, feature, parent, List.of(Registration.Term.constant(feature, error)));
        }

        @Override
        public String toString() {
            return "placing " + feature + " on " + parent + ": go on with at(...) or by(...)";
        }
    }

    /** The sentence once the stations are known. Immutable. */
    public final class At implements Answer {

        private static final Form<At> FORM = Form.<At>of("placing")
                .fact("feature", Kind.NAME, "that is placed", at -> at.feature())
                .fact("parent", Kind.NAME, "that it is located on", at -> at.on.parent)
                .fact("first", Kind.MM, "one station, from the nut", at -> at.x1)
                .fact("second", Kind.MM, "the other station, from the nut", at -> at.x2)
                .finds(
                        "needs-errors",
                        "placing {feature} on {parent} at {first:brief} and {second:brief}: go on with each(...)");

        private final On on;
        private final double x1;
        private final double x2;
        private final LengthStyle style;

        private At(On on, double x1, double x2, LengthStyle style) {
            this.on = on;
            this.x1 = x1;
            this.x2 = x2;
            this.style = style;
        }

        /**
         * Places the feature with alike but independent errors at the two stations.
         *
         * @param error how the error at each station spreads
         * @return the tree with the feature
         */
        public Registration each(Spread<Length> error) {
            return errors(error, error);
        }

        /**
         * Places the feature with an error of its own at each station.
         *
         * @param first how the error at the first station spreads
         * @param second how the error at the second station spreads
         * @return the tree with the feature
         */
        public Registration errors(Spread<Length> first, Spread<Length> second) {
            double length = x2 - x1;
            return tree.with(
                    direction,
                    feature,
                    on.parent,
                    List.of(
                            new Registration.Term(named(x1), first, x2 / length, -1.0 / length),
                            new Registration.Term(named(x2), second, -x1 / length, 1.0 / length)));
        }

        private String named(double x) {
            return feature + " at " + style.brief(x);
        }

        private String feature() {
            return feature;
        }

        @Override
        public Form<At> form() {
            return FORM;
        }

        @Override
        public LengthStyle style() {
            return style;
        }

        @Override
        public String toString() {
            return text(style);
        }
    }
}
