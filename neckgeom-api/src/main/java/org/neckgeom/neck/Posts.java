package org.neckgeom.neck;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The tuner posts of a head, one to a string, from bass to treble, the strings of a course one after the other. Immutable.
 *
 * <p>Places count from the break line, as in {@link TunerPost}.
 */
public final class Posts extends Noun<Posts> {

    private static final int MOST = 48;

    /** Its keys. */
    public static final Table<Posts> TABLE =
            Table.of("posts", "the tuner posts", Posts::new).printedBy(Posts::sentences);

    private static final Key<Posts, List<Amount<Length>>> ALONG = TABLE.needed(
            "along",
            Types.list(Types.SIZE, 1, MOST),
            "distances of the posts from the break line along the face, one for each string");
    private static final Key<Posts, List<Amount<Length>>> ASIDE = TABLE.usual(
            "aside",
            Types.oneOrMore(Types.EITHER_WAY, MOST),
            List.of(ShopUnits.mm(0)),
            "distance from the head's middle to the string at the post, positive toward the treble side: one for all, or one"
                    + " for each string. Default: 0");
    private static final Key<Posts, List<Amount<Length>>> OVER_FACE = TABLE.usual(
            "string over face",
            Types.oneOrMore(Types.EITHER_WAY, MOST),
            List.of(ShopUnits.mm(0)),
            "height of the string over the head's face at the post: one for all, or one for each string. Default: 0");

    private static final Key<Posts, Amount<Length>> DIAMETER = TABLE.optional(
            "diameter",
            Types.SIZE,
            "diameter of the posts. Their places are then those of their middles. Default: their places are those of the strings");
    private static final Key<Posts, Amount<Length>> WASHER = TABLE.optional(
            "washer diameter",
            Types.SIZE,
            "diameter of the washers round the posts, for the wood round them. Default: that of the posts");

    private Posts(Values<Posts> values) {
        super(values);
        if (!(washerMm() >= diameterMm())) {
            throw values.refused(
                    WASHER, "at-least", "be " + values.at(DIAMETER) + " or more, the posts' own", values.at(WASHER));
        }
        refuseUnlessForAll(ASIDE);
        refuseUnlessForAll(OVER_FACE);
    }

    private void refuseUnlessForAll(Key<Posts, List<Amount<Length>>> key) {
        int posts = values().at(ALONG).size();
        int given = values().at(key).size();
        if (given != 1 && given != posts) {
            throw values().refused(key, "as-many", "be one for all or one for each of the " + posts + " posts", given);
        }
    }

    /**
     * {@return posts}
     *
     * @param places from bass to treble, 1 to 48
     */
    public static Posts of(TunerPost... places) {
        for (TunerPost place : Objects.requireNonNull(places, "places")) {
            Objects.requireNonNull(place, "place");
        }
        List<TunerPost> posts = List.of(places);
        return new Posts(TABLE.values()
                .with(ALONG, posts.stream().map(TunerPost::along).toList())
                .with(ASIDE, column(posts, TunerPost::aside))
                .with(OVER_FACE, column(posts, TunerPost::above)));
    }

    /** One for all where all are the same. */
    private static List<Amount<Length>> column(List<TunerPost> posts, Function<TunerPost, Amount<Length>> part) {
        List<Amount<Length>> all = posts.stream().map(part).toList();
        return all.stream().distinct().count() == 1 ? all.subList(0, 1) : all;
    }

    /**
     * {@return these posts with their diameter: places are then those of their middles}
     *
     * @param ofPost more than 0
     */
    public Posts diameter(Quantity<Length> ofPost) {
        return new Posts(values().amount(DIAMETER, ofPost));
    }

    /**
     * {@return these posts with washers}
     *
     * @param diameter of the washers, no less than that of the posts
     */
    public Posts washers(Quantity<Length> diameter) {
        return new Posts(values().amount(WASHER, diameter));
    }

    /** {@return the diameter of the posts in mm; 0 where it was not given and places are those of the strings} */
    public double diameterMm() {
        return values().libraryValue(DIAMETER, 0);
    }

    /** {@return the diameter of the washers in mm; that of the posts unless given} */
    public double washerMm() {
        return values().libraryValue(WASHER, diameterMm());
    }

    /** {@return each post, from bass to treble} */
    public List<TunerPost> each() {
        List<Amount<Length>> along = values().at(ALONG);
        List<TunerPost> posts = new ArrayList<>();
        for (int i = 0; i < along.size(); i++) {
            posts.add(TunerPost.at(along.get(i)).aside(at(ASIDE, i)).above(at(OVER_FACE, i)));
        }
        return List.copyOf(posts);
    }

    boolean hasHeights() {
        return values().has(OVER_FACE)
                && values().at(OVER_FACE).stream().anyMatch(height -> height.libraryValue() != 0);
    }

    private Amount<Length> at(Key<Posts, List<Amount<Length>>> key, int post) {
        List<Amount<Length>> all = values().at(key);
        return all.get(all.size() == 1 ? 0 : post);
    }

    private static Form<Posts> sentences() {
        return TABLE.facts("head-posts")
                .fact("posts", Kind.table(TunerPost.FORM), "from bass to treble", Posts::each)
                .finds("posts", "posts {along:brief first 12} from the break line");
    }
}
