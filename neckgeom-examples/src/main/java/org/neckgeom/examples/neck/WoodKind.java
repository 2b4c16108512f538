package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Node;
import org.neckgeom.examples.file.Problems;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Nearest;
import org.neckgeom.units.Amount;
import org.neckgeom.units.MassDensity;
import org.neckgeom.units.ShopUnit;

/** A wood: the name of a listed one, or a name of its own with the figures the maker knows. */
final class WoodKind implements Kind<Wood> {

    static final WoodKind WOOD = new WoodKind();

    private static final Key<String> NAME = Key.needed("name", Kinds.text(), "what the wood is called");
    private static final Key<String> LIKE =
            Key.optional("like", Kinds.text(), "a listed wood whose figures hold where none is given here");
    private static final Key<Amount<MassDensity>> DENSITY = Key.optional(
            "density",
            QuantityKind.density().moreThan(ShopUnit.KG_PER_M3.of(0)).atMost(ShopUnit.KG_PER_M3.of(2000)),
            "weight per volume as it is used; unknown when left out");
    private static final Key<Amount<Pressure>> STIFFNESS = Key.optional(
            "stiffness",
            QuantityKind.pressure().moreThan(ShopUnit.GIGAPASCAL.of(0)).atMost(ShopUnit.GIGAPASCAL.of(60)),
            "modulus of elasticity along the grain; unknown when left out");
    private static final Key<List<Amount<Dimensionless>>> SHRINKAGE = Key.optional(
            "shrinkage",
            Kinds.listOf(QuantityKind.percent().moreThan(ShopUnit.PERCENT.of(0)), 2, 2),
            "from green to ovendry, along the rays and then along the growth rings; unknown when left out");
    private static final Shape OWN = Shape.of("a wood that is not listed", NAME, LIKE, DENSITY, STIFFNESS, SHRINKAGE);

    private WoodKind() {}

    @Override
    public Found<Wood> read(Node node, Problems problems) {
        if (node instanceof Node.Text text) {
            return listed(text, problems);
        }
        Found<Section> section = OWN.read(node, problems);
        return section.isThere() ? own(section.value()) : Found.unusable();
    }

    private static Found<Wood> listed(Node.Text text, Problems problems) {
        try {
            return Found.of(Wood.byName(text.text()));
        } catch (IllegalArgumentException unknown) {
            problems.add(
                    text.place(),
                    text.place().path() + " is " + text.found() + ", but must be one of " + String.join(", ", names())
                            + ", or a group with a name and what is known of it"
                            + Nearest.question(text.text(), names()));
            return Found.unusable();
        }
    }

    private static Found<Wood> own(Section section) {
        return section.make(() -> {
            String name = section.at(NAME).value();
            Wood wood = section.at(LIKE).isAbsent()
                    ? Wood.named(name)
                    : Wood.byName(section.at(LIKE).value()).withName(name);
            if (!section.at(DENSITY).isAbsent()) {
                wood = wood.density(section.at(DENSITY).value());
            }
            if (!section.at(STIFFNESS).isAbsent()) {
                wood = wood.modulus(section.at(STIFFNESS).value());
            }
            if (!section.at(SHRINKAGE).isAbsent()) {
                List<Amount<Dimensionless>> both = section.at(SHRINKAGE).value();
                wood = wood.shrinkage(both.get(0), both.get(1));
            }
            return wood;
        });
    }

    private static List<String> names() {
        return Wood.listed().stream().map(Wood::name).toList();
    }

    @Override
    public String allowed() {
        return "a wood such as black walnut, or a group with a name and what is known of it";
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> name = new LinkedHashMap<>();
        name.put("type", "string");
        name.put("examples", names());
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("oneOf", List.of(name, OWN.schema()));
        return schema;
    }

    @Override
    public Optional<Shape> inside() {
        return Optional.of(OWN);
    }
}
