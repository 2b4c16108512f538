package org.neckgeom.examples.neck;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.head.HeadPost;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The posts in a neck file: one to a string, from bass to treble, the strings of a course one after the other. */
final class PostsPart {

    private static final int MOST = 48;

    static final Key<List<Amount<Length>>> ALONG = Key.needed(
            "along", Kinds.listOf(Lengths.SIZE, 1, MOST), "from the break line along the face, one to a string");
    static final Key<List<Amount<Length>>> ASIDE = Key.optional(
            "aside",
            Kinds.oneOrMore(Lengths.EITHER_WAY, MOST),
            "where the string leaves the post, toward the treble side of the head's middle, one for all or one to a"
                    + " string; 0 when left out");
    static final Key<Amount<Length>> OVER_FACE = Key.optional(
            "string over face", Lengths.EITHER_WAY, "height of the string over the head's face at its post; 0");

    static final Shape SHAPE = Shape.of("where the strings meet their posts", ALONG, ASIDE, OVER_FACE);

    private PostsPart() {}

    static HeadPost[] of(Section section) {
        List<Amount<Length>> along = section.at(ALONG).value();
        List<Amount<Length>> aside = section.at(ASIDE).orElse(List.of(ShopUnits.mm(0)));
        if (aside.size() != 1 && aside.size() != along.size()) {
            throw new IllegalArgumentException("posts must have one aside for all or one each, but there were "
                    + along.size() + " posts and " + aside.size() + " asides");
        }
        Amount<Length> above = section.at(OVER_FACE).orElse(ShopUnits.mm(0));
        HeadPost[] posts = new HeadPost[along.size()];
        for (int i = 0; i < posts.length; i++) {
            posts[i] = HeadPost.at(along.get(i))
                    .aside(aside.get(aside.size() == 1 ? 0 : i))
                    .above(above);
        }
        return posts;
    }
}
