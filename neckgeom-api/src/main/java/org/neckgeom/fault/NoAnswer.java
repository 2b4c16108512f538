package org.neckgeom.fault;

/** Thrown where valid inputs have no answer, such as the radius of a flat floor. */
public final class NoAnswer extends ArithmeticException {

    private static final long serialVersionUID = 1;

    /** Why there is none. */
    private final Fault fault;

    private NoAnswer(Fault fault) {
        super(fault.must());
        this.fault = fault;
    }

    /**
     * {@return why there is no answer; to be thrown}
     *
     * @param path what was asked for, such as {@code radius}
     * @param rule a code, such as {@code flat}
     * @param sentence why there is none
     */
    public static NoAnswer because(String path, String rule, String sentence) {
        return new NoAnswer(new Fault(path, rule, sentence, ""));
    }

    /** {@return why there is no answer} */
    public Fault fault() {
        return fault;
    }
}
