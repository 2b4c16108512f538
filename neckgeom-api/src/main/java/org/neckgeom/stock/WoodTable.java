package org.neckgeom.stock;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.neckgeom.stock.WoodFigure.Kind;
import org.neckgeom.stock.WoodFigure.Standing;
import org.neckgeom.text.Numbers;

/**
 * The known woods. Sources: Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), and where 1999 is named the
 * edition before, FPL-GTR-113. Every figure carries its table; what was written down from memory is marked so.
 */
final class WoodTable {

    /** A wood before it is a {@link Wood}: its names and figures. Keeps the two classes from needing each other to load. */
    record Row(String name, String botanicalName, Map<Kind, WoodFigure> figures) {

        Row {
            EnumMap<Kind, WoodFigure> copy = new EnumMap<>(Kind.class);
            copy.putAll(figures);
            figures = Collections.unmodifiableMap(copy);
        }

        Row with(WoodFigure figure) {
            EnumMap<Kind, WoodFigure> copy = new EnumMap<>(Kind.class);
            copy.putAll(figures);
            copy.put(figure.kind(), figure);
            return new Row(name, botanicalName, copy);
        }

        Row with(double radialPercent, double tangentialPercent, String source, Standing standing) {
            Standing derived = standing == PRINTED ? Standing.DERIVED : standing;
            return with(new WoodFigure(Kind.RADIAL_SHRINKAGE, radialPercent, source, standing))
                    .with(new WoodFigure(Kind.TANGENTIAL_SHRINKAGE, tangentialPercent, source, standing))
                    .withChange(changeFrom(radialPercent), changeFrom(tangentialPercent), EQ_13_3, derived);
        }

        Row withChange(double radialRatio, double tangentialRatio, String source, Standing standing) {
            return with(new WoodFigure(Kind.RADIAL_CHANGE, radialRatio, source, standing))
                    .with(new WoodFigure(Kind.TANGENTIAL_CHANGE, tangentialRatio, source, standing));
        }

        /** Coefficients given, and the equivalent shrinkage. */
        Row withOwnChange(double radialRatio, double tangentialRatio, String source) {
            return withChange(radialRatio, tangentialRatio, source, Standing.OWN)
                    .with(new WoodFigure(Kind.RADIAL_SHRINKAGE, shrinkageFrom(radialRatio), EQ_13_3_BACK, Standing.OWN))
                    .with(new WoodFigure(
                            Kind.TANGENTIAL_SHRINKAGE, shrinkageFrom(tangentialRatio), EQ_13_3_BACK, Standing.OWN));
        }

        private static double shrinkageFrom(double changeRatio) {
            return 3000 / (1 / changeRatio + 20);
        }

        /** Wood Handbook (2010) Eq. 13-3 in the middle of 6 to 14 % moisture, fibre saturation at 30 %. */
        private static double changeFrom(double shrinkagePercent) {
            return 1 / (3000 / shrinkagePercent - 20);
        }
    }

    private static final String T_2 = "Wood Handbook (2010) ch. 2";
    private static final String T_4_3 = "Wood Handbook (2010) Table 4-3";
    private static final String T_4_4 = "Wood Handbook (2010) Table 4-4";
    private static final String T_5_3 = "Wood Handbook (2010) Table 5-3";
    private static final String T_5_5 = "Wood Handbook (2010) Table 5-5";
    private static final String T_4_5_OLD = "Wood Handbook (1999) Table 4-5";
    private static final String T_5_6 = "Wood Handbook (2010) Table 5-6";
    private static final String T_13_5 = "Wood Handbook (2010) Table 13-5";
    private static final String EQ_13_3 = "Wood Handbook (2010) Eq. 13-3 from shrinkage";
    private static final String EQ_13_3_BACK = "Wood Handbook (2010) Eq. 13-3 from change";
    private static final String NO_TABLE = "general wood data, in no handbook table";
    private static final Standing PRINTED = Standing.PRINTED;
    private static final Standing MEMORY = Standing.FROM_MEMORY;

    /** Average over species of clear straight-grained wood: 22 % for the modulus of elasticity. */
    static final WoodFigure USUAL_VARIATION = new WoodFigure(Kind.MODULUS_VARIATION, 22, T_5_6, MEMORY);

    static final Row WHITE_ASH = row("white ash", "Fraxinus americana")
            .with(seasoned(0.60, T_5_3, PRINTED))
            .with(modulus(12000, T_5_3, PRINTED))
            .with(strength(103, T_5_3, PRINTED))
            .with(4.9, 7.8, T_4_3, PRINTED)
            .withChange(0.00169, 0.00274, T_13_5, PRINTED);

    static final Row AMERICAN_BASSWOOD = row("American basswood", "Tilia americana")
            .with(seasoned(0.37, T_5_3, PRINTED))
            .with(modulus(10100, T_5_3, PRINTED))
            .with(strength(60, T_5_3, MEMORY))
            .with(6.6, 9.3, T_4_3, PRINTED)
            .withChange(0.00230, 0.00330, T_13_5, PRINTED);

