package org.neckgeom.strength;

import java.util.Objects;
import java.util.Optional;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What a change of weather does to a neck: fret ends, neck against board, rod in its channel. Immutable.
 *
 * <p>Estimate, as {@link Weather}: parts are taken to move freely.
 */
public final class NeckWeather implements SaysLengths<NeckWeather> {

    private final Weather weather;
    private final NeckDesign neck;

    private NeckWeather(Weather weather, NeckDesign neck) {
        this.weather = weather;
        this.neck = neck;
    }

    static NeckWeather of(Weather weather, NeckDesign neck) {
        NeckModel.boardWood(neck);
        return new NeckWeather(weather, neck);
    }

    private LengthStyle style() {
        return neck.style();
    }

    private SizeChange across(double mm, Wood wood) {
        return weather.across(style().amount(mm), wood);
    }

    /**
     * Returns the fret ends at the nut.
     *
     * @return against the fingerboard's edges there
     */
    public FretEnds fretEndsAtNut() {
        return FretEnds.of(across(2 * neck.halfWidthAtMm(0), NeckModel.boardWood(neck)));
    }

    /**
     * Returns the fret ends at the last fret.
     *
     * @return against the fingerboard's edges there
     */
    public FretEnds fretEndsAtLastFret() {
        double x = neck.scale().fretMm(neck.frets());
        return FretEnds.of(across(2 * neck.halfWidthAtMm(x), NeckModel.boardWood(neck)));
    }

    /**
     * Returns the change of the neck's width at the body joint, under the fingerboard.
     *
     * @return the change
     */
    public SizeChange neckAtBody() {
        return across(2 * neck.halfWidthAtMm(neck.bodyJointMm()), neck.wood());
    }

    /**
     * Returns how the rod fits its channel, if there is one.
     *
     * @return the play before and after, or nothing
     */
    public Optional<SlotFit> slotFit() {
        return neck.channel()
                .map(channel -> SlotFit.of(
                        across(channel.widthMm(), neck.wood()), channel.rod().widthMm()));
    }

    @Override
    public NeckWeather in(LengthStyle other) {
        return new NeckWeather(weather, neck.in(other));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckWeather other && weather.equals(other.weather) && neck.equals(other.neck);
    }

    @Override
    public int hashCode() {
        return Objects.hash(weather, neck);
    }

    /** Returns the change of moisture, then what it does to board, neck and channel. */
    @Override
    public String toString() {
        Report report = Report.titled(neck.name() + ", moisture "
                        + Numbers.fixed(weather.before().moisturePercent(), 1) + " % to "
                        + Numbers.fixed(weather.after().moisturePercent(), 1) + " %")
                .row("fret ends at nut", fretEndsAtNut().sideText() + " on each side")
                .row("at the last fret", fretEndsAtLastFret().sideText() + " on each side")
                .row("neck at the body", neckAtBody().likely() + " in width");
        slotFit().ifPresent(fit -> report.row("rod's play", fit.likely() + ": " + fit.fit()));
        return report.row("rings", "not known: any way they can lie")
                .note("Estimate (Wood Handbook 2010, Eq. 4-5 and 13-3): balance before and after, bare wood,")
                .note("parts free to move.")
                .toString();
    }
}
