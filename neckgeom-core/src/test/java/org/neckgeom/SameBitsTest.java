package org.neckgeom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.FretTable;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.budget.Allocation;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Propagation;
import org.neckgeom.budget.ResultDistribution;
import org.neckgeom.budget.Simulated;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.shape.Spot;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.solid.BackCurve;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.state.NeckErrors;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.Sections;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.strength.Weather;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * Answers have the same bits on every JDK and processor, compiled or interpreted. The table holds the bits one JDK gave;
 * it says nothing about their being right, which is for the other tests. After a wanted change run with
 * {@code -Dneckgeom.approve=true} and look at the change.
 */
class SameBitsTest {

    private static final Path TABLE = Path.of("src", "test", "resources", "bits", "answers.csv");
    private static final int DEPTH = 2;

    private final Map<String, String> rows = new LinkedHashMap<>();

    @Test
    void answers_haveTheBitsOfTheTable() throws IOException {
        geometry();
        strength();
        laws();
        simulations();
        setUp();

        if (Boolean.getBoolean("neckgeom.approve")) {
            List<String> lines = new ArrayList<>();
            lines.add(
                    "# Raw bits of answers: Double.doubleToLongBits in hexadecimal. Made by SameBitsTest on OpenJDK 17.0.15,");
            lines.add(
                    "# x86-64; checked on 17 and 25, with -Xint, -XX:TieredStopAtLevel=1, -XX:-UseFMA. Tolerance: none.");
            lines.add("answer,bits");
            rows.forEach((name, bits) -> lines.add(name + "," + bits));
            Files.createDirectories(TABLE.getParent());
            Files.write(TABLE, lines);
        }
        Assumptions.assumeFalse(Boolean.getBoolean("neckgeom.approve"), "approved anew: look at the table");
        Map<String, String> table = new LinkedHashMap<>();
        for (String line : Files.readAllLines(TABLE)) {
            if (!line.startsWith("#") && !line.equals("answer,bits")) {
                int comma = line.lastIndexOf(',');
                table.put(line.substring(0, comma), line.substring(comma + 1));
            }
        }
        assertThat(table).hasSizeGreaterThan(500);
        // An answer that the table does not know yet is none of its business.
        rows.keySet().retainAll(table.keySet());
        assertThat(rows).isEqualTo(table);
    }

