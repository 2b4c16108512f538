package org.neckgeom.plan;

import java.util.Optional;
import java.util.function.Supplier;
import org.neckgeom.fault.Fault;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.strength.NeckWeather;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.RodTurns;
import org.neckgeom.strength.StringLoad;

/** What strings, rod and air do to the neck as it is now. */
final class StrengthStage {

    private final Inputs job;
    private final MeasuredStage made;
    private final Supplier<WoodAt> thinnest = new Once<>(this::thinnestOnTheMiddle);
    private final Supplier<Attempt<Relief>> relief = new Once<>(() -> Attempt.at(this::underTheStrings));
    private final Supplier<Optional<RodTurns>> turns = new Once<>(this::turned);
    private final Supplier<Attempt<NeckWeather>> weather = new Once<>(() -> Attempt.at(this::inTheWorstAir));

    StrengthStage(Inputs job, MeasuredStage made) {
        this.job = job;
        this.made = made;
    }

    /** Where least wood is left under a channel in the middle. */
    WoodAt thinnest() {
        return thinnest.get();
    }

    /** Of the back as carved, or of the straight one through what was read of it, by which a beam is bent. */
    private WoodAt thinnestOnTheMiddle() {
        WoodAt carved = FloorThickness.under(made.channel(), made.back()).least();
        WoodAt straight = FloorThickness.under(made.design()).least();
        return carved.woodMm() < straight.woodMm() ? carved : straight;
    }

    /** Whether wood and strings are known. */
    boolean isKnown() {
        return job.neck().isReadyForLoad();
    }

    /** Bow under the strings and what the rod can do; nothing where wood or strings are not known, or no wood is left. */
    Optional<Relief> relief() {
        return relief.get().answer();
    }

    /** How far to turn the rod for the relief that is wanted; nothing where its thread or the neck's relief is not known. */
    Optional<RodTurns> rodTurns() {
        return turns.get();
    }

    private Optional<RodTurns> turned() {
        return relief().flatMap(strung -> job.channel()
                .rod()
                .flatMap(TrussRod::threadPitch)
                .map(pitch -> strung.rodTurnsFor(job.relief(), pitch)));
    }

    /** Relief by the woods' tables alone: of two necks, of which one was read, these can be compared. */
    Optional<Relief> byTheTables() {
        return Attempt.at(this::strung).answer();
    }

    private Optional<Relief> strung() {
        return isKnown() && thinnest().woodMm() > 0 ? Optional.of(Relief.of(made.design())) : Optional.empty();
    }

    private Optional<Relief> underTheStrings() {
        Optional<Relief> relief =
                strung().map(neck -> neck.knowing(job.measured().stiffness()));
        relief.ifPresent(Relief::underStrings); // has no answer where a bar is through the back
        return relief;
    }

    StringLoad load() {
        return StringLoad.of(made.design());
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
