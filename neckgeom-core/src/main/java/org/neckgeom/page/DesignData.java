package org.neckgeom.page;

import java.util.Objects;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.form.Json;
import org.neckgeom.text.Report;

/**
 * A design alone as data for other programs: JSON with a unit beside every figure. Immutable.
 *
 * <p>The JSON is one object: {@code format} is {@code "neckgeom design"}, {@code version} is 1, and {@code design} is as in
 * {@link PlanData}, with the same quantities and the same refusals.
 */
public final class DesignData {

    static final Document<NeckDesign> DOCUMENT = new Document<>("neckgeom design", NeckDesign.TABLE);

    private final NeckDesign design;

    private DesignData(NeckDesign design) {
        this.design = design;
    }

    /**
     * {@return the data of a design}
     *
     * @param design the design
     */
    public static DesignData of(NeckDesign design) {
        return new DesignData(Objects.requireNonNull(design, "design"));
    }

    /**
     * {@return the design that a JSON text written by {@link #toJson} holds; a design equal to the one it was written
     * from, whose JSON is the same text}
     *
     * @param json the text
     * @throws IllegalArgumentException with the place and the rule, if the text is not JSON or not of this format
     */
    public static NeckDesign designFrom(String json) {
        return DOCUMENT.read(json);
    }

    /** {@return the design as JSON; the text in UTF-8, ending in a line feed} */
    public String toJson() {
        return Json.of(DOCUMENT.of(design));
    }

    /** True for the data of an equal design. */
    @Override
    public boolean equals(Object other) {
        return other instanceof DesignData that && design.equals(that.design);
    }

    @Override
    public int hashCode() {
        return design.hashCode();
    }

    /** Returns whose data it is and how to have it. */
    @Override
    public String toString() {
        return Report.titled("Data of the design: " + design.name())
                .note("toJson() for the whole of it")
                .toString();
    }
}
