package org.neckgeom.strength;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.Torque;

/**
 * How far to turn a truss rod for a wanted relief, from where it begins to bite, which way, and at which torque to stop, such as
 * {@code 0.3 to 0.6 turns, tighten}. Immutable.
 *
 * <p>n turns of pitch P after slack: a two-way rod {@code F = n P/(L (1/EA1 + 1/EA2) + c^2 int dx/(E I) + k)}, a single-action rod
 * {@code F = n P/(L/EA + int (a^2/(E I) + 1/(EA of the neck)) dx + k)}, k the give of the seats, 0 to 0.2 mm for 1000 N: an
 * estimate. Where a turn has been read, {@link #turned}, relief falls in proportion from there, with the readings' uncertainty, and k
 * follows: {@link #seats}. Left-and-right threads count twice.
 * Torque {@code F (P/(2 pi) + mu d2/(2 cos 30 deg) + mu r)}, mu 0.10 to 0.25: friction decides it, so that it does not show the
 * force; the torque stop is the rod's limit at the least friction.
 */
public final class RodTurns extends ValueAnswer {

    /** Which way the adjuster is turned. */
    public enum Way {
        /** Against the strings: the neck becomes straighter. */
        TIGHTEN("tighten: against the strings"),
        /** With the strings: a two-way rod pushes the neck forward. */
        PUSH("turn the other way: the rod pushes the neck forward"),
        /** Leave it slack. */
        LEAVE("leave the rod slack");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /** Give of the seats, mm for each newton, at most: an estimate. */
    private static final double MOST_GIVE = 2e-4;

    private static final double LEAST_FRICTION = 0.10;
    private static final double MOST_FRICTION = 0.25;

    /** Radius at which the adjuster rubs, over the thread's: a nut's face. */
    private static final double NUT_RADIUS = 0.7;

    private static final Form<RodTurns> FORM = Form.<RodTurns>of("rod-turns")
            .fact("wanted", Kind.MM, "relief, positive forward", x -> x.wanted)
            .fact("way", Kind.code(Way.class), "of the adjuster", RodTurns::way)
            .fact("reach", Kind.code(RodForce.Reach.class), "of the rod", x -> x.force.reach())
            .fact(
                    "fewest",
                    Kind.RATIO,
                    "turns, seats without give; lower end of 95 % where one was read",
                    x -> x.fewest)
            .fact("most", Kind.RATIO, "turns, seats with 0.2 mm of give for 1000 N; or the upper end", x -> x.most)
            .fact("isFitted", Kind.FLAG, "whether turns of this rod have been read", x -> x.read != null)
            .fact("turns", Kind.RATIO, "turns; the middle of both", x -> (x.fewest + x.most) / 2)
            .finds("none", x -> Double.isNaN(x.most), "Rod for {wanted:brief} of relief: {reach}")
            .finds("leave", x -> x.way() == Way.LEAVE, "Rod for {wanted:brief} of relief: {way}")
            .finds(
                    "fitted",
                    x -> x.read != null,
                    "Rod for {wanted:brief} of relief: {turns:2} turns (95 %: {fewest:2} to {most:2}), {way}")
            .finds("turns", "Rod for {wanted:brief} of relief: {fewest:2} to {most:2} turns, {way}")
            .row("force", "force", RodForce.IN_ROW, "for the wanted relief", x -> x.force)
            .fact(
                    "stop",
                    Kind.libraryValue(ShopUnit.NEWTON_METRE),
                    "torque at the rod's limit, least friction",
                    x -> x.stop)
            .line("stop", "torque stop", x -> x.stop > 0, "{stop:1}; it does not show the force")
            .note(
                    "from-slack",
                    x -> x.read == null,
                    "Turns count from where the rod begins to bite. Turn half, read, then ask again with .turned(...).")
            .note(
                    "from-slack",
                    x -> x.read != null,
                    "Turns count from where the rod begins to bite, as they were read.");

    private final StrungNeck question;
    private final double wanted;
    private final double pitch;
    private final @Nullable RodTurned read;
    private final RodForce force;
    private final double fewest;
    private final double most;
    private final double stop;

    static RodTurns of(StrungNeck question, Quantity<Length> wanted, Quantity<Length> pitch) {
        return new RodTurns(
                question,
                LibraryUnits.mm(wanted, "relief wanted"),
                LibraryUnits.mmPositive(pitch, "pitch of the rod's thread"),
                RodForce.of(question, wanted));
    }