    private static Neck neck() {
        return Neck.named("bench")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)).radius(mm(400)).wood(Wood.INDIAN_ROSEWOOD))
                .back(BackProfile.between(mm(14.5), mm(16.5)).asymmetric(2.2, 1.9))
                .bodyAtFret(14)
                .wood(Wood.BLACK_WALNUT)
                .channel(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                        .startingAt(mm(3)))
                .head(Head.angled(deg(13)).width(mm(76)).length(mm(180)).thickness(mm(15)))
                .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                        .doubled()
                        .tensions(newton(95), newton(95), newton(90), newton(90)));
    }

    private void geometry() {
        BackSet set = BackSet.of(
                Scale.of(mm(560)),
                14,
                NeckSet.saddle(mm(15.2)).atNut(mm(0.4)).action(mm(2.0)).fretPlane(mm(7.1)));
        walk("frets", FretTable.of(Scale.of(mm(647.7)), 24).frets());
        walk("frets of 19", FretTable.of(Scale.of(mm(560)).divisions(19), 30).frets());
        FannedFrets fan = FannedFrets.of(Scale.of(mm(686)), Scale.of(mm(648)), OuterStrings.of(mm(38.1), mm(57)), 7);
        for (int fret = 0; fret <= 24; fret++) {
            walk("fanned " + fret, List.of(fan.onBass(fret), fan.onTreble(fret), fan.slant(fret)));
        }
        Scarf scarf = Scarf.of(deg(13), mm(20), mm(15));
        walk("scarf in the head", ScarfJoint.inTheHead(scarf));
        walk("scarf in the shaft", ScarfJoint.inTheShaft(scarf));
        ScarfJoint slanted = ScarfJoint.inTheShaft(scarf.kerf(mm(1.8)).nutSlant(deg(6)));
        walk("slanted scarf", slanted);
        walk("slanted scarf's board", slanted.keeping(mm(60)).board(mm(560), mm(185)));
        walk("square scarf's board", ScarfJoint.inTheHead(scarf.kerf(mm(1.8))).board(mm(560), mm(185)));
        walk("neck set", set);
        walk("wedge", set.wedge(mm(78), mm(1.3)));
        walk("cheek", set.cheek(mm(54), mm(1.3)));
        walk("corners", set.correction(Heel.of(mm(78), mm(54)), mm(1.3), mm(0.5)));
        walk(
                "dome",
                BackSet.of(
                                Scale.of(mm(560)),
                                14,
                                set.heights().dome(Dome.of(mm(9000)).pole(mm(240), mm(30))))
                        .angle());
        for (Spot spot :
                BackCurve.of(mm(40), mm(15)).powers(2.5, 1.5).outline(mm(0.3)).spots()) {
            add("back curve " + rows.size(), spot.toMm());
        }
        add("wood", FloorThickness.under(neck()).alongMm(60));
        walk("least wood", FloorThickness.under(neck()).least());
        walk(
                "chance of wood",
                FloorThickness.under(neck()).probabilityBelow(mm(4.5), ErrorDistribution.normal(mm(0.3))));
    }

    private void strength() {
        Relief relief = Relief.of(neck());
        walk("load", StringLoad.of(neck()));
        walk("sections", Sections.of(neck()).all());
        walk("relief", relief.underStrings());
        walk("rod", relief.rodForceFor(mm(0.1)));
        walk("travel", relief.rodTravel());
        walk("stress", relief.stress());
        walk(
                "weather",
                Weather.from(percent(45), celsius(21))
                        .to(percent(25), celsius(18))
                        .on(neck()));
    }

    private void laws() {
        for (double z = -8; z <= 8; z += 0.5) {
            add("normal " + z, NormalLaw.cdf(z), NormalLaw.upperTail(z), NormalLaw.density(z), StudentLaw.cdf(z, 4));
        }
        Budget<?> budget = budget();
        law("mixed", budget().distribution());
        law("arcsines", arcsines().distribution());
        walk("shares", budget.shares());
        walk("yield", budget().yield(Limits.within(mm(0.2))));
        walk("allocation", Allocation.of(budget(), Limits.within(mm(0.1)), percent(95)));
        NeckErrors errors = NeckErrors.of(neck());
        walk(
                "string line",
                errors.state().known("string line", errors.stringLine()).interval(0.95));
        walk(
                "projection",
                errors.state().known("projection", errors.projection()).interval(0.95));
    }

    private static Budget<javax.measure.quantity.Length> budget() {
        return Budget.named("slot")
                .with("fence", ErrorDistribution.rectangular(mm(0.05)))
                .with("edge", ErrorDistribution.triangular(mm(0.07)))
                .with("stop", ErrorDistribution.trapezoidal(mm(0.1), mm(0.03)))
                .with("creep", ErrorDistribution.arcsine(mm(0.02)))
                .with("reading", ErrorDistribution.normal(mm(0.02)))
                .with("shift", ErrorDistribution.bias(mm(0.01)));
    }

    private static Budget<javax.measure.quantity.Length> arcsines() {
        return Budget.named("turning")
                .with("one", ErrorDistribution.arcsine(mm(0.05)))
                .with("two", ErrorDistribution.normal(mm(0.02)))
                .with("readings", ErrorDistribution.samples(List.of(mm(-0.02), mm(0), mm(0.01), mm(0.03))));
    }

    private void law(String name, ResultDistribution<javax.measure.quantity.Length> law) {
        for (int p = 1; p < 100; p += 7) {
            add(name + " quantile " + p, law.quantile(percent(p)).libraryValue());
        }
        for (double y = -0.2; y <= 0.2; y += 0.025) {
            Amount<javax.measure.quantity.Length> at = mm(y);
            add(name + " at " + at, law.probabilityUpTo(at), law.probabilityAbove(at), law.densityPerLibraryUnit(at));
        }
        walk(name + " interval", law.shortestInterval(percent(95)));
    }

    private void simulations() {
        for (int threads : new int[] {1, 2, 5}) {
            Simulated<?> trials =
                    budget().simulate(20_260_101).withThreads(threads).trials(50_000);
            walk("trials", trials);
            walk("trials interval", trials.interval(percent(95)));
            walk("trials shortest", trials.shortestInterval(percent(95)));
        }
        walk("settled", arcsines().simulate(7).adaptive(percent(95), 1));
        Propagation<?> angle = Propagation.to("angle", ShopUnit.DEGREE)
                .input("rise", mm(12), ErrorDistribution.normal(mm(0.1)))
                .input("run", mm(200), ErrorDistribution.rectangular(mm(1)))
                .throughDual(x -> x[0].atan2(x[1]));
        add("derivatives", angle.derivatives());
        add("differences", angle.differences());
        walk("propagated", angle.firstOrder());
        walk("propagated by trials", angle.simulate(3).trials(20_000));
    }

    private void setUp() {
        TrialCut cut =
                TrialCut.walls(mm(29.84), mm(31.26)).slot(mm(6)).piece(mm(67.1)).repeatability(mm(0.02));
        walk("centring", Centring.of(cut));
        CentringRounds rounds = CentringRounds.of(cut).fenceMoved(FenceMove.away(mm(0.7)));
        walk("rounds", rounds);
        walk("next", rounds.next(mm(0.05)));
        walk("chance", rounds.place());
        walk("verdict", Centring.of(cut).verdict(Limits.within(mm(0.1))));
    }

    private void add(String name, double... values) {
        for (int i = 0; i < values.length; i++) {
            String row = (values.length == 1 ? name : name + " " + i).replace(',', ';');
            String bits = Long.toHexString(Double.doubleToLongBits(values[i]));
            // The same simulation on more threads comes by again, and must not differ.
            assertThat(rows.getOrDefault(row, bits)).as(row).isEqualTo(bits);
            rows.put(row, bits);
        }
    }

    private void walk(String name, Object value) {
        walk(name, value, DEPTH);
    }

    private void walk(String name, Object value, int depth) {
        if (value instanceof Double number) {
            add(name, number);
        } else if (value instanceof double[] numbers) {
            add(name, numbers);
        } else if (value instanceof Amount<?> amount) {
            add(name, amount.libraryValue());
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(there -> walk(name, there, depth));
        } else if (value instanceof Collection<?> list) {
            int i = 0;
            for (Object element : list) {
                walk(name + " " + i++, element, depth);
            }
        } else if (value instanceof LengthStyle) {
            return; // how an answer is printed is no answer
        } else if (depth > 0 && value != null && value.getClass().getName().startsWith("org.neckgeom.")) {
            for (Method noun : PublicTypes.methods(value.getClass())) {
                if (noun.getParameterCount() == 0 && PublicTypes.isPublic(value.getClass())) {
                    walk(name + " " + noun.getName(), answer(noun, value), depth - 1);
                }
            }
        }
    }

    private static Object answer(Method noun, Object value) {
        try {
            return noun.invoke(value);
        } catch (ReflectiveOperationException refused) {
            return null; // asked for what was not told
        }
    }
}
