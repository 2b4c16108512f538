package org.neckgeom.examples.neck;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.ShapedFile;
import org.neckgeom.examples.file.TextFile;
import org.neckgeom.geometry.ScarfJoint;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;

/**
 * What a neck file says: the neck, its blank and scarf, the shop, the rounds of trial cuts so far, the limits. Immutable.
 *
 * <p>Reading is all or nothing. A file with anything wrong in it is refused with every problem at once, each in one
 * sentence that names file, line and key, what was found and what is allowed.
 */
public final class NeckFile {

    private final NeckDesign design;
    private final Blank blank;
    private final Shop shop;
    private final ScarfJoint scarf;
    private final List<TrialRound> rounds;
    private final NeckLimits limits;
    private final LengthStyle style;

    NeckFile(
            NeckDesign design,
            Blank blank,
            Shop shop,
            ScarfJoint scarf,
            List<TrialRound> rounds,
            NeckLimits limits,
            LengthStyle style) {
        this.design = Objects.requireNonNull(design, "design");
        this.blank = Objects.requireNonNull(blank, "blank");
        this.shop = Objects.requireNonNull(shop, "shop");
        this.scarf = scarf;
        this.rounds = List.copyOf(rounds);
        this.limits = Objects.requireNonNull(limits, "limits");
        this.style = Objects.requireNonNull(style, "style");
    }

    /**
     * Reads a neck file from disk, or a shipped neck where there is no such file.
     *
     * @param file a path, or the file name of a shipped neck such as {@code octave-mandolin.yaml}
     * @return what it says
     * @throws FileRefused with everything that is wrong, if anything is
     */
    public static NeckFile read(String file) {
        Path path = Path.of(file);
        if (!Files.exists(path) && ShippedNecks.names().contains(file)) {
            return parse(file, ShippedNecks.text(file));
        }
        return read(path);
    }

    /**
     * Reads a neck file from disk.
     *
     * @param file a path
     * @return what it says
     * @throws FileRefused with everything that is wrong, if anything is
     */
    public static NeckFile read(Path file) {
        return parse(file.toString(), TextFile.read(file));
    }

    /**
     * Reads the text of a neck file.
     *
     * @param name the file's name, for messages
     * @param text YAML 1.2
     * @return what it says
     * @throws FileRefused with everything that is wrong, if anything is
     */
    public static NeckFile parse(String name, String text) {
        return ShapedFile.read(name, text, NeckKeys.SHAPE, NeckParts::of);
    }

    /**
     * Returns what may stand in a neck file as a JSON Schema (draft 2020-12), for editors that complete and check.
     *
     * @return the schema as JSON, keys in their order
     */
    public static String schema() {
        return NeckKeys.SHAPE.schemaText("Neck file");
    }

    /**
     * Returns every key that may stand in a neck file, a line each, indented as in the file, with what it means.
     *
     * @return the lines
     */
    public static String keys() {
        return NeckKeys.SHAPE.outline();
    }

    /**
     * Returns the neck.
     *
     * @return its design
     */
    public NeckDesign design() {
        return design;
    }

    /**
     * Returns the blank, of the neck's wood.
     *
     * @return the blank
     */
    public Blank blank() {
        return blank;
    }

    /**
     * Returns the shop.
     *
     * @return cutter, fence, leaves, instrument and passes
     */
    public Shop shop() {
        return shop;
    }

    /**
     * Returns the scarf joint.
     *
     * @return the joint, or nothing where head and shaft are one piece
     */
    public Optional<ScarfJoint> scarf() {
        return Optional.ofNullable(scarf);
    }

    /**
     * Returns the rounds of trial cuts so far.
     *
     * @return in the order in which they were made; empty before the first
     */
    public List<TrialRound> rounds() {
        return rounds;
    }

    /**
     * Returns the limits to keep.
     *
     * @return the limits
     */
    public NeckLimits limits() {
        return limits;
    }

    /**
     * Returns how answers print lengths.
     *
     * @return the style told, otherwise that of the scale
     */
    public LengthStyle style() {
        return style;
    }

    /** Returns the design, then the blank, the shop, the number of rounds and the limits. */
    @Override
    public String toString() {
        StringBuilder text =
                new StringBuilder(design.toString()).append('\n').append(blank).append('\n');
        if (scarf != null) {
            text.append("scarf ").append(scarf.place()).append('\n');
        }
        text.append(shop).append('\n');
        text.append(rounds.size())
                .append(rounds.size() == 1 ? " round" : " rounds")
                .append(" of trial cuts so far\n");
        return text.append(limits).toString();
    }
}