    static final Row YELLOW_BIRCH = row("yellow birch", "Betula alleghaniensis")
            .with(seasoned(0.62, T_5_3, PRINTED))
            .with(modulus(13900, T_5_3, PRINTED))
            .with(strength(114, T_5_3, PRINTED))
            .with(7.3, 9.5, T_4_3, PRINTED)
            .withChange(0.00256, 0.00338, T_13_5, PRINTED);

    static final Row BUTTERNUT = row("butternut", "Juglans cinerea")
            .with(seasoned(0.38, T_5_3, PRINTED))
            .with(modulus(8100, T_5_3, PRINTED))
            .with(strength(56, T_5_3, MEMORY))
            .with(3.4, 6.4, T_4_3, PRINTED)
            .withChange(0.00116, 0.00223, T_13_5, PRINTED);

    static final Row BLACK_CHERRY = row("black cherry", "Prunus serotina")
            .with(seasoned(0.50, T_5_3, PRINTED))
            .with(modulus(10300, T_5_3, PRINTED))
            .with(strength(85, T_5_3, PRINTED))
            .with(3.7, 7.1, T_4_3, PRINTED)
            .withChange(0.00126, 0.00248, T_13_5, PRINTED);

    static final Row RED_MAPLE = row("red maple", "Acer rubrum")
            .with(seasoned(0.54, T_5_3, PRINTED))
            .with(modulus(11300, T_5_3, PRINTED))
            .with(strength(92, T_5_3, MEMORY))
            .with(4.0, 8.2, T_4_3, MEMORY)
            .withChange(0.00137, 0.00289, T_13_5, PRINTED);

    static final Row SUGAR_MAPLE = row("sugar maple", "Acer saccharum")
            .with(seasoned(0.63, T_5_3, PRINTED))
            .with(modulus(12600, T_5_3, PRINTED))
            .with(strength(109, T_5_3, PRINTED))
            .with(4.8, 9.9, T_4_3, PRINTED)
            .withChange(0.00165, 0.00353, T_13_5, PRINTED);

    static final Row BLACK_WALNUT = row("black walnut", "Juglans nigra")
            .with(seasoned(0.55, T_5_3, PRINTED))
            .with(modulus(11600, T_5_3, PRINTED))
            .with(strength(101, T_5_3, PRINTED))
            .with(5.5, 7.8, T_4_3, PRINTED)
            .withChange(0.00190, 0.00274, T_13_5, PRINTED);

    static final Row YELLOW_POPLAR = row("yellow-poplar", "Liriodendron tulipifera")
            .with(seasoned(0.42, T_5_3, PRINTED))
            .with(modulus(10900, T_5_3, PRINTED))
            .with(strength(70, T_5_3, PRINTED))
            .with(4.6, 8.2, T_4_3, PRINTED)
            .withChange(0.00158, 0.00289, T_13_5, MEMORY);

    static final Row SITKA_SPRUCE = row("Sitka spruce", "Picea sitchensis")
            .with(seasoned(0.40, T_5_3, MEMORY))
            .with(modulus(10800, T_5_3, MEMORY))
            .with(strength(70, T_5_3, MEMORY))
            .with(4.3, 7.5, T_4_3, MEMORY)
            .withChange(0.00148, 0.00263, T_13_5, MEMORY);

    // The printed coefficients of the next three do not follow from the printed shrinkage as all others do, and were
    // written down from memory; the ones kept here are derived from the shrinkage.
    static final Row TRUE_MAHOGANY = row("true mahogany", "Swietenia macrophylla")
            .with(green(0.45, T_4_5_OLD))
            .with(modulus(10300, T_4_5_OLD, PRINTED))
            .with(strength(79.3, T_4_5_OLD, PRINTED))
            .with(3.0, 4.1, T_4_4, PRINTED);

    static final Row AFRICAN_MAHOGANY = row("African mahogany", "Khaya spp.")
            .with(green(0.42, T_4_5_OLD))
            .with(modulus(9700, T_4_5_OLD, PRINTED))
            .with(strength(73.8, T_4_5_OLD, PRINTED))
            .with(2.5, 4.5, T_4_4, PRINTED);

    static final Row SPANISH_CEDAR = row("Spanish-cedar", "Cedrela spp.")
            .with(green(0.41, T_5_5))
            .with(modulus(9900, T_5_5, PRINTED))
            .with(strength(79.3, T_5_5, PRINTED))
            .with(4.2, 6.3, T_4_4, MEMORY);

    static final Row SAPELE = row("sapele", "Entandrophragma cylindricum")
            .with(greenFromMemory(0.55))
            .with(modulus(12500, T_5_5, MEMORY))
            .with(strength(105.5, T_5_5, MEMORY))
            .with(4.6, 7.4, T_4_4, MEMORY);

