package org.neckgeom.plan;

import java.util.Optional;
import java.util.function.Supplier;
import org.neckgeom.fault.Fault;
import org.neckgeom.kernel.Once;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.strength.NeckWeather;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.StringLoad;

/** What strings, rod and air do to the neck as it is now. */
final class StrengthStage {

    private final Inputs job;
    private final MeasuredStage made;
    private final Supplier<WoodAt> thinnest = new Once<>(this::thinnestOnTheMiddle);
    private final Supplier<Attempt<Relief>> relief = new Once<>(() -> Attempt.at(this::underTheStrings));
    private final Supplier<Attempt<NeckWeather>> weather = new Once<>(() -> Attempt.at(this::inTheWorstAir));

    StrengthStage(Inputs job, MeasuredStage made) {
        this.job = job;
        this.made = made;
    }

    /** Where least wood is left under a channel in the middle. */
    WoodAt thinnest() {
        return thinnest.get();
    }

    private WoodAt thinnestOnTheMiddle() {
        return FloorThickness.under(made.design()).least();
    }

    /** Whether wood and strings are known. */
    boolean isKnown() {
        return job.neck().isReadyForLoad();
    }

    /** Bow under the strings and what the rod can do; nothing where wood or strings are not known, or no wood is left. */
    Optional<Relief> relief() {
        return relief.get().answer();
    }

    private Optional<Relief> underTheStrings() {
        if (!isKnown() || !(thinnest().woodMm() > 0)) {
            return Optional.empty();
        }
        Relief relief = Relief.of(made.design()).knowing(job.measured().stiffness());
        relief.underStrings(); // has no answer where a bar is through the back
        return Optional.of(relief);
    }

    StringLoad load() {
        return StringLoad.of(job.neck());
    }

    /** What the worst air changes; nothing where wood or strings are not known. */
    Optional<NeckWeather> weather() {
        return weather.get().answer();
    }

    private Optional<NeckWeather> inTheWorstAir() {
        if (!isKnown()) {
            return Optional.empty();
        }
        NeckWeather then =
                job.weather().on(made.design()).knowing(job.measured().stiffness());
        then.slotFit(); // asks for the wood's shrinkage
        return Optional.of(then);
    }

    /** What of load and air has no answer; nothing where both have. */
    Optional<Fault> unanswered() {
        return relief.get().why().or(() -> weather.get().why());
    }
}
