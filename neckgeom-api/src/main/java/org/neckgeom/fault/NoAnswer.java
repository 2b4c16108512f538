package org.neckgeom.fault;

/** Good inputs to a question that has no answer for them, such as the radius of a flat floor. */
public final class NoAnswer extends ArithmeticException {

    private static final long serialVersionUID = 1;

    /** Why there is none. */
    private final Fault fault;

    private NoAnswer(Fault fault) {
        super(fault.must());
        this.fault = fault;
    }

    /**
     * Returns why there is no answer.
     *
     * @param path what was asked for, such as {@code radius}
     * @param rule a code, such as {@code flat}
     * @param sentence why there is none
     * @return to be thrown
     */
    public static NoAnswer because(String path, String rule, String sentence) {
        return new NoAnswer(new Fault(path, rule, sentence, ""));
    }

    /**
     * Returns why there is no answer.
     *
     * @return the fault
     */
    public Fault fault() {
        return fault;
    }
}
