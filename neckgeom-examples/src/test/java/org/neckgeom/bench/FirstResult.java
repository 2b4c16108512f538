package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.mm;

import javax.measure.MetricPrefix;
import org.neckgeom.channel.Centring;
import org.neckgeom.shop.TrialCut;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** What a fresh JVM does to print one centring: with amounts of our own, with Indriya's quantities, or nothing at all. */
final class FirstResult {

    private FirstResult() {}

    /**
     * Prints the move for two walls.
     *
     * @param args {@code own}, {@code foreign} or {@code nothing}
     */
    public static void main(String[] args) {
        TrialCut cut = switch (args[0]) {
            case "own" -> TrialCut.walls(mm(29.84), mm(31.26));
            case "foreign" -> Foreign.cut();
            default -> null;
        };
        System.out.println(cut == null ? "" : Centring.of(cut).move());
    }

    /** Apart, so that the JVM does not look for Indriya's classes where they are not wanted. */
    private static final class Foreign {

        static TrialCut cut() {
            return TrialCut.walls(
                    Quantities.getQuantity(29.84, MetricPrefix.MILLI(Units.METRE)),
                    Quantities.getQuantity(31.26, MetricPrefix.MILLI(Units.METRE)));
        }
    }
}
