package org.neckgeom.stock;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.stock.WoodFigure.Kind;
import org.neckgeom.stock.WoodFigure.Standing;
import org.neckgeom.stock.WoodTable.Row;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.QuantityType;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Nearest;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.MassDensity;
import org.neckgeom.units.ShopUnit;

/**
 * A wood with its published properties: density, modulus of elasticity along the grain, bending strength, shrinkage and
 * change of size with moisture, such as {@code Wood.BLACK_WALNUT}. Immutable.
 *
 * <p>Units: kg/m3, MPa, and percent; a coefficient of change of size is one part per percent of moisture content. Every
 * figure keeps its source: {@link #figures}. The figures of a listed wood are averages of a species; one board may differ by
 * a fifth and more. For a board that was tested, give {@link #modulus(Quantity)} and {@link #modulusVariation(Quantity)}.
 *
 * <pre>{@code
 * println(Wood.BLACK_WALNUT.modulus());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 11.6 GPa
 * }</pre>
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Wood extends LeanAnswer {

    /** Its keys where it is not a listed wood. */
    public static final Table<Wood> TABLE = Table.of("wood", "a wood that is not listed", Wood::from, Wood::split)
            .printedBy(Wood::sentences);

    private static final Type<Wood> LISTED = Types.text(
            "a listed wood such as black walnut",
            Wood::byName,
            Wood::name,
            new TreeMap<>(Map.of("type", "string", "examples", names())));

    private static final QuantityType<MassDensity> USUAL_DENSITY =
            Types.DENSITY.moreThan(ShopUnit.KG_PER_M3.of(0)).atMost(ShopUnit.KG_PER_M3.of(2000));
    private static final QuantityType<Pressure> USUAL_MODULUS =
            Types.PRESSURE.moreThan(ShopUnit.GIGAPASCAL.of(0)).atMost(ShopUnit.GIGAPASCAL.of(60));

    private static final Key<Wood, String> NAME =
            TABLE.needed("name", Types.named(Wood::requireName, name -> name), "name of the wood");
    private static final Key<Wood, Wood> LIKE =
            TABLE.optional("like", LISTED, "listed wood whose figures are the defaults");
    private static final Key<Wood, Amount<MassDensity>> DENSITY =
            TABLE.optional("density", USUAL_DENSITY, "density as used. Default: not known");
    private static final Key<Wood, Amount<Pressure>> MODULUS = TABLE.optional(
            "modulus", USUAL_MODULUS, "modulus of elasticity (Young's modulus) along the grain. Default: not known");
    private static final Key<Wood, List<Amount<Dimensionless>>> SHRINKAGE = TABLE.optional(
            "shrinkage",
            Types.list(Types.PERCENT.moreThan(ShopUnit.PERCENT.of(0)), 2, 2),
            "shrinkage from green to ovendry, radial, then tangential. Default: not known");
    private static final Key<Wood, String> BOTANICAL_NAME = TABLE.optional(
            "botanical name", Types.TEXT, "botanical name of the species. Default: that of the listed wood");
    private static final Key<Wood, List<WoodFigure>> FIGURES = TABLE.optional(
            "figures",
            Types.list(Types.group(WoodFigure.TABLE), 0, Kind.values().length),
            "all known figures, each with its source, instead of like, density, modulus and shrinkage");

    static {
        TABLE.moved(Moves.none().and("stiffness", "modulus"));
        TABLE.atMostOne(FIGURES, LIKE);
        TABLE.atMostOne(FIGURES, DENSITY);
        TABLE.atMostOne(FIGURES, MODULUS);
        TABLE.atMostOne(FIGURES, SHRINKAGE);
    }

    /** A wood in a document: the name of a listed one, or a group of what is known of it. */
    public static final Type<Wood> TYPE = Types.textOrGroup(
            LISTED,
            TABLE,
            Wood::isListed,
            "a wood such as black walnut, or a group with a name and what is known of it");

    /** Fraxinus americana. */
    public static final Wood WHITE_ASH = new Wood(WoodTable.WHITE_ASH);

    /** Tilia americana. */
    public static final Wood AMERICAN_BASSWOOD = new Wood(WoodTable.AMERICAN_BASSWOOD);

    /** Betula alleghaniensis. */
    public static final Wood YELLOW_BIRCH = new Wood(WoodTable.YELLOW_BIRCH);

    /** Juglans cinerea. */
    public static final Wood BUTTERNUT = new Wood(WoodTable.BUTTERNUT);

    /** Prunus serotina. */
    public static final Wood BLACK_CHERRY = new Wood(WoodTable.BLACK_CHERRY);

    /** Acer rubrum. */
    public static final Wood RED_MAPLE = new Wood(WoodTable.RED_MAPLE);

    /** Acer saccharum, hard maple. */
    public static final Wood SUGAR_MAPLE = new Wood(WoodTable.SUGAR_MAPLE);

    /** Juglans nigra. */
    public static final Wood BLACK_WALNUT = new Wood(WoodTable.BLACK_WALNUT);

    /** Liriodendron tulipifera. */
    public static final Wood YELLOW_POPLAR = new Wood(WoodTable.YELLOW_POPLAR);

    /** Picea sitchensis. */
    public static final Wood SITKA_SPRUCE = new Wood(WoodTable.SITKA_SPRUCE);

    /** Swietenia macrophylla. */
    public static final Wood TRUE_MAHOGANY = new Wood(WoodTable.TRUE_MAHOGANY);

    /** Khaya spp. */
    public static final Wood AFRICAN_MAHOGANY = new Wood(WoodTable.AFRICAN_MAHOGANY);

    /** Cedrela spp. */
    public static final Wood SPANISH_CEDAR = new Wood(WoodTable.SPANISH_CEDAR);

    /** Entandrophragma cylindricum. */
    public static final Wood SAPELE = new Wood(WoodTable.SAPELE);

    /** Dalbergia nigra. */
    public static final Wood BRAZILIAN_ROSEWOOD = new Wood(WoodTable.BRAZILIAN_ROSEWOOD);

    /** Dalbergia latifolia. */
    public static final Wood INDIAN_ROSEWOOD = new Wood(WoodTable.INDIAN_ROSEWOOD);

    /** Diospyros spp. from Asia. */
    public static final Wood EAST_INDIAN_EBONY = new Wood(WoodTable.EAST_INDIAN_EBONY);

    /** Diospyros spp. from Africa. */
    public static final Wood AFRICAN_EBONY = new Wood(WoodTable.AFRICAN_EBONY);

    private static final String GIVEN = "given";

    private final Row row;

    private Wood(Row row) {
        super(LengthStyle.MILLIMETRES); // it has no lengths
        this.row = row;
    }

    /**
     * {@return a wood of your own, with no figure yet but the usual variation of the modulus; to be given its figures}
     *
     * @param name what you call it, not blank, up to 100 characters
     * @throws IllegalArgumentException if the name is blank or too long
     */
    public static Wood named(String name) {
        return new Wood(new Row(requireName(name), "", Map.of()).with(WoodTable.USUAL_VARIATION));
    }

    /**
     * {@return the listed wood of this name} Letter case, hyphens and blanks don't matter; {@code walnut}, {@code hard
     * maple} and other names that can mean one listed wood only are understood.
     *
     * @param name its name, such as {@code black walnut}
     * @throws IllegalArgumentException if no listed wood has this name; the message names the listed woods
     */
    public static Wood byName(String name) {
        String key = WoodTable.key(requireName(name));
        for (Row row : WoodTable.ALL) {
            if (WoodTable.key(row.name()).equals(key)) {
                return new Wood(row);
            }
        }
        Row row = WoodTable.OTHER_NAMES.get(key);
        if (row == null) {
            throw Refusal.of(
                    "wood",
                    "unknown",
                    "be one of " + String.join(", ", names()) + ", or one of your own with a name and its figures"
                            + Nearest.to(name, names())
                                    .map(near -> " (did you mean \"" + near + "\"?)")
                                    .orElse(""),
                    Words.quoted(name));
        }
        return new Wood(row);
    }

    /** {@return the listed woods; all of them, in order of their names} */
    public static List<Wood> listed() {
        return WoodTable.ALL.stream().map(Wood::new).toList();
    }

    /**
     * {@return a wood from its figures, each with its source: one read back from a record of it; with these figures
     * only}
     *
     * @param name not blank, up to 100 characters
     * @param botanicalName up to 100 characters, empty where it has none
     * @param figures no two of a kind
     */
    public static Wood of(String name, String botanicalName, List<WoodFigure> figures) {
        String called = requireName(name);
        String botanical =
                Objects.requireNonNull(botanicalName, "botanicalName").isBlank()
                        ? ""
                        : Words.name(botanicalName, "a wood's botanical name").strip();
        Map<Kind, WoodFigure> byKind = new EnumMap<>(Kind.class);
        for (WoodFigure figure : Objects.requireNonNull(figures, "figures")) {
            if (byKind.put(Objects.requireNonNull(figure, "figure").kind(), figure) != null) {
                throw Refusal.of(figure.kind().label() + " of " + called, "once", "be given once", "given twice");
            }
        }
        return new Wood(new Row(called, botanical, byKind));
    }

    private static List<String> names() {
        return WoodTable.ALL.stream().map(Row::name).toList();
    }

    private boolean isListed() {
        return WoodTable.ALL.contains(row);
    }

    private static Wood from(Values<Wood> values) {
        values.complete();
        String name = values.at(NAME);
        if (values.has(FIGURES)) {
            return of(name, values.find(BOTANICAL_NAME).orElse(""), values.at(FIGURES));
        }
        Wood wood = values.find(LIKE).map(like -> like.withName(name)).orElseGet(() -> named(name));
        if (values.has(DENSITY)) {
            wood = wood.density(values.at(DENSITY));
        }
        if (values.has(MODULUS)) {
            wood = wood.modulus(values.at(MODULUS));
        }
        if (values.has(SHRINKAGE)) {
            wood = wood.shrinkage(
                    values.at(SHRINKAGE).get(0), values.at(SHRINKAGE).get(1));
        }
        return values.has(BOTANICAL_NAME) ? of(name, values.at(BOTANICAL_NAME), wood.figures()) : wood;
    }

    /** In the few keys a maker writes, where they carry all of it; else in all its figures. */
    private static Values<Wood> split(Wood wood) {
        try {
            Values<Wood> few = wood.inFew();
            if (from(few).equals(wood)) {
                return few;
            }
        } catch (Refusal beyondTheUsual) {
            // Figures of any size have a place in the list below.
        }
        Values<Wood> all = TABLE.values().with(NAME, wood.name()).with(FIGURES, wood.figures());
        return wood.botanicalName().isEmpty() ? all : all.with(BOTANICAL_NAME, wood.botanicalName());
    }

    /** What differs from the listed wood of its species, as far as a maker's keys go. */
    private Values<Wood> inFew() {
        Optional<Wood> like = botanicalName().isEmpty()
                ? Optional.empty()
                : listed().stream()
                        .filter(wood -> wood.botanicalName().equals(botanicalName()))
                        .findFirst();
        Wood base = like.orElseGet(() -> named(name()));
        Values<Wood> few = TABLE.values().with(NAME, name());
        few = like.isPresent() ? few.with(LIKE, base) : few;
        few = differs(base, Kind.DENSITY) ? few.with(DENSITY, density()) : few;
        few = differs(base, Kind.MODULUS) ? few.with(MODULUS, modulus()) : few;
        return differs(base, Kind.RADIAL_SHRINKAGE) || differs(base, Kind.TANGENTIAL_SHRINKAGE)
                ? few.with(
                        SHRINKAGE,
                        List.of(
                                Amount.ofLibrary(radialShrinkage(), ShopUnit.PERCENT),
                                Amount.ofLibrary(tangentialShrinkage(), ShopUnit.PERCENT)))
                : few;
    }

    private boolean differs(Wood base, Kind kind) {
        return has(kind) && !(base.has(kind) && base.figure(kind).equals(figure(kind)));
    }

    private static String requireName(String name) {
        return Words.name(name, "a wood's name").strip();
    }

    /** {@return the name, such as {@code black walnut}} */
    public String name() {
        return row.name();
    }

    /** {@return the botanical name; empty for a wood of your own} */
    public String botanicalName() {
        return row.botanicalName();
    }

    /**
     * {@return a copy under another name, for one piece of a listed wood}
     *
     * @param newName the name, not blank, up to 100 characters
     */
    public Wood withName(String newName) {
        return new Wood(new Row(requireName(newName), row.botanicalName(), row.figures()));
    }

    /**
     * {@return a copy with this density}
     *
     * @param density at 12 % moisture, more than 0, no more than 2000 kg/m3
     */
    public Wood density(Quantity<MassDensity> density) {
        return withOwn(Kind.DENSITY, USUAL_DENSITY.checked(density, "density").libraryValue());
    }

    /**
     * {@return a copy with this modulus of elasticity along the grain, such as {@code gigapascal(12.4)} for a piece
     * that was bent under a weight}
     *
     * @param modulus more than 0, no more than 60 GPa
     */
    public Wood modulus(Quantity<Pressure> modulus) {
        return withOwn(
                Kind.MODULUS,
                USUAL_MODULUS.checked(modulus, "modulus along the grain").libraryValue());
    }

    /**
     * {@return a copy with this bending strength}
     *
     * @param strength modulus of rupture at 12 % moisture, more than 0
     */
    public Wood bendingStrength(Quantity<Pressure> strength) {
        return withOwn(Kind.BENDING_STRENGTH, LibraryUnits.positive(strength, ShopUnit.MEGAPASCAL, "bending strength"));
    }

    /**
     * {@return a copy whose modulus is known this well: the usual 22 % between pieces of a species, or less for a piece
     * that was tested}
     *
     * @param variation coefficient of variation, above 0 % and below 40 %
     */
    public Wood modulusVariation(Quantity<Dimensionless> variation) {
        return withOwn(Kind.MODULUS_VARIATION, percentBelow(variation, 40, "variation of the modulus"));
    }

    /**
     * {@return a copy with this shrinkage, green to ovendry, and the change of size with moisture that follows from it
     * by Wood Handbook (2010) Eq} 13-3 at 10 % moisture: {@code C = 1/(3000/S - 20)}.
     *
     * @param radial along the rays, of the green size, above 0 % and below 30 %
     * @param tangential along the growth rings, of the green size, above 0 % and below 30 %
     */
    public Wood shrinkage(Quantity<Dimensionless> radial, Quantity<Dimensionless> tangential) {
        return new Wood(row.with(
                percentBelow(radial, 30, "radial shrinkage"),
                percentBelow(tangential, 30, "tangential shrinkage"),
                GIVEN,
                Standing.OWN));
    }

    private static double percentBelow(Quantity<Dimensionless> ratio, double limit, String name) {
        double percent = 100 * LibraryUnits.ratio(ratio, name);
        if (!(percent > 0 && percent < limit)) {
            throw LibraryUnits.refused(name, "range", "above 0 % and below " + Numbers.plain(limit) + " %", ratio);
        }
        return percent;
    }

    /**
     * {@return a copy with these coefficients of change of size with moisture, and the equivalent shrinkage:
     * {@code S = 3000/(1/C + 20)}, the other way round of Wood Handbook (2010) Eq} 13-3 at 10 % moisture.
     *
     * @param radialRatio change along the rays for one percent of moisture, as a ratio of the size, above 0
     * @param tangentialRatio change along the growth rings for one percent of moisture, as a ratio of the size, above 0
     */
    public Wood changePerPercent(double radialRatio, double tangentialRatio) {
        return new Wood(row.withOwnChange(radialRatio, tangentialRatio, GIVEN));
    }

    private Wood withOwn(Kind kind, double value) {
        return new Wood(row.with(new WoodFigure(kind, value, GIVEN, Standing.OWN)));
    }

    /**
     * {@return the density at 12 % moisture}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public Amount<MassDensity> density() {
        return Amount.ofLibrary(densityKgPerM3(), ShopUnit.KG_PER_M3);
    }

    /**
     * {@return the density at 12 % moisture; density in kg/m3}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public double densityKgPerM3() {
        return value(Kind.DENSITY);
    }

    /**
     * {@return the modulus of elasticity along the grain at 12 % moisture, from bending tests}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public Amount<Pressure> modulus() {
        return Amount.ofLibrary(modulusMPa(), ShopUnit.GIGAPASCAL);
    }

    /**
     * {@return the modulus of elasticity along the grain at 12 % moisture, from bending tests; the modulus in MPa}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public double modulusMPa() {
        return value(Kind.MODULUS);
    }

    /**
     * {@return the bending strength at 12 % moisture: the modulus of rupture of small clear pieces}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public Amount<Pressure> bendingStrength() {
        return Amount.ofLibrary(value(Kind.BENDING_STRENGTH), ShopUnit.MEGAPASCAL);
    }

    /**
     * {@return how much the modulus varies between pieces: its coefficient of variation; standard deviation over mean,
     * a ratio} Where nothing better is known 0.22, the average over species in Wood Handbook (2010) Table 5-6 (from
     * memory).
     */
    public double modulusVariation() {
        return value(Kind.MODULUS_VARIATION) / 100;
    }

    /**
     * {@return the shrinkage along the rays, green to ovendry; shrinkage as a ratio of the green size}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public double radialShrinkage() {
        return value(Kind.RADIAL_SHRINKAGE) / 100;
    }

    /**
     * {@return the shrinkage along the growth rings, green to ovendry; shrinkage as a ratio of the green size}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public double tangentialShrinkage() {
        return value(Kind.TANGENTIAL_SHRINKAGE) / 100;
    }

    /**
     * {@return the change of size along the rays for one percent of moisture, good from 6 to 14 % moisture; change for
     * one percent as a ratio of the size}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public double radialChangePerPercent() {
        return value(Kind.RADIAL_CHANGE);
    }

    /**
     * {@return the change of size along the growth rings for one percent of moisture, good from 6 to 14 % moisture;
     * change for one percent as a ratio of the size}
     *
     * @throws IllegalArgumentException if this wood has none
     */
    public double tangentialChangePerPercent() {
        return value(Kind.TANGENTIAL_CHANGE);
    }

    /**
     * {@return whether a figure is known; true if this wood has it}
     *
     * @param kind which figure
     */
    public boolean has(Kind kind) {
        return row.figures().containsKey(Objects.requireNonNull(kind, "kind"));
    }

    /**
     * {@return a figure with its source}
     *
     * @param kind which figure
     * @throws IllegalArgumentException if this wood has none of this kind
     */
    public WoodFigure figure(Kind kind) {
        WoodFigure figure = row.figures().get(Objects.requireNonNull(kind, "kind"));
        if (figure == null) {
            throw Refusal.because(
                    kind.label(),
                    "no-figure",
                    kind.label() + " of " + row.name() + " is not known; give the wood one in " + kind.unit());
        }
        return figure;
    }

    /** {@return the figures with their sources; all figures this wood has, in the order of their kinds} */
    public List<WoodFigure> figures() {
        return List.copyOf(row.figures().values());
    }

    private double value(Kind kind) {
        return figure(kind).value();
    }

    @Override
    public Form<Wood> form() {
        return TABLE.form();
    }

    private static Form<Wood> sentences() {
        return TABLE.facts("wood")
                .fact("known", org.neckgeom.form.Kind.table(WoodFigure.TABLE.form()), "all its figures", Wood::figures)
                .finds("wood", "{name}")
                .laidOut((wood, style) -> wood.lines());
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {row};
    }

    private String lines() {
        String title = botanicalName().isEmpty() ? name() : name() + " (" + botanicalName() + ")";
        return figures().stream().map(f -> "\n  " + f).collect(Collectors.joining("", title, ""));
    }
}
