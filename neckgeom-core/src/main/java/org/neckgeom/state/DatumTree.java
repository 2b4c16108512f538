package org.neckgeom.state;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.UncertaintyComponent;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Named;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.text.Nearest;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A datum tree ({@index registration}): which feature is located from which, and how well; it grows from the blank, such as
 * fingerboard on rod channel on blank. Any two features at any station give a {@link Budget}.
 *
 * <p>A feature is located at two stations x1 and x2 with independent errors d1 and d2, so at x it is off by {@code d1
 * (x2 - x)/(x2 - x1) + d2 (x - x1)/(x2 - x1)}, plus its own cutting error. Between two features only the paths from
 * their nearest common ancestor count: what they share cancels. Exact, for errors small against the distances.
 *
 * <p>The tree has three directions: across the neck (y, positive toward the treble side), in height (z, positive toward
 * the strings), along it (x, positive toward the body). A feature has its own parent in each. Immutable; every step
 * returns another tree.
 */
public final class DatumTree extends ValueAnswer {

    /** The feature every tree grows from: the blank itself, its centreline, its glue face, its nut line. */
    public static final String BLANK = "blank";

    private static final int MOST_TEXT = 900;

    /** The three directions a feature can be placed in. */
    private enum Direction {
        ACROSS("across"),
        HEIGHT("in height"),
        ALONG("along the neck");

        private final String words;

        Direction(String words) {
            this.words = words;
        }

        /** Name of a cause, one in the whole tree. */
        String causeOf(String term) {
            return this == ACROSS ? term : term + " " + words;
        }
    }

    /** A feature where it sits. */
    private record Placed(Direction direction, String feature, String parent) {
        static final Form<Placed> FORM = Form.<Placed>of("placed-feature")
                .fact("direction", Kind.code(Direction.class), "in which it is placed", Placed::direction)
                .fact("feature", Kind.NAME, "the feature placed", Placed::feature)
                .fact("parent", Kind.NAME, "the feature it is located on", Placed::parent);
    }

    private static final Form<DatumTree> FORM = Form.<DatumTree>of("registration")
            .fact("places", Kind.table(Placed.FORM), "each feature, in the order placed", DatumTree::places)
            .finds("registration", "Datum tree from the blank")
            .laidOut((tree, style) -> tree.drawn());

    private final Map<Direction, Named<Place>> trees;
    private final Direction lastDirection;
    private final String lastFeature;

