package org.neckgeom.page;

import java.util.Optional;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Scale;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.solid.BackShape;
import org.neckgeom.units.LengthStyle;

/** Details as data and back. */
final class ShapeMap {

    private ShapeMap() {}

    /** The details in the style of the plan they belong to: lengths are kept without one. */
    static DataMap details(NeckDetails details, LengthStyle style) {
        DataMap data = DataMap.empty();
        details.stringsAtNut().ifPresent(places -> data.put("stringsAtNut", places(places, style)));
        details.stringsAtSaddle().ifPresent(places -> data.put("stringsAtSaddle", places(places, style)));
        details.fannedFrets().ifPresent(fan -> data.put("fannedFrets", fan(fan, style)));
        details.fretHeightMm().ifPresent(frets -> data.length("fretHeight", frets, style));
        details.fallAway()
                .ifPresent(slope -> data.put(
                        "fallAway",
                        DataMap.empty()
                                .quantity("start", slope.start().in(style))
                                .quantity("end", slope.end().in(style))
                                .quantity("drop", slope.drop().in(style))));
        details.back().ifPresent(back -> data.put("back", back(back, style)));
        if (details.hasSpare()) {
            data.put(
                    "spare",
                    DataMap.empty()
                            .length("eachEnd", details.endSpareMm(), style)
                            .length("eachEdge", details.edgeSpareMm(), style)
                            .length("eachFace", details.planingMm(), style));
        }
        return data.length("sawKerf", details.kerfMm(), style);
    }

    static NeckDetails detailsFrom(DataSource data, NeckDesign design) {
        NeckDetails details = NeckDetails.none().sawKerf(data.length("sawKerf"));
        if (data.has("stringsAtNut") || data.has("stringsAtSaddle")) {
            details = details.strings(
                    data.one("stringsAtNut", ShapeMap::placesFrom), data.one("stringsAtSaddle", ShapeMap::placesFrom));
        }
        Optional<FannedFrets> fan = data.oneIfTold("fannedFrets", ShapeMap::fanFrom);
        details = fan.isPresent() ? details.fannedFrets(fan.get()) : details;
        if (data.has("fretHeight")) {
            details = details.fretHeight(data.length("fretHeight"));
        }
        Optional<FallAway> slope = data.oneIfTold(
                "fallAway", part -> FallAway.of(part.length("start"), part.length("end"), part.length("drop")));
        details = slope.isPresent() ? details.fallAway(slope.get()) : details;
        Optional<BackShape> back = data.oneIfTold("back", part -> backFrom(part, design));
        details = back.isPresent() ? details.back(back.get()) : details;
        NeckDetails soFar = details;
        return data.oneIfTold(
                        "spare",
                        part -> soFar.spare(part.length("eachEnd"), part.length("eachEdge"), part.length("eachFace")))
                .orElse(soFar);
    }

    private static DataMap places(StringPlaces places, LengthStyle style) {
        return DataMap.empty()
                .putAll("centres", places.centres(), amount -> DataMap.quantity(amount.in(style)))
                .putAll("diameters", places.diameters(), amount -> DataMap.quantity(amount.in(style)));
    }

    private static StringPlaces placesFrom(DataSource data) {
        return StringPlaces.of(
                data.quantities("centres", DataUnits.LENGTH), data.quantities("diameters", DataUnits.LENGTH));
    }

    private static DataMap fan(FannedFrets fan, LengthStyle style) {
        Scale bass = fan.bassScale();
        return DataMap.empty()
                .quantity("bassScale", bass.length().in(style))
                .quantity("trebleScale", fan.trebleScale().length().in(style))
                .put("divisions", bass.divisions())
                .length("spreadAtNut", fan.outerStrings().atNutMm(), style)
                .length("spreadAtSaddle", fan.outerStrings().atSaddleMm(), style)
                .number("squareFret", fan.squareFret());
    }

    private static FannedFrets fanFrom(DataSource data) {
        int divisions = data.count("divisions");
        return FannedFrets.of(
                Scale.of(data.length("bassScale")).divisions(divisions),
                Scale.of(data.length("trebleScale")).divisions(divisions),
                OuterStrings.of(data.length("spreadAtNut"), data.length("spreadAtSaddle")),
                data.number("squareFret"));
    }

    private static DataMap back(BackShape back, LengthStyle style) {
        DataMap data = DataMap.empty();
        if (back.voluteMm() > 0) {
            data.put(
                    "volute",
                    DataMap.empty()
                            .length("extra", back.voluteMm(), style)
                            .length("length", back.voluteLengthMm(), style));
        }
        back.heelStartMm()
                .ifPresent(start -> data.put(
                        "heelTurn",
                        DataMap.empty().length("start", start, style).length("radius", back.heelRadiusMm(), style)));
        return data;
    }

    private static BackShape backFrom(DataSource data, NeckDesign design) {
        BackShape plain = BackShape.of(design);
        BackShape volute = data.oneIfTold("volute", part -> plain.volute(part.length("extra"), part.length("length")))
                .orElse(plain);
        return data.oneIfTold("heelTurn", part -> volute.heelFrom(part.length("start"), part.length("radius")))
                .orElse(volute);
    }
}