    // Density: middle of the printed range 752 to 897 kg/m3. The green-volume specific gravity 0.80 of Table 5-5 would
    // give 1030 kg/m3, outside the handbook's own description of the air-dried wood.
    static final Row BRAZILIAN_ROSEWOOD = row("Brazilian rosewood", "Dalbergia nigra")
            .with(new WoodFigure(Kind.DENSITY, 825, T_2 + ", middle of 752 to 897", Standing.DERIVED))
            .with(modulus(13000, T_5_5, MEMORY))
            .with(strength(131, T_5_5, MEMORY))
            .with(2.9, 4.6, T_4_4, MEMORY);

    static final Row INDIAN_ROSEWOOD = row("Indian rosewood", "Dalbergia latifolia")
            .with(new WoodFigure(Kind.DENSITY, 849, T_2, MEMORY))
            .with(modulus(12300, T_5_5, MEMORY))
            .with(strength(116.5, T_5_5, MEMORY))
            .with(2.7, 5.8, T_4_4, MEMORY);

    static final Row EAST_INDIAN_EBONY = row("East Indian ebony", "Diospyros spp.")
            .with(new WoodFigure(Kind.DENSITY, 1000, NO_TABLE, MEMORY))
            .with(modulus(14000, NO_TABLE, MEMORY))
            .with(5.4, 8.8, T_4_4, MEMORY);

    static final Row AFRICAN_EBONY = row("African ebony", "Diospyros spp.")
            .with(new WoodFigure(Kind.DENSITY, 1000, NO_TABLE, MEMORY))
            .with(modulus(16000, NO_TABLE, MEMORY))
            .with(9.2, 10.8, T_4_4, MEMORY);

    /** In alphabetical order of their names, letter case aside. */
    static final List<Row> ALL = List.of(
            AFRICAN_EBONY,
            AFRICAN_MAHOGANY,
            AMERICAN_BASSWOOD,
            BLACK_CHERRY,
            BLACK_WALNUT,
            BRAZILIAN_ROSEWOOD,
            BUTTERNUT,
            EAST_INDIAN_EBONY,
            INDIAN_ROSEWOOD,
            RED_MAPLE,
            SAPELE,
            SITKA_SPRUCE,
            SPANISH_CEDAR,
            SUGAR_MAPLE,
            TRUE_MAHOGANY,
            WHITE_ASH,
            YELLOW_BIRCH,
            YELLOW_POPLAR);

    /** Other names in use, each of which can mean one listed wood only. */
    static final Map<String, Row> OTHER_NAMES = Map.ofEntries(
            Map.entry("ash", WHITE_ASH),
            Map.entry("basswood", AMERICAN_BASSWOOD),
            Map.entry("birch", YELLOW_BIRCH),
            Map.entry("cherry", BLACK_CHERRY),
            Map.entry("hard maple", SUGAR_MAPLE),
            Map.entry("khaya", AFRICAN_MAHOGANY),
            Map.entry("mahogany", TRUE_MAHOGANY),
            Map.entry("poplar", YELLOW_POPLAR),
            Map.entry("rock maple", SUGAR_MAPLE),
            Map.entry("tulipwood", YELLOW_POPLAR),
            Map.entry("walnut", BLACK_WALNUT));

    private WoodTable() {}

    /** Returns a name as the look-up compares it: lower case, hyphens and runs of blanks as one blank. */
    static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }

    private static Row row(String name, String botanicalName) {
        return new Row(name, botanicalName, Map.of()).with(USUAL_VARIATION);
    }

    /** Density from the specific gravity on the volume at 12 % moisture: 1000 x 1.12 G. */
    private static WoodFigure seasoned(double gravity, String source, Standing standing) {
        String from = source + ", from specific gravity " + Numbers.fixed(gravity, 2);
        return new WoodFigure(Kind.DENSITY, 1120 * gravity, from, standing == PRINTED ? Standing.DERIVED : standing);
    }

    private static WoodFigure green(double gravity, String source) {
        return new WoodFigure(Kind.DENSITY, densityFromGreen(gravity), greenSource(gravity, source), Standing.DERIVED);
    }

    private static WoodFigure greenFromMemory(double gravity) {
        return new WoodFigure(Kind.DENSITY, densityFromGreen(gravity), greenSource(gravity, T_5_5), MEMORY);
    }

    /**
     * Density at 12 % moisture from the specific gravity on green volume: {@code G12 = G/(1 - 0.265 a G)} with
     * {@code a = (30 - 12)/30}, then {@code 1000 x 1.12 G12}. Wood Handbook (2010), chapter 4; from memory.
     */
    private static double densityFromGreen(double gravity) {
        return 1120 * gravity / (1 - 0.265 * 0.6 * gravity);
    }

    private static String greenSource(double gravity, String source) {
        return source + ", from " + Numbers.fixed(gravity, 2) + " on green volume";
    }

    private static WoodFigure strength(double megapascal, String source, Standing standing) {
        return new WoodFigure(Kind.BENDING_STRENGTH, megapascal, source, standing);
    }

    private static WoodFigure modulus(double megapascal, String source, Standing standing) {
        return new WoodFigure(Kind.MODULUS, megapascal, source, standing);
    }
}
