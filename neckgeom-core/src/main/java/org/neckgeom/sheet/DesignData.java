package org.neckgeom.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.End;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.design.Scale;
import org.neckgeom.design.StringSet;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** A design as data and back. */
final class DesignData {

    private DesignData() {}

    static DataMap of(NeckDesign design) {
        DataMap data = DataMap.empty().put("name", design.name());
        Scale scale = design.scale();
        data.put(
                "scale",
                DataMap.empty()
                        .length("length", scale.lengthMm(), scale.style())
                        .put("divisions", scale.divisions()));
        data.put("frets", design.frets()).put("bodyAtFret", design.bodyAtFret());
        data.put("fingerboard", board(design.fingerboard()));
        data.put("back", back(design.back()));
        told(design::wood).ifPresent(wood -> data.put("wood", wood(wood)));
        design.channel().ifPresent(channel -> data.put("channel", channel(channel)));
        design.head().ifPresent(head -> data.put("head", head(head)));
        design.heel().ifPresent(heel -> data.put("heel", heel(heel)));
        if (design.hasStrings()) {
            data.put("strings", strings(design.strings()));
        }
        return data;
    }

    private static <T> Optional<T> told(Supplier<T> part) {
        try {
            return Optional.of(part.get());
        } catch (IllegalArgumentException notTold) {
            return Optional.empty();
        }
    }

    private static DataMap board(Fingerboard board) {
        LengthStyle style = board.style();
        DataMap data = DataMap.empty()
                .length("widthAtNut", board.nutWidthMm(), style)
                .length("secondWidth", board.secondWidthMm(), style);
        double fret = board.secondFret(Double.NaN);
        if (!Double.isNaN(fret)) {
            data.put("secondAtFret", (int) fret);
        }
        data.length("thicknessAtNut", board.nutThicknessMm(), style)
                .length("secondThickness", board.secondThicknessMm(), style);
        if (board.crown() != Fingerboard.Crown.FLAT) {
            data.length("radiusAtNut", board.nutRadiusMm(), style)
                    .length("secondRadius", board.secondRadiusMm(), style);
        }
        board.wood().ifPresent(wood -> data.put("wood", wood(wood)));
        return data;
    }

    private static DataMap back(BackProfile back) {
        return DataMap.empty()
                .length("firstDepth", back.firstDepthMm(), back.style())
                .put("firstFret", (int) back.firstFret())
                .length("secondDepth", back.secondDepthMm(), back.style())
                .put("secondFret", (int) back.secondFret())
                .put("exponentBass", back.bassPower())
                .put("exponentTreble", back.treblePower());
    }

    private static DataMap wood(Wood wood) {
        List<DataMap> figures = wood.figures().stream()
                .map(figure -> DataMap.empty()
                        .put("kind", figure.kind().name().toLowerCase(Locale.ROOT))
                        // To twelve digits: percents carry the noise of having been ratios.
                        .put("value", new Json.Figure(Numbers.plain(figure.value())))
                        .put("unit", figure.kind().unit())
                        .put("source", figure.source())
                        .put("standing", figure.standing().toString()))
                .toList();
        return DataMap.empty().put("name", wood.name()).putAll("figures", figures);
    }

    private static DataMap channel(Channel channel) {
        LengthStyle style = channel.style();
        Rod rod = channel.rod();
        DataMap data = DataMap.empty()
                .put("rod", rod(rod))
                .length("start", channel.startMm(), style)
                .length("endPlay", channel.endPlayMm(), style)
                .length("sidePlay", channel.sidePlayMm(), style)
                .length("cover", channel.coverMm(), style)
                .length("clearance", channel.clearanceMm(), style)
                .length("arch", channel.archMm(), style);
        if (channel.hasPocket()) {
            data.put(
                    "pocket",
                    DataMap.empty()
                            .length("length", channel.pocketLengthMm(), style)
                            .length("width", channel.pocketWidthMm(), style)
                            .length("depth", channel.pocketDepthMm(), style));
        }
        return data;
    }

