package org.neckgeom.strength;

/**
 * What is not known of a neck that bends: its two woods, and each thing that the beam leaves out or takes for granted. A cause
 * has a size t of its own, whose unit is what {@link MadeNeck#with} makes of it; uniform between two ends, or normal.
 *
 * <p>Sizes by finite elements, beam sums and common practice: {@code strength2/model-error.csv} and {@code slots.csv} of the
 * tests, computed by scripts of their own.
 */
enum Cause {
    NECK_WOOD("wood of the neck", Part.WOOD, 0, 1),
    BOARD_WOOD("wood of the fingerboard", Part.WOOD, 0, 1),
    /** From none to six tenths of what open slots cost; judged from a tang in contact layers of 100 to 1000 MPa. */
    SLOTS("fret slots and tangs", Part.SOFTNESS, 0.3, 0.6 / Part.WIDTH),
    /** From none to bars locked at their ends. */
    ROD("slack rod in touch", Part.SOFTNESS, 0.5, 1 / Part.WIDTH),
    /** From a stiff line to one of 0.1 mm with a shear modulus of 20 MPa. */
    GLUE("glue line", Part.SOFTNESS, 0.5, 1 / Part.WIDTH),
    /** From a rigid joint to 5 kN.m/rad, an estimate. */
    JOINT("joint and body", Part.SOFTNESS, 0.5, 1 / Part.WIDTH),
    /** Clamped up to 20 mm before the body joint. */
    CLAMP("heel and clamping place", Part.SOFTNESS, 0.5, 1 / Part.WIDTH),
    /** From straight grain to 1:15, which takes 6 % of the modulus (Hankinson). */
    RUN_OUT("grain run-out", Part.SOFTNESS, 0.5, 1 / Part.WIDTH),
    /** 8 % with 2.5 %: a centre load on a span of 14 depths. */
    TABLE("shear in table moduli", Part.SOFTNESS, 1, 0.315),
    /** 2 %. */
    MOISTURE("moisture of the wood", Part.SOFTNESS, 0, 1),
    /** 0.25 mm either way. */
    DEPTH("carved depth", Part.SOFTNESS, 0, 2 / Part.WIDTH),
    /** 0.15 mm either way. */
    BOARD("board thickness", Part.SOFTNESS, 0, 2 / Part.WIDTH),
    /** 2 %. */
    TENSION("string tension", Part.LOAD, 0, 1),
    /** 0.1 mm of action. */
    HEIGHTS("string heights", Part.LOAD, 0, 1),
    /** 5 % of the distance of a two-way rod's bars, or of a rod from the neutral axis. */
    ARM("arm of the rod", Part.ROD, 0, 1),
    /** 3 %: what all blanks differ from the necks carved from them. */
    BLANK("blank against neck", Part.READING, 0, 1),
    /** 3 %: modulus of a vibrating blank over that of a bent one, 1.05. */
    TAP("tap tone against bending", Part.READING, 0, 1),
    /** 1 %: softness that changes along the neck, which a weight sees in another way than the strings. */
    PLACE("softness along the neck", Part.READING, 0, 1),
    /** 2 %: the weights themselves. */
    WEIGHT("weights", Part.READING, 0, 1);

    /** What of an answer a cause changes. */
    enum Part {
        WOOD,
        SOFTNESS,
        LOAD,
        ROD,
        READING;

        /** Width of a uniform distribution over its standard deviation. */
        private static final double WIDTH = Math.sqrt(12);
    }

    static final int COUNT = values().length;

    private final String words;
    private final Part part;
    private final double mean;
    private final double deviation;

    Cause(String words, Part part, double mean, double deviation) {
        this.words = words;
        this.part = part;
        this.mean = mean;
        this.deviation = deviation;
    }

    Part part() {
        return part;
    }

    /** Its column in rows of all causes: they follow each other as they are written here. */
    @SuppressWarnings("EnumOrdinal")
    int column() {
        return ordinal();
    }

    /** Before any reading. */
    double mean() {
        return mean;
    }

    /** Standard deviation before any reading. */
    double deviation() {
        return deviation;
    }

    @Override
    public String toString() {
        return words;
    }
}
