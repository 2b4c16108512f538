package org.neckgeom.solid;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.Amount;

/**
 * What is free on a head: wood round the posts' washers, washers apart, strings clear of other posts and of each other.
 * Immutable.
 *
 * <p>Round a post: the distance of its middle to the outline and the nut line less the washer's radius; negative off the
 * wood. A string and another post: the distance of the string's middle line to the post's axis less both radii. Two strings
 * cross where their lines cross seen square to the face. Exact.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class HeadClearances extends ValueAnswer {

    /** One decimal prints less as 0.0. */
    private static final double PRINTED_AS_NOTHING_MM = 0.05;

    private static final Form<Pair> PAIR = Form.<Pair>of("clearance")
            .fact("first", Kind.WHOLE, "number, from the bass side", Pair::first)
            .fact("second", Kind.WHOLE, "number, from the bass side; 0 for the edge", Pair::second)
            .fact("clearance", Kind.MM, "negative: they meet", Pair::mm)
            .finds("overlap", p -> p.mm < 0, "overlap of {clearance:size digits 2}")
            .finds("close", p -> p.mm < PRINTED_AS_NOTHING_MM, "{clearance:digits 2}")
            .finds("clearance", "{clearance:1|2}");

    private static final Form<HeadClearances> FORM = Form.<HeadClearances>of("head-clearances")
            .factIfAny("edge", Kind.answer(PAIR), "least wood past a washer", c -> Optional.ofNullable(c.edge))
            .factIfAny("washers", Kind.answer(PAIR), "least between two washers", c -> Optional.ofNullable(c.washers))
            .factIfAny(
                    "post",
                    Kind.answer(PAIR),
                    "least between a string and another's post",
                    c -> Optional.ofNullable(c.post))
            .factIfAny(
                    "strings",
                    Kind.answer(PAIR),
                    "least between two strings on the head",
                    c -> Optional.ofNullable(c.strings))
            .fact("crossings", Kind.WHOLE, "pairs of strings that cross over the head", c -> c.crossings)
            .finds("clearances", "Clearances on the head")
            .line("edge", "wood round a post", "{edge}")
            .line("washers", "between posts", "{washers}")
            .line("post", "string past a post", "{post}")
            .line("strings", "between strings", "{strings}")
            .line("crossings", "strings that cross", "{crossings}")
            .note("size-not-given", c -> !c.sized, "sizes of posts and washers were not given and count as 0");

    private final @Nullable Pair edge;
    private final @Nullable Pair washers;
    private final @Nullable Pair post;
    private final @Nullable Pair strings;
    private final int crossings;
    private final boolean sized;

    /** Two things by their numbers from the bass side, and what is free between them in mm. */
    private record Pair(int first, int second, double mm) {}

    private HeadClearances(HeadSolid head, List<StringLine> lines) {
        super(FORM, head.style());
        this.sized = head.head().washerDiameterMm() > 0;
        List<Spot> posts = head.posts();
        List<Line> axes = head.postAxes();
        double washer = head.head().washerDiameterMm() / 2;
        double radius = head.head().postDiameterMm() / 2;
        List<StringLine> over =
                lines.stream().filter(s -> s.overHead().isPresent()).toList();
        this.edge = least(IntStream.range(0, posts.size())
                .mapToObj(i -> new Pair(i + 1, 0, head.outline().insetMm(posts.get(i)) - washer)));
        this.washers = least(pairs(posts.size()).map(p -> new Pair(p.first, p.second, between(posts, p) - 2 * washer)));
        this.post = least(over.stream()
                .flatMap(s -> IntStream.range(0, axes.size())
                        .filter(j -> j + 1 != s.number())
                        .mapToObj(j -> new Pair(
                                s.number(),
                                j + 1,
                                way(s).distanceMm(axes.get(j))
                                        - radius
                                        - s.gauge().libraryValue() / 2))));
        this.strings = least(pairs(over.size()).map(p -> {
            StringLine one = over.get(p.first - 1);
            StringLine other = over.get(p.second - 1);
            double thick = one.gauge().libraryValue() + other.gauge().libraryValue();
            return new Pair(one.number(), other.number(), way(one).distanceMm(way(other)) - thick / 2);
        }));
        this.crossings = (int) pairs(over.size())
                .filter(p -> cross(head.frame(), way(over.get(p.first - 1)), way(over.get(p.second - 1))))
                .count();
    }

    /**
     * {@return the clearances of a head}
     *
     * @param head with its posts
     * @param strings those that run over it; none leaves their clearances out
     */
    static HeadClearances of(HeadSolid head, List<StringLine> strings) {
        return new HeadClearances(head, strings);
    }

    private static Stream<Pair> pairs(int count) {
        return IntStream.rangeClosed(1, count)
                .boxed()
                .flatMap(i -> IntStream.rangeClosed(i + 1, count).mapToObj(j -> new Pair(i, j, 0)));
    }

    private static double between(List<Spot> posts, Pair pair) {
        return posts.get(pair.first - 1).distanceMm(posts.get(pair.second - 1));
    }

    private static Line way(StringLine string) {
        return string.overHead().orElseThrow();
    }

    private static @Nullable Pair least(Stream<Pair> all) {
        return all.min((a, b) -> Double.compare(a.mm, b.mm)).orElse(null);
    }

    /** Whether two lines cross seen square to the head's face. */
    private static boolean cross(Frame head, Line one, Line other) {
        return side(head, one, other.from()) != side(head, one, other.to())
                && side(head, other, one.from()) != side(head, other, one.to());
    }

    private static boolean side(Frame head, Line line, Point point) {
        Point a = head.toHere(line.from());
        Point b = head.toHere(line.to());
        Point p = head.toHere(point);
        return (b.xMm() - a.xMm()) * (p.yMm() - a.yMm()) - (b.yMm() - a.yMm()) * (p.xMm() - a.xMm()) > 0;
    }

    /** {@return the least wood past a post's washer, to the outline and the nut line; negative off the wood; nothing without posts} */
    public Optional<Amount<Length>> edge() {
        return amount(edge);
    }

    /** {@return the number of the post with the least wood past its washer, from the bass side; 0 without posts} */
    public int postNearestTheEdge() {
        return edge == null ? 0 : edge.first;
    }

    /** {@return whether the size of posts or washers was given; else it counts as 0} */
    public boolean isSized() {
        return sized;
    }

    /** {@return the least between two washers; negative where they meet; nothing with fewer than two posts} */
    public Optional<Amount<Length>> washers() {
        return amount(washers);
    }

    /** {@return the least between a string and another string's post; nothing without strings over the head} */
    public Optional<Amount<Length>> stringPastPost() {
        return amount(post);
    }

    /** {@return the least between two strings on the head; nothing without strings over the head} */
    public Optional<Amount<Length>> strings() {
        return amount(strings);
    }

    /** {@return how many pairs of strings cross over the head; 0 or more} */
    public int crossings() {
        return crossings;
    }

    private Optional<Amount<Length>> amount(@Nullable Pair pair) {
        return Optional.ofNullable(pair).map(p -> style().amount(p.mm));
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {edge, washers, post, strings, crossings, sized};
    }
}
