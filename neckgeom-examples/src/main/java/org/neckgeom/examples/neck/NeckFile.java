package org.neckgeom.examples.neck;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.ShapedFile;
import org.neckgeom.examples.file.TextFile;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;

/**
 * What a neck file says: the neck, its blank and scarf, the shop, the rounds of trial cuts so far, the limits. Immutable.
 *
 * <p>Reading is all or nothing. A file with anything wrong in it is refused with every problem at once, each in one
 * sentence that names file, line and key, what was found and what is allowed.
 */
public final class NeckFile {

    private final NeckPlan plan;

    NeckFile(NeckPlan plan) {
        this.plan = Objects.requireNonNull(plan, "plan");
    }

    /**
     * Reads a neck file from disk, or a shipped neck where there is no such file.
     *
     * @param file a path, or the file name of a shipped neck such as {@code octave-mandolin.yaml}
     * @return what it says
     * @throws FileRefused with everything that is wrong, if anything is
     */
    public static NeckFile read(String file) {
        return parse(file, text(file));
    }

    /**
     * Returns the text of a neck file on disk, or of a shipped neck where there is no such file.
     *
     * @param file a path, or the file name of a shipped neck
     * @return its text
     * @throws FileRefused if it can't be had
     */
    public static String text(String file) {
        Path path = Path.of(file);
        return !Files.exists(path) && ShippedNecks.names().contains(file)
                ? ShippedNecks.text(file)
                : TextFile.read(path);
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
        return plan.design();
    }

    /**
     * Returns the blank, of the neck's wood.
     *
     * @return the blank
     */
    public Blank blank() {
        return plan.blank();
    }

    /**
     * Returns the shop.
     *
     * @return cutter, fence, leaves, instrument and passes
     */
    public Shop shop() {
        return plan.shop();
    }

    /**
     * Returns the scarf joint.
     *
     * @return the joint, or nothing where head and shaft are one piece
     */
    public Optional<ScarfJoint> scarf() {
        return plan.scarf();
    }

    /**
     * Returns the plan of this neck, on what has been read so far.
     *
     * @return the plan
     */
    public NeckPlan plan() {
        return plan;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckFile other && plan.equals(other.plan);
    }

    @Override
    public int hashCode() {
        return plan.hashCode();
    }

    /** Returns the neck's name, its scale, its blank, and the number of rounds so far. */
    @Override
    public String toString() {
        long cuts = plan.steps().stream()
                .filter(step -> step.cut().isPresent() && !step.isReadAgain())
                .count();
        String count = cuts == 0 ? "no trial cut yet" : cuts == 1 ? "1 trial cut" : cuts + " trial cuts";
        return design().name() + ", scale " + design().scale().length() + ", " + blank() + ", " + count;
    }
}