    private static DataMap rod(Rod rod) {
        DataMap data = DataMap.empty()
                .put("kind", rod.kind().name().toLowerCase(Locale.ROOT))
                .length("length", rod.lengthMm(), rod.style())
                .length("width", rod.widthMm(), rod.style())
                .length("height", rod.heightMm(), rod.style());
        return rod.isAdjustable()
                ? data.put("adjustedAt", rod.adjustedAt().name().toLowerCase(Locale.ROOT))
                : data;
    }

    private static DataMap head(Head head) {
        LengthStyle style = head.style();
        return DataMap.empty()
                .put("pitch", DataMap.quantity(head.pitchRad(), ShopUnit.DEGREE))
                .length("length", head.lengthMm(), style)
                .length("width", head.widthMm(), style)
                .length("thickness", head.thicknessMm(), style)
                .put("swing", DataMap.quantity(head.swingRad(), ShopUnit.DEGREE))
                .length("veneer", head.veneerMm(), style)
                .length("veneerShortOfNut", head.veneerShortOfNutMm(), style)
                .length("backVeneer", head.backVeneerMm(), style);
    }

    private static DataMap heel(Heel heel) {
        DataMap data = DataMap.empty()
                .length("height", heel.heightMm(), heel.style())
                .length("width", heel.widthMm(), heel.style());
        double block = heel.blockThicknessMm(Double.NaN);
        return Double.isNaN(block) ? data : data.length("blockThickness", block, heel.style());
    }

    private static DataMap strings(StringSet strings) {
        DataMap data = DataMap.empty()
                .put("inCourse", strings.inCourse())
                .putAll("pitches", quantities(strings.pitchesHz(), ShopUnit.HERTZ));
        if (strings.tensionsN().length > 0) {
            data.putAll("tensions", quantities(strings.tensionsN(), ShopUnit.NEWTON));
        }
        if (strings.massesGramPerMetre().length > 0) {
            data.putAll("massesPerLength", quantities(strings.massesGramPerMetre(), ShopUnit.GRAM_PER_METRE));
        }
        if (strings.diametersMm().length > 0) {
            data.putAll("diameters", quantities(strings.diametersMm(), ShopUnit.MILLIMETRE));
        }
        return data;
    }

    private static List<DataMap> quantities(double[] house, ShopUnit<?> unit) {
        return Arrays.stream(house)
                .mapToObj(value -> DataMap.quantity(value, unit))
                .toList();
    }

    static NeckDesign from(DataMap data) {
        DataMap scale = data.inner("scale");
        NeckDesign design = NeckDesign.named(data.text("name"))
                .scale(Scale.of(scale.length("length")).divisions(scale.count("divisions")))
                .frets(data.count("frets"))
                .bodyAtFret(data.count("bodyAtFret"))
                .fingerboard(boardFrom(data.inner("fingerboard")))
                .back(backFrom(data.inner("back")));
        if (data.has("wood")) {
            design = design.wood(woodFrom(data.inner("wood")));
        }
        if (data.has("channel")) {
            design = design.channel(channelFrom(data.inner("channel")));
        }
        if (data.has("head")) {
            design = design.head(headFrom(data.inner("head")));
        }
        if (data.has("heel")) {
            design = design.heel(heelFrom(data.inner("heel")));
        }
        return data.has("strings") ? design.strings(stringsFrom(data.inner("strings"))) : design;
    }

    private static Fingerboard boardFrom(DataMap data) {
        Fingerboard board = Fingerboard.tapered(data.length("widthAtNut"), data.length("secondWidth"))
                .thickness(data.length("thicknessAtNut"), data.length("secondThickness"));
        if (data.has("secondAtFret")) {
            board = board.secondAtFret(data.count("secondAtFret"));
        }
        if (data.has("radiusAtNut")) {
            board = board.radius(data.length("radiusAtNut"), data.length("secondRadius"));
        }
        return data.has("wood") ? board.wood(woodFrom(data.inner("wood"))) : board;
    }

    private static BackProfile backFrom(DataMap data) {
        return BackProfile.between(data.length("firstDepth"), data.length("secondDepth"))
                .atFrets(data.count("firstFret"), data.count("secondFret"))
                .asymmetric(data.number("exponentBass"), data.number("exponentTreble"));
    }

