package org.neckgeom.page;

import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.quantity.Angle;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Fan;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.StringSet;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** A design as data and back. */
final class DesignMap {

    private DesignMap() {}

    static DataMap of(NeckDesign design) {
        DataMap data = DataMap.empty().put("name", design.name());
        if (design.fannedFrets().isEmpty()) {
            told(design::scale).ifPresent(scale -> data.quantity("scale", scale.length()));
        }
        data.put("fretsToTheOctave", design.fretsToTheOctave()).put("frets", design.frets());
        design.fannedFrets().ifPresent(fan -> data.noun("fannedFrets", Fan.TABLE, fan));
        data.put("bodyAtFret", design.bodyAtFret());
        told(design::wood).ifPresent(wood -> data.put("wood", StockMap.wood(wood)));
        told(design::fingerboard).ifPresent(board -> data.noun("fingerboard", Fingerboard.TABLE, board));
        told(design::back).ifPresent(back -> data.noun("back", BackProfile.TABLE, back));
        design.channel().ifPresent(channel -> data.inline(Channel.TABLE, channel));
        design.head().ifPresent(head -> data.put("head", head(head)));
        design.heel().ifPresent(heel -> data.noun("heel", Heel.TABLE, heel));
        if (design.hasStrings()) {
            data.noun("strings", StringSet.TABLE, design.strings());
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

    private static DataMap head(Head head) {
        LengthStyle style = head.style();
        return DataMap.empty()
                .quantity("pitch", head.pitch())
                .length("length", head.lengthMm(), style)
                .length("width", head.widthMm(), style)
                .length("thickness", head.thicknessMm(), style)
                .put("swing", DataMap.quantity(head.swingRad(), ShopUnit.DEGREE))
                .length("veneer", head.veneerMm(), style)
                .length("veneerShortOfNut", head.veneerShortOfNutMm(), style)
                .length("backVeneer", head.backVeneerMm(), style);
    }

    static NeckDesign from(DataSource data) {
        NeckDesign design = NeckDesign.named(data.text("name"));
        design = data.has("scale") ? design.scale(data.length("scale")) : design;
        design = data.has("fretsToTheOctave") ? design.fretsToTheOctave(data.count("fretsToTheOctave")) : design;
        Optional<Fan> fan = data.nounIfTold("fannedFrets", Fan.TABLE);
        design = fan.isPresent() ? design.fannedFrets(fan.get()) : design;
        design = design.frets(data.count("frets")).bodyAtFret(data.count("bodyAtFret"));
        Optional<Fingerboard> board = data.nounIfTold("fingerboard", Fingerboard.TABLE);
        design = board.isPresent() ? design.fingerboard(board.get()) : design;
        Optional<BackProfile> back = data.nounIfTold("back", BackProfile.TABLE);
        design = back.isPresent() ? design.back(back.get()) : design;
        Optional<Wood> wood = data.oneIfTold("wood", StockMap::woodFrom);
        design = wood.isPresent() ? design.wood(wood.get()) : design;
        Optional<Channel> channel = data.inlineIfTold(Channel.TABLE, "rod", "channel");
        design = channel.isPresent() ? design.channel(channel.get()) : design;
        Optional<Head> head = data.oneIfTold("head", DesignMap::headFrom);
        design = head.isPresent() ? design.head(head.get()) : design;
        Optional<Heel> heel = data.nounIfTold("heel", Heel.TABLE);
        design = heel.isPresent() ? design.heel(heel.get()) : design;
        Optional<StringSet> strings = data.nounIfTold("strings", StringSet.TABLE);
        return strings.isPresent() ? design.strings(strings.get()) : design;
    }

    private static Head headFrom(DataSource data) {
        Amount<Angle> pitch = data.angle("pitch");
        Head head = pitch.house() == 0 ? Head.flat() : Head.pitched(pitch);
        return head.length(data.length("length"))
                .width(data.length("width"))
                .thickness(data.length("thickness"))
                .swung(data.angle("swing"))
                .veneer(data.length("veneer"), data.length("veneerShortOfNut"))
                .backVeneer(data.length("backVeneer"));
    }
}
