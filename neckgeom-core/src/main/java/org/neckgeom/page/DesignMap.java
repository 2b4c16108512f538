package org.neckgeom.page;

import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.Quantity;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.End;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.NeckSet;
import org.neckgeom.design.Rod;
import org.neckgeom.design.Scale;
import org.neckgeom.design.StringSet;
import org.neckgeom.fault.Refusal;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** A design as data and back. */
final class DesignMap {

    private DesignMap() {}

    static DataMap of(NeckDesign design) {
        DataMap data = DataMap.empty().put("name", design.name());
        told(design::scale)
                .ifPresent(scale -> data.put(
                        "scale",
                        DataMap.empty().quantity("length", scale.length()).put("divisions", scale.divisions())));
        data.put("frets", design.frets()).put("bodyAtFret", design.bodyAtFret());
        told(design::fingerboard).ifPresent(board -> data.put("fingerboard", board(board)));
        told(design::back).ifPresent(back -> data.put("back", back(back)));
        design.woodIfGiven().ifPresent(wood -> data.typed("wood", Wood.TYPE, wood));
        design.channel().ifPresent(channel -> data.put("channel", channel(channel)));
        design.head().ifPresent(head -> data.noun("head", Head.TABLE, head));
        design.heel().ifPresent(heel -> data.noun("heel", Heel.TABLE, heel));
        design.neckSet().ifPresent(set -> data.noun("neckSet", NeckSet.TABLE, set));
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
        if (board.hasSecondFret()) {
            data.put("secondAtFret", (int) board.secondFret(1));
        }
        data.length("thicknessAtNut", board.nutThicknessMm(), style)
                .length("secondThickness", board.secondThicknessMm(), style);
        if (board.crown() != Fingerboard.Crown.FLAT) {
            data.length("radiusAtNut", board.nutRadiusMm(), style)
                    .length("secondRadius", board.secondRadiusMm(), style);
        }
        board.wood().ifPresent(wood -> data.typed("wood", Wood.TYPE, wood));
        return data;
    }

    private static DataMap back(BackProfile back) {
        return DataMap.empty()
                .length("firstDepth", back.firstDepthMm(), back.style())
                .put("firstFret", (int) back.firstFret())
                .length("secondDepth", back.secondDepthMm(), back.style())
                .put("secondFret", (int) back.secondFret())
                .number("exponentBass", back.bassPower())
                .number("exponentTreble", back.treblePower());
    }

    private static DataMap channel(Channel channel) {
        LengthStyle style = channel.style();
        DataMap data = DataMap.empty()
                .put("rod", rod(channel.rod()))
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
                .put("kind", DataSource.word(rod.kind()))
                .length("length", rod.lengthMm(), rod.style())
                .length("width", rod.widthMm(), rod.style())
                .length("height", rod.heightMm(), rod.style());
        return rod.isAdjustable() ? data.put("adjustedAt", DataSource.word(rod.adjustedAt())) : data;
    }

    private static DataMap strings(StringSet strings) {
        DataMap data = DataMap.empty()
                .put("inCourse", strings.inCourse())
                .putAll("pitches", StockMap.quantities(strings.pitchesHz(), ShopUnit.HERTZ));
        if (strings.tensionsN().length > 0) {
            data.putAll("tensions", StockMap.quantities(strings.tensionsN(), ShopUnit.NEWTON));
        }
        if (strings.massesGramPerMetre().length > 0) {
            data.putAll("massesPerLength", StockMap.quantities(strings.massesGramPerMetre(), ShopUnit.GRAM_PER_METRE));
        }
        return strings.diameters().isEmpty() ? data : data.putAll("diameters", strings.diameters(), DataMap::quantity);
    }