    private DatumTree(Map<Direction, Named<Place>> trees, Direction lastDirection, String lastFeature) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.trees = trees;
        this.lastDirection = lastDirection;
        this.lastFeature = lastFeature;
    }

    /**
     * {@return a tree whose first feature sits on the blank's centreline with an error that is the same all along}
     *
     * @param feature such as {@code rod channel}
     * @param offset how its centring spreads, across
     */
    public static DatumTree from(String feature, ErrorDistribution<Length> offset) {
        Map<Direction, Named<Place>> trees = new EnumMap<>(Direction.class);
        DatumTree empty = new DatumTree(trees, Direction.ACROSS, BLANK);
        return empty.with(
                Direction.ACROSS,
                empty.fresh(Direction.ACROSS, feature),
                BLANK,
                List.of(Term.constant(feature, offset)));
    }

    /**
     * {@return this tree with the feature placed last turned by an angle besides}
     *
     * @param turn how the angle spreads, positive when the body end swings toward the treble side, or toward the strings
     * @param about x of the station at which the turn moves nothing
     */
    public DatumTree skewed(ErrorDistribution<Angle> turn, Quantity<Length> about) {
        return adding(
                new Term(lastFeature + " skew", lastFeature + " skew", turn, -LibraryUnits.mm(about, "about"), 1.0));
    }

    /**
     * {@return a feature to be placed across the neck: {@code on(parent).at(x1, x2).each(spread)}}
     *
     * @param feature a name not yet placed across
     */
    public Placing place(String feature) {
        return new Placing(Direction.ACROSS, fresh(Direction.ACROSS, feature));
    }

    /**
     * {@return a feature to be placed in height}
     *
     * @param feature a name not yet placed in height
     */
    public Placing placeInHeight(String feature) {
        return new Placing(Direction.HEIGHT, fresh(Direction.HEIGHT, feature));
    }

    /**
     * {@return a feature to be placed along the neck, against a stop or a line: {@code on(parent).by(spread)}}
     *
     * @param feature a name not yet placed along the neck
     */
    public Placing placeAlong(String feature) {
        return new Placing(Direction.ALONG, fresh(Direction.ALONG, feature));
    }

    /**
     * {@return this tree with a cutting error of its own for the feature placed last, the same all along it}
     *
     * @param error how it spreads
     */
    public DatumTree cut(ErrorDistribution<Length> error) {
        return adding(Term.constant(lastFeature + " cut", error));
    }

    private DatumTree adding(Term term) {
        Place place = place(lastDirection, lastFeature);
        List<Term> terms = new ArrayList<>(place.terms());
        terms.add(term);
        return with(lastDirection, lastFeature, place.parent(), terms);
    }

    /**
     * {@return the lateral error of one feature as seen from another; its components named after the features on the
     * two paths}
     *
     * @param feature the feature looked from
     * @param other the feature looked at; the result is positive when it lies too far toward the treble side
     * @param x the station
     * @throws IllegalArgumentException if a feature is unknown or not placed across
     */
    public Budget<Length> across(String feature, String other, Quantity<Length> x) {
        return between(Direction.ACROSS, feature, other, LibraryUnits.mm(x, "station"), x);
    }

    /**
     * {@return the error in height of one feature as seen from another}
     *
     * @param feature the feature looked from
     * @param other the feature looked at; the result is positive when it lies too far toward the strings
     * @param x the station
     * @throws IllegalArgumentException if a feature is unknown or not placed in height
     */
    public Budget<Length> height(String feature, String other, Quantity<Length> x) {
        return between(Direction.HEIGHT, feature, other, LibraryUnits.mm(x, "station"), x);
    }

    /**
     * {@return the error along the neck of one feature as seen from another}
     *
     * @param feature the feature looked from
     * @param other the feature looked at; the result is positive when it lies too far toward the body
     * @throws IllegalArgumentException if a feature is unknown or not placed along the neck
     */
    public Budget<Length> along(String feature, String other) {
        return between(Direction.ALONG, feature, other, 0.0, null);
    }

    /** {@return the state of the tree before anything is read: each error a cause, those in height and along named so} */
    public NeckState state() {
        List<Cause> causes = new ArrayList<>();
        trees.forEach((direction, tree) -> tree.names()
                .forEach(name -> place(direction, name)
                        .terms()
                        .forEach(term -> causes.add(
                                new Cause(direction.causeOf(term.cause()), name, term.spread(), Basis.GIVEN)))));
        return NeckState.of(causes);
    }

    /**
     * {@return how far a feature lies off across, as a deviation of {@link #state()}}
     *
     * @param feature a feature placed across
     * @param x the station
     * @throws IllegalArgumentException if the feature is unknown or not placed across
     */
    public Deviation deviationAcross(String feature, Quantity<Length> x) {
        return deviation(Direction.ACROSS, feature, LibraryUnits.mm(x, "station"));
    }

    /**
     * {@return how far a feature lies off in height, as a deviation of {@link #state()}}
     *
     * @param feature a feature placed in height
     * @param x the station
     * @throws IllegalArgumentException if the feature is unknown or not placed in height
     */
    public Deviation deviationInHeight(String feature, Quantity<Length> x) {
        return deviation(Direction.HEIGHT, feature, LibraryUnits.mm(x, "station"));
    }

    /**
     * {@return how far a feature lies off along the neck, as a deviation of {@link #state()}}
     *
     * @param feature a feature placed along the neck
     * @throws IllegalArgumentException if the feature is unknown or not placed along the neck
     */
    public Deviation deviationAlong(String feature) {
        return deviation(Direction.ALONG, feature, 0.0);
    }

    private Deviation deviation(Direction direction, String feature, double x) {
        Deviation sum = Deviation.none();
        for (String name : path(direction, feature)) {
            for (Term term : place(direction, name).terms()) {
                sum = sum.plus(Deviation.of(direction.causeOf(term.cause())).times(term.atZero() + term.slope() * x));
            }
        }
        return sum;
    }

    /** {@return the names of all features, in the order they were placed, the blank first} */
    public List<String> features() {
        Set<String> names = new LinkedHashSet<>(List.of(BLANK));
        trees.values().forEach(tree -> names.addAll(tree.names()));
        return List.copyOf(names);
    }

    private Budget<Length> between(
            Direction direction, String feature, String other, double x, @Nullable Quantity<Length> asked) {
        List<String> from = path(direction, feature);
        List<String> to = path(direction, other);
        String where = asked == null ? "" : " at " + LengthStyle.of(asked).brief(x);
        Budget<Length> budget = Budget.named(other + " as seen from " + feature + ", " + direction.words + where);
        List<UncertaintyComponent> all = new ArrayList<>();
        // What both stand on cancels.
        Set<String> under = new HashSet<>(from);
        Set<String> over = new HashSet<>(to);
        to.stream().filter(name -> !under.contains(name)).forEach(name -> add(all, direction, name, 1.0, x));
        from.stream().filter(name -> !over.contains(name)).forEach(name -> add(all, direction, name, -1.0, x));
        if (asked == null) {
            return withAll(budget, all);
        }
        LengthStyle style = LengthStyle.of(asked);
        return withAll(
                budget.in(style.fineUnit()),
                all.stream()
                        .map(one -> new UncertaintyComponent(
                                one.name(),
                                one.step(),
                                one.sensitivity(),
                                one.spread().in(style)))
                        .toList());
    }

    private static Budget<Length> withAll(Budget<Length> budget, List<UncertaintyComponent> all) {
        Budget<Length> sum = budget;
        for (UncertaintyComponent one : all) {
            sum = sum.with(one);
        }
        return sum;
    }

    private void add(List<UncertaintyComponent> all, Direction direction, String name, double sign, double x) {
        for (Term term : place(direction, name).terms()) {
            all.add(new UncertaintyComponent(
                    term.name(), name, sign * (term.atZero() + term.slope() * x), term.spread()));
        }
    }

    /** The feature, its parent, and so on, without the blank. */
    private List<String> path(Direction direction, String feature) {
        List<String> path = new ArrayList<>();
        String here = Objects.requireNonNull(feature, "feature");
        while (!here.equals(BLANK)) {
            path.add(here);
            here = place(direction, here).parent();
        }
        return path;
    }

    private Place place(Direction direction, String feature) {
        Place place = tree(direction).find(Objects.requireNonNull(feature, "feature"));
        if (place != null) {
            return place;
        }
        if (features().contains(feature)) {
            throw Refusal.because(
                    "feature",
                    "not-placed",
                    Words.quoted(feature) + " is not placed " + direction.words + "; there are "
                            + quoted(tree(direction)));
        }
        String nearest = Nearest.to(feature, tree(direction).names()).orElse("");
        throw Refusal.because(
                "feature",
                "unknown",
                "there is no feature " + Words.quoted(feature) + " " + direction.words
                        + (nearest.isEmpty() ? "" : " (did you mean \"" + nearest + "\"?)") + "; there are "
                        + quoted(tree(direction)));
    }

    private static String quoted(Named<Place> tree) {
        return tree.names().stream()
                .map(name -> ", \"" + name + "\"")
                .collect(Collectors.joining("", "\"" + BLANK + "\"", ""));
    }

    private Named<Place> tree(Direction direction) {
        return trees.getOrDefault(direction, Named.none());
    }

    private String fresh(Direction direction, String feature) {
        Words.name(feature, "a feature's name");
        if (feature.equals(BLANK) || tree(direction).find(feature) != null) {
            throw Refusal.of(
                    "features",
                    "once",
                    "have different names",
                    "",
                    "\"" + feature + "\" was placed twice " + direction.words);
        }
        return feature;
    }

    private void requireKnown(Direction direction, String parent) {
        if (!Objects.requireNonNull(parent, "parent").equals(BLANK)) {
            place(direction, parent);
        }
    }

    private DatumTree with(Direction direction, String feature, String parent, List<Term> terms) {
        Map<Direction, Named<Place>> copy = new EnumMap<>(Direction.class);
        copy.putAll(trees);
        copy.put(direction, tree(direction).with(feature, new Place(parent, List.copyOf(terms))));
        return new DatumTree(copy, direction, feature);
    }

    /** One error of a feature: at x it counts {@code atZero + slope x} times. */
    private record Term(String name, String cause, ErrorDistribution<?> spread, double atZero, double slope) {

        static Term constant(String name, ErrorDistribution<Length> spread) {
            return new Term(name, name, spread, 1.0, 0.0);
        }
    }

    /** What a feature sits on, and its errors there. */
    private record Place(String parent, List<Term> terms) {}

    @Override
    protected Object[] parts() {
        return new Object[] {trees};
    }

    private List<Placed> places() {
        List<Placed> all = new ArrayList<>();
        trees.forEach((direction, tree) -> tree.names()
                .forEach(name -> all.add(
                        new Placed(direction, name, place(direction, name).parent()))));
        return all;
    }

    private String drawn() {
        StringBuilder out = new StringBuilder("Datum tree from the blank");
        trees.forEach((direction, tree) -> {
            Map<String, List<String>> onIt = new HashMap<>();
            for (String name : tree.names()) {
                onIt.computeIfAbsent(place(direction, name).parent(), parent -> new ArrayList<>())
                        .add(name);
            }
            out.append("\n  ").append(direction.words);
            branch(out, onIt, BLANK, "\n    ");
        });
        return out.length() <= MOST_TEXT ? out.toString() : out.substring(0, MOST_TEXT) + " ...";
    }

    private static void branch(StringBuilder out, Map<String, List<String>> onIt, String parent, String indent) {
        for (String name : onIt.getOrDefault(parent, List.of())) {
            if (out.length() > MOST_TEXT) {
                return;
            }
            out.append(indent).append(name);
            branch(out, onIt, name, indent + "  ");
        }
    }

    /**
     * A sentence that places a feature, begun by {@link DatumTree#place}: {@code place("heel").on("rod channel")}, then
     * {@code .at(x1, x2).each(spread)} or {@code .by(spread)}. Immutable.
     */
    public final class Placing {

        private final DatumTree.Direction direction;
        private final String feature;

        private Placing(Direction direction, String feature) {
            this.direction = direction;
            this.feature = feature;
        }

        /**
         * Gives the datum that the feature is located on.
         *
         * @param parent a feature placed before in the same direction, or the blank
         * @return where the sentence goes on
         * @throws IllegalArgumentException if there is no such feature
         */
        public On on(String parent) {
            requireKnown(direction, parent);
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
             * Gives the two stations at which it is located.
             *
             * @param first x of one station
             * @param second x of the other, not the same
             * @return where the sentence goes on
             * @throws IllegalArgumentException if the stations are equal, or the feature is placed along the neck, where one
             *     stop locates it
             */
            public At at(Quantity<Length> first, Quantity<Length> second) {
                double x1 = LibraryUnits.mm(first, "first station");
                double x2 = LibraryUnits.mm(second, "second station");
                if (direction == Direction.ALONG) {
                    throw Refusal.because(
                            "feature",
                            "one-stop",
                            "\"" + feature
                                    + "\" is located by one stop along the neck: say by(...) instead of at(...)");
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
            public DatumTree by(ErrorDistribution<Length> error) {
                return with(direction, feature, parent, List.of(Term.constant(feature, error)));
            }

            @Override
            public String toString() {
                return "placing " + feature + " on " + parent + ": go on with at(...) or by(...)";
            }
        }

        /** The sentence once the stations are known. Immutable. */
        public final class At extends ValueAnswer {

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

            private At(On on, double x1, double x2, LengthStyle style) {
                super(FORM, style);
                this.on = on;
                this.x1 = x1;
                this.x2 = x2;
            }

            /**
             * Places the feature with independent errors of one distribution at the two stations.
             *
             * @param error how the error at each station spreads
             * @return the tree with the feature
             */
            public DatumTree each(ErrorDistribution<Length> error) {
                return errors(error, error);
            }

            /**
             * Places the feature with an error of its own at each station.
             *
             * @param first how the error at the first station spreads
             * @param second how the error at the second station spreads
             * @return the tree with the feature
             */
            public DatumTree errors(ErrorDistribution<Length> first, ErrorDistribution<Length> second) {
                double length = x2 - x1;
                return with(
                        direction,
                        feature,
                        on.parent,
                        List.of(
                                new Term(
                                        named(x1),
                                        feature() + " at its first station",
                                        first,
                                        x2 / length,
                                        -1.0 / length),
                                new Term(
                                        named(x2),
                                        feature() + " at its second station",
                                        second,
                                        -x1 / length,
                                        1.0 / length)));
            }

            private String named(double x) {
                return feature + " at " + style().brief(x);
            }

            private String feature() {
                return feature;
            }

            @Override
            protected Object[] parts() {
                return new Object[] {DatumTree.this, direction, feature, on.parent, x1, x2};
            }
        }
    }
}
