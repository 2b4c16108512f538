package org.neckgeom.plan;

/** What a plan's checks compare, as tests ask for it. */
public final class CheckValues {

    private CheckValues() {}

    /**
     * {@return what a check of a plan compares with its limit}
     *
     * @throws java.util.NoSuchElementException when the plan has no such check, or nothing is compared
     */
    public static double valueOf(Plan plan, CheckCode code) {
        return plan.check(code).orElseThrow().finding().value().orElseThrow().libraryValue();
    }
}