    private RodTurns(StrungNeck question, double wanted, double pitch, RodForce force) {
        super(FORM, force.style());
        this.question = question;
        this.wanted = wanted;
        this.pitch = pitch;
        this.read = question.readings().rod().orElse(null);
        this.force = force;
        if (read == null) {
            double newton = Math.abs(force.force().map(Amount::libraryValue).orElse(Double.NaN));
            double own = RodGive.of(question);
            this.fewest = newton * own / pitch;
            this.most = newton * (own + MOST_GIVE) / pitch;
        } else {
            double turns = question.hasRod() ? read.turns() * Math.abs(wish(read)) / read.movedMm() : Double.NaN;
            this.fewest = turns * StrictMath.exp(-ModulusSpread.K95 * read.uncertainty());
            this.most = turns * StrictMath.exp(ModulusSpread.K95 * read.uncertainty());
        }
        this.stop = torque(question.limit(), RodGive.threadMm(question), LEAST_FRICTION);
    }

    /** Torque for a force in a metric thread of this diameter, N mm. */
    private double torque(double newton, double diameter, double friction) {
        return torque(newton, pitch, diameter - 0.6495 * pitch, NUT_RADIUS * diameter, friction);
    }

    static double torque(double newton, double pitch, double flank, double radius, double friction) {
        return newton
                * (pitch / (2 * Math.PI) + friction * flank / (2 * StrictMath.cos(Math.PI / 6)) + friction * radius);
    }

    /**
     * {@return this answer after one turn has shown how far it goes: relief falls in proportion to the turns}
     *
     * @param turns from where the rod began to bite, more than 0
     * @param before relief at pitch with the rod slack
     * @param after relief at pitch after those turns
     * @throws IllegalArgumentException if the relief did not move the way the rod pulls
     */
    public RodTurns turned(double turns, Quantity<Length> before, Quantity<Length> after) {
        StrungNeck more = question.knowing(question.readings().rod(RodTurned.by(turns, before, after)));
        return new RodTurns(more, wanted, pitch, RodForce.of(more, style().amount(wanted)));
    }

    /** {@return what the rod's seats give for 1000 N, as the turns read have it; 0 or more, nothing where none were read} */
    public Optional<Amount<Length>> seats() {
        return Optional.ofNullable(read).map(turned -> {
            double own = RodGive.of(question);
            double all = turned.turns() * pitch * RodGive.reliefPerNewton(question) / turned.movedMm();
            return style().amount(1000 * Math.max(0, all - own));
        });
    }

    /** How much less relief is wanted than with the rod slack. */
    private double wish(RodTurned turned) {
        return turned.beforeMm() - wanted;
    }

    /** {@return which way to turn the adjuster} */
    public Way way() {
        double newton = read == null ? force.force().map(Amount::libraryValue).orElse(0.0) : wish(read);
        if (newton == 0 || newton < question.leastForce()) {
            return Way.LEAVE;
        }
        return newton > 0 ? Way.TIGHTEN : Way.PUSH;
    }

    /** {@return the fewest turns, where the seats do not give; nothing where no force leaves the wanted relief} */
    public OptionalDouble fewestTurns() {
        return turns(fewest);
    }

    /** {@return the most turns, where the seats give 0.2 mm for 1000 N; nothing where no force leaves the wanted relief} */
    public OptionalDouble mostTurns() {
        return turns(most);
    }

    private static OptionalDouble turns(double turns) {
        return Double.isNaN(turns) ? OptionalDouble.empty() : OptionalDouble.of(turns);
    }

    /** {@return the force for the wanted relief} */
    public RodForce force() {
        return force;
    }

    /** {@return the torque at which to stop: that of the rod's limit with the least friction} */
    public Amount<Torque> torqueStop() {
        return Amount.ofLibrary(stop, ShopUnit.NEWTON_METRE);
    }

    /** {@return the greatest torque that the wanted relief can take, with the most friction} */
    public Amount<Torque> mostTorque() {
        double newton = Math.abs(force.force().map(Amount::libraryValue).orElse(0.0));
        return Amount.ofLibrary(torque(newton, RodGive.threadMm(question), MOST_FRICTION), ShopUnit.NEWTON_METRE);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {question, wanted, pitch};
    }
}