    /** A listed wood by its name; otherwise one of the maker's own, with the figures that can be told. */
    private static Wood woodFrom(DataMap data) {
        String name = data.text("name");
        Optional<Wood> listed =
                Wood.listed().stream().filter(wood -> wood.name().equals(name)).findFirst();
        return listed.orElseGet(() -> WoodData.own(name, data.list("figures")));
    }

    private static Channel channelFrom(DataMap data) {
        Channel channel = Channel.forRod(rodFrom(data.inner("rod")))
                .startingAt(data.length("start"))
                .endPlay(data.length("endPlay"))
                .sidePlay(data.length("sidePlay"))
                .coveredBy(data.length("cover"))
                .clearance(data.length("clearance"))
                .arched(data.length("arch"));
        if (!data.has("pocket")) {
            return channel;
        }
        DataMap pocket = data.inner("pocket");
        return channel.pocket(pocket.length("length"), pocket.length("width"), pocket.length("depth"));
    }

    private static Rod rodFrom(DataMap data) {
        Amount<Length> length = data.length("length");
        Amount<Length> width = data.length("width");
        Amount<Length> height = data.length("height");
        String kind = data.text("kind");
        Rod rod = switch (kind) {
            case "two_way" -> Rod.twoWay(length, width, height);
            case "single_action" -> Rod.singleAction(length, width);
            case "steel_bar" -> Rod.steelBar(length, width, height);
            case "carbon_bar" -> Rod.carbonBar(length, width, height);
            default ->
                throw new IllegalArgumentException(
                        "rod kind must be two_way, single_action, steel_bar or carbon_bar, but was \"" + kind + "\"");
        };
        return data.has("adjustedAt")
                ? rod.adjustedAt(data.text("adjustedAt").equals("heel") ? End.HEEL : End.HEAD)
                : rod;
    }

    private static Head headFrom(DataMap data) {
        Amount<Angle> pitch = data.quantity("pitch", ShopUnit.DEGREE);
        Head head = pitch.house() == 0 ? Head.flat() : Head.pitched(pitch);
        return head.length(data.length("length"))
                .width(data.length("width"))
                .thickness(data.length("thickness"))
                .swung(data.quantity("swing", ShopUnit.DEGREE))
                .veneer(data.length("veneer"), data.length("veneerShortOfNut"))
                .backVeneer(data.length("backVeneer"));
    }

    private static Heel heelFrom(DataMap data) {
        Heel heel = Heel.of(data.length("height"), data.length("width"));
        return data.has("blockThickness") ? heel.blocks(data.length("blockThickness")) : heel;
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // arrays of one generic type, made here
    private static StringSet stringsFrom(DataMap data) {
        List<Quantity<Frequency>> pitches = new ArrayList<>(quantitiesFrom(data, "pitches", ShopUnit.HERTZ));
        StringSet strings = StringSet.of(pitches);
        if (data.count("inCourse") == 2) {
            strings = strings.doubled();
        }
        if (data.has("tensions")) {
            strings = strings.tensions(
                    quantitiesFrom(data, "tensions", ShopUnit.NEWTON).toArray(new Quantity[0]));
        }
        if (data.has("massesPerLength")) {
            strings = strings.massesPerLength(quantitiesFrom(data, "massesPerLength", ShopUnit.GRAM_PER_METRE)
                    .toArray(new Quantity[0]));
        }
        if (data.has("diameters")) {
            strings = strings.diameters(
                    quantitiesFrom(data, "diameters", ShopUnit.MILLIMETRE).toArray(new Quantity[0]));
        }
        return strings;
    }

    private static <Q extends Quantity<Q>> List<Amount<Q>> quantitiesFrom(DataMap data, String key, ShopUnit<Q> unit) {
        List<Amount<Q>> all = new ArrayList<>();
        for (Object item : data.list(key)) {
            all.add(DataMap.of(item, "strings." + key).quantityIn(unit));
        }
        return all;
    }
}