    static NeckDesign from(DataSource data) {
        NeckDesign design = NeckDesign.named(data.text("name"));
        Optional<Scale> scale =
                data.oneIfTold("scale", part -> Scale.of(part.length("length")).divisions(part.count("divisions")));
        design = scale.isPresent() ? design.scale(scale.get()) : design;
        design = design.frets(data.count("frets")).bodyAtFret(data.count("bodyAtFret"));
        Optional<Fingerboard> board = data.oneIfTold("fingerboard", DesignMap::boardFrom);
        design = board.isPresent() ? design.fingerboard(board.get()) : design;
        Optional<BackProfile> back = data.oneIfTold("back", DesignMap::backFrom);
        design = back.isPresent() ? design.back(back.get()) : design;
        Optional<Wood> wood = data.typedIfTold("wood", Wood.TYPE);
        design = wood.isPresent() ? design.wood(wood.get()) : design;
        Optional<Channel> channel = data.oneIfTold("channel", DesignMap::channelFrom);
        design = channel.isPresent() ? design.channel(channel.get()) : design;
        Optional<Head> head = data.nounIfTold("head", Head.TABLE);
        design = head.isPresent() ? design.head(head.get()) : design;
        Optional<Heel> heel = data.nounIfTold("heel", Heel.TABLE);
        design = heel.isPresent() ? design.heel(heel.get()) : design;
        Optional<NeckSet> set = data.nounIfTold("neckSet", NeckSet.TABLE);
        design = set.isPresent() ? design.neckSet(set.get()) : design;
        Optional<StringSet> strings = data.oneIfTold("strings", DesignMap::stringsFrom);
        return strings.isPresent() ? design.strings(strings.get()) : design;
    }

    private static Fingerboard boardFrom(DataSource data) {
        Fingerboard board = Fingerboard.tapered(data.length("widthAtNut"), data.length("secondWidth"))
                .thickness(data.length("thicknessAtNut"), data.length("secondThickness"));
        if (data.has("secondAtFret")) {
            board = board.secondAtFret(data.count("secondAtFret"));
        }
        if (data.has("radiusAtNut") || data.has("secondRadius")) {
            board = board.radius(data.length("radiusAtNut"), data.length("secondRadius"));
        }
        Optional<Wood> wood = data.typedIfTold("wood", Wood.TYPE);
        return wood.isPresent() ? board.wood(wood.get()) : board;
    }

    private static BackProfile backFrom(DataSource data) {
        return BackProfile.between(data.length("firstDepth"), data.length("secondDepth"))
                .atFrets(data.count("firstFret"), data.count("secondFret"))
                .asymmetric(data.number("exponentBass"), data.number("exponentTreble"));
    }

    private static Channel channelFrom(DataSource data) {
        Channel channel = Channel.forRod(data.one("rod", DesignMap::rodFrom))
                .startingAt(data.length("start"))
                .endPlay(data.length("endPlay"))
                .sidePlay(data.length("sidePlay"))
                .coveredBy(data.length("cover"))
                .clearance(data.length("clearance"))
                .arched(data.length("arch"));
        return data.oneIfTold(
                        "pocket",
                        part -> channel.pocket(part.length("length"), part.length("width"), part.length("depth")))
                .orElse(channel);
    }

    private static Rod rodFrom(DataSource data) {
        Rod.Kind kind = data.word("kind", Rod.Kind.values());
        var length = data.length("length");
        var width = data.length("width");
        var height = data.length("height");
        Rod rod = switch (kind) {
            case TWO_WAY -> Rod.twoWay(length, width, height);
            case SINGLE_ACTION -> Rod.singleAction(length, width);
            case STEEL_BAR -> Rod.steelBar(length, width, height);
            case CARBON_BAR -> Rod.carbonBar(length, width, height);
        };
        if (rod.heightMm() != height.house()) {
            throw Refusal.of("height of a " + kind, "square", "be its width of " + width, height);
        }
        return data.has("adjustedAt") ? rod.adjustedAt(data.word("adjustedAt", End.values())) : rod;
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // arrays of one generic type, made here
    private static StringSet stringsFrom(DataSource data) {
        StringSet strings = StringSet.of(data.quantities("pitches", DataUnits.FREQUENCY));
        int inCourse = data.count("inCourse");
        if (inCourse != 1 && inCourse != 2) {
            throw Refusal.of("inCourse", "range", "be 1 or 2", inCourse);
        }
        strings = inCourse == 2 ? strings.doubled() : strings;
        if (data.has("tensions")) {
            strings = strings.tensions(
                    data.quantities("tensions", DataUnits.FORCE).toArray(new Quantity[0]));
        }
        if (data.has("massesPerLength")) {
            strings = strings.massesPerLength(data.quantities("massesPerLength", DataUnits.MASS_PER_LENGTH)
                    .toArray(new Quantity[0]));
        }
        return data.has("diameters")
                ? strings.diameters(
                        data.quantities("diameters", DataUnits.LENGTH).toArray(new Quantity[0]))
                : strings;
    }
}
