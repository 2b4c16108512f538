package org.neckgeom.budget;

/** Chooses the way in which the distribution of a sum is best computed. */
final class ExactLaws {

    private ExactLaws() {}

    static ExactLaw of(Parts parts) {
        ChainPlan plan = ChainPlan.of(parts);
        if (parts.arcsines.length == 0 || plan.isCheap()) {
            return new ChainLaw(parts, plan);
        }
        // One arcsine over a law that is quick by itself, or over another one alone; more would multiply the work.
        return parts.arcsines.length == 1 || parts.isArcsinePair()
                ? overArcsine(parts)
                : new ChainLaw(parts, ChainPlan.cut(parts));
    }

    /** The largest arcsine over the law of all others. */
    static ArcsineLaw overArcsine(Parts parts) {
        Parts others = parts.withoutLargestArcsine();
        ExactLaw rest = others.variance() > 0.0 ? of(others) : null;
        ExactLaw turned = parts.isSymmetric() || rest == null ? rest : of(others.mirrored());
        return new ArcsineLaw(parts, rest, turned);
    }
}
