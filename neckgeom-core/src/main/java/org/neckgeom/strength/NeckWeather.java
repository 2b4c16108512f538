package org.neckgeom.strength;

import java.util.Optional;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.stock.Wood;

/**
 * The effect of a change of air on a neck: fret ends, neck against board, rod in its channel. Immutable.
 *
 * <p>Estimate, as {@link Weather}: parts are taken to move freely.
 */
public final class NeckWeather extends ValueAnswer {

    private static final Form<NeckWeather> FORM = Form.<NeckWeather>of("neck-weather")
            .fact("neck", Kind.NAME, "its name", x -> x.neck.name())
            .fact("moisture", Moistures.KIND, "of the wood", x -> x.moistures)
            .fact("fretEndsAtNut", FretSprout.SIDE, "on each side", NeckWeather::fretEndsAtNut)
            .fact("fretEndsAtLastFret", FretSprout.SIDE, "on each side", NeckWeather::fretEndsAtLastFret)
            .fact(
                    "neckAtBody",
                    Likely.KIND,
                    "change of its width there",
                    x -> x.neckAtBody().likely())
            .factIfAny(
                    "rodPlay", Likely.KIND, "channel less rod", x -> x.slotFit().map(SlotFit::likely))
            .factIfAny(
                    "rodFit",
                    Kind.code(SlotFit.Fit.class),
                    "of the rod",
                    x -> x.slotFit().map(SlotFit::fit))
            .finds("neck-weather", "{neck}, moisture {moisture}")
            .line("fretEndsAtNut", "fret ends at nut", "{fretEndsAtNut} on each side")
            .line("fretEndsAtLastFret", "at the last fret", "{fretEndsAtLastFret} on each side")
            .line("neckAtBody", "neck at the body", "{neckAtBody} in width")
            .line("rodPlay", "rod clearance", "{rodPlay}: {rodFit}")
            .line("rings", "rings", "not known: any way they can lie")
            .note("estimate", "Estimate (Wood Handbook 2010, Eq. 4-5 and 13-3): balance before and after, bare wood,")
            .note("estimate", "parts free to move.");

    private final Moistures moistures;
    private final Neck neck;

    NeckWeather(Moistures moistures, Neck neck) {
        super(FORM, neck.style());
        NeckModel.boardWood(neck);
        this.moistures = moistures;
        this.neck = neck;
    }

    private SizeChange across(double mm, Wood wood) {
        return SizeChange.of(moistures, mm, wood, style());
    }

    /** {@return the fret ends at the nut; against the fingerboard's edges there} */
    public FretSprout fretEndsAtNut() {
        return new FretSprout(across(2 * neck.halfWidthAtMm(0), NeckModel.boardWood(neck)));
    }

    /** {@return the fret ends at the last fret; against the fingerboard's edges there} */
    public FretSprout fretEndsAtLastFret() {
        double x = neck.scale().fretMm(neck.frets());
        return new FretSprout(across(2 * neck.halfWidthAtMm(x), NeckModel.boardWood(neck)));
    }

    /** {@return the change of the neck's width at the body joint, under the fingerboard} */
    public SizeChange neckAtBody() {
        return across(2 * neck.halfWidthAtMm(neck.bodyJointMm()), NeckModel.wood(neck));
    }

    /** {@return how the rod fits its channel, if there is one; the side clearance before and after, or nothing} */
    public Optional<SlotFit> slotFit() {
        return neck.channel()
                .map(channel -> new SlotFit(
                        across(channel.widthMm(), NeckModel.wood(neck)),
                        channel.reinforcement().widthMm()));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {moistures, neck};
    }
}
