package org.neckgeom.state;

import java.util.Objects;
import java.util.function.Function;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.shop.BenchUncertainty;

/** A kind of step whose spread a shop learns from its own readings. */
public enum ShopStep {
    /** One reading of a length, read again. */
    READING("reading", null),
    /** A cut at an unchanged setting of the fence. */
    CUT_SCATTER("cut scatter", null),
    /** A move of the fence. */
    FENCE_MOVE("fence move", null),
    /** An edge of the blank against its middle. */
    EDGE("edge", Workmanship::edge),
    /** Locating on channel or edge. */
    LOCATING("locating", Workmanship::locating),
    /** Cutting heel or taper. */
    CUTTING("cutting", Workmanship::cutting),
    /** Gluing the fingerboard. */
    GLUING("gluing", Workmanship::gluing),
    /** Fitting the body joint. */
    FITTING("fitting", Workmanship::fitting),
    /** A stop or a line along the neck. */
    STOPPING("stopping", Workmanship::stopping);

    private final String words;
    private final @Nullable Function<Workmanship, ErrorDistribution<Length>> spread;

    ShopStep(String words, @Nullable Function<Workmanship, ErrorDistribution<Length>> spread) {
        this.words = words;
        this.spread = spread;
    }

    /** What the shop's figure is without a log, one standard deviation in mm. */
    double usualMm(Workmanship work, BenchUncertainty bench) {
        return switch (this) {
            case READING -> bench.repeatabilityMm();
            case CUT_SCATTER -> bench.cutScatterMm();
            case FENCE_MOVE -> bench.moveScatterMm();
            default -> Math.sqrt(Objects.requireNonNull(spread).apply(work).libraryVariance());
        };
    }

    /** Returns it in words, such as {@code fence move}. */
    @Override
    public String toString() {
        return words;
    }
}
