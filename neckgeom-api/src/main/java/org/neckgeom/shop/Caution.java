package org.neckgeom.shop;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Words;

/**
 * Something that can hurt the maker or spoil the neck: a code to know it by, what to do, why, and its source. Immutable.
 *
 * <p>Cautions are not rules of law. The machine's own instructions come first, then local rules and licensed practice.
 *
 * @param code short and stable, such as {@code STOPPED_CUT}
 * @param text what to do, one sentence
 * @param why what happens otherwise
 * @param source the guidance it is in, or {@code common practice}
 */
public record Caution(String code, String text, String why, String source) implements Answer {

    private static final int LONGEST = 300;
    private static final String OWN = "OWN";

    private static final Form<Caution> FORM = Form.<Caution>of("caution")
            .fact("code", Kind.NAME, "which caution", Caution::code)
            .fact("sentence", Kind.NAME, "the instruction", caution -> caution.text())
            .fact("why", Kind.NAME, "the danger", Caution::why)
            .fact("source", Kind.NAME, "guidance it is in, or common practice", Caution::source)
            .finds("caution", "{sentence} ({why})");

    /**
     * Checks that nothing is missing.
     *
     * @param code not blank
     * @param text not blank
     * @param why not blank
     * @param source not blank
     */
    public Caution {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(source, "source");
        if (!Stream.of(code, text, why, source).allMatch(part -> Words.isLine(part) && !part.isBlank())) {
            throw Refusal.of(
                    "a caution",
                    "name",
                    "have a code, a text, a reason and a source",
                    Stream.of(code, text, why, source).map(Words::quoted).collect(Collectors.joining(", ")));
        }
    }

    /**
     * {@return a caution by its code}
     *
     * @param code such as {@code STOPPED_CUT}
     * @throws IllegalArgumentException if there is none of that code
     */
    public static Caution known(String code) {
        Caution known = Known.BY_CODE.get(Objects.requireNonNull(code, "code"));
        if (known == null) {
            throw Refusal.of("caution", "unknown", "be a code of a caution, such as STOPPED_CUT", Words.quoted(code));
        }
        return known;
    }

    /**
     * {@return a caution as the maker writes it: one by its code, else a sentence of the maker's own, whose code is {@code OWN}}
     *
     * @param words a code, such as {@code STOPPED_CUT}, or what to do, 1 to 300 characters on one line
     */
    public static Caution given(String words) {
        String line = Words.line(words, "a caution", LONGEST);
        return Known.BY_CODE.containsKey(line)
                ? known(line)
                : new Caution(OWN, line, "the maker's own rule", "the maker");
    }

    /** {@return what {@link #given} makes this caution of: its code, or the sentence of the maker's own} */
    public String written() {
        return code.equals(OWN) ? text : code;
    }

    @Override
    public Form<Caution> form() {
        return FORM;
    }

    /** Returns the sentence and the reason, such as {@code Extract the dust (it harms the lungs)} */
    @Override
    public String toString() {
        return text(style());
    }

    /**
     * Every caution that does not depend on figures, each in one place. A source names the general guidance that the instruction
     * is in, none of which is about necks; what none of them has is common practice or follows from the geometry of the cut.
     */
    private static final class Known {
        private static final String PRACTICE = "common practice";
        private static final String GEOMETRY = "geometry of the cut; common practice";

        static final Caution INSTRUCTIONS = new Caution(
                "MACHINE_FIRST",
                "The machine's own instructions, guards and local rules come first",
                "they know the machine, these figures do not",
                PRACTICE);

        // Router table and spindle shaper.

        static final Caution CLIMB_FEED = new Caution(
                "CLIMB_FEED",
                "Seen from above, with the fence beyond a cutter that turns anticlockwise, feed from right to left: the cut pulls"
                        + " the work to the fence; check the arrow on the machine, for a reversed spindle reverses the feed",
                "fed the other way the cutter throws the work and pulls the hand in",
                GEOMETRY);
        static final Caution FULL_SLOT = new Caution(
                "FULL_SLOT",
                "A full-width slot cuts both walls, one of them with the feed: light passes, pressed to the fence by pads or"
                        + " featherboards",
                "the wall cut with the feed can grab the work",
                GEOMETRY);
        static final Caution SECOND_PASS = new Caution(
                "SECOND_PASS",
                "Widen only on the wall away from the fence: a slot too far from it with the blank turned end for end, the fence"
                        + " as it is; a slot too near it with the same edge, the fence away by twice the offset",
                "the wall at the fence alone is a climb cut; stops change places when the blank is turned",
                GEOMETRY);
        static final Caution STOPPED_CUT = new Caution(
                "STOPPED_CUT",
                "Clamp a stop behind and a stop in front, take a cutter that cuts on its end, and lower the blank against the rear"
                        + " stop with push blocks, hands outside the stops",
                "a piece that meets the cutter without a rear stop is thrown back",
                "HSE WIS18 for the stops; common practice");
        static final Caution RUN_OUT = new Caution(
                "RUN_OUT",
                "Where the neck allows it, run the channel out at the hidden end, or raise the cutter into the clamped work",
                "then nothing is lowered onto a turning cutter",
                PRACTICE);
        static final Caution END_OF_CUT = new Caution(
                "END_OF_CUT",
                "At the end press the work down and still, use the stop button, wait until the cutter stops, then lift; isolate"
                        + " after that, for isolating first can switch off a brake",
                "lifted while it turns, the work can be thrown and the hand pulled in",
                "HSE on braking; common practice");
        static final Caution HANDS = new Caution(
                "HANDS",
                "No hand within 100 mm (4 in) of a cutter or 300 mm (12 in) of a large shaper block, or over the line of the slot:"
                        + " false fence, pressure pads, ring or bridge guard",
                "a hand that slips goes toward the cutter",
                "HSE WIS18 for fence and pads; common practice");
        static final Caution ISOLATE = new Caution(
                "ISOLATE",
                "Isolate the machine before touching cutter, fence or gauges, and take the key out before power is on",
                "a machine that starts takes the hand with it, and a key left in flies",
                "CCOHS; common practice for the fence");
        static final Caution EYES_EARS = new Caution(
                "EYES_EARS",
                "Protect eyes and ears; no gloves, loose sleeves or rings near a turning tool",
                "chips fly, and the tool winds in what hangs loose",
                "CCOHS");
        static final Caution CREEP = new Caution(
                "CUTTER_CREEP",
                "Clean collet, shank in to its mark but not on the bottom, tight; read the depth after every pass",
                "a cutter that creeps cuts deeper than set",
                PRACTICE);
        static final Caution CUTTER_SPEED =
                new Caution("CUTTER_SPEED", "No faster than the mark on the cutter", "its edges can fly off", "OSHA");
        static final Caution NARROW_STOCK = new Caution(
                "NARROW_STOCK",
                "A blank under 300 mm (12 in) long or 40 mm (1 5/8 in) wide, or any that can tip: in a carrier with end stops",
                "it tips into the cutter, and there is nothing to hold it by",
                PRACTICE);
        static final Caution DEPTH_PER_PASS = new Caution(
                "DEPTH_PER_PASS",
                "No pass deeper than half the cutter's diameter, a quarter in hardwood",
                "a deep pass burns, bends the cutter and snatches",
                PRACTICE);
        static final Caution FLAT_FACE = new Caution(
                "FLAT_FACE",
                "The glue face flat on the table; of a bowed blank the hollow side",
                "it cuts too shallow where it is off the table",
                PRACTICE);
        static final Caution TAPE = new Caution(
                "TAPE_SLIPS",
                "Where tape holds the work: clean faces, enough of it, and screws or pins in the waste besides",
                "double-sided tape slips or lifts without warning",
                PRACTICE);
        static final Caution SHORT_FLUTES = new Caution(
                "SHORT_FLUTES",
                "This slot is deeper than the cutter's flutes are long: take another cutter",
                "the shank rubs, burns and spoils the walls",
                PRACTICE);
        static final Caution CUTTER_TOO_WIDE = new Caution(
                "CUTTER_TOO_WIDE",
                "This cutter makes the slot wider than the rod by more than 0.2 mm (8 thou)",
                "a loose rod rattles; tape, heat-shrink or a fillet holds it",
                PRACTICE);
        static final Caution THIN_FLOOR = new Caution(
                "THIN_FLOOR",
                "Less than 3 mm (1/8 in) of the blank is left under the channel",
                "it breaks through, or bulges and splits at the adjuster",
                PRACTICE);

        // Other machines and tools.

        static final Caution BAND_SAW = new Caution(
                "BAND_SAW",
                "Band saw: guard down to the work, blade tensioned, a cradle so that the blank cannot roll, a push stick, no finger"
                        + " in the blade's line; let the blade stop before clearing offcuts",
                "a blank that rolls takes the hand into the blade",
                "HSE WIS31 and on band saws; common practice for the cradle");
        static final Caution TABLE_SAW = new Caution(
                "TABLE_SAW",
                "Table saw: work clamped to a sled or a tall fence, never freehand; blade guard and riving knife; a push stick of"
                        + " 450 mm (18 in) for the last 300 mm (12 in); body out of the blade's line; grooves on a guarded"
                        + " router or moulder instead",
                "work that binds is thrown back along the blade's line",
                "HSE WIS16 and on circular saws");
        static final Caution PLANER = new Caution(
                "PLANER",
                "Machine planer: nothing under 300 mm (12 in) long, push blocks, never the feather end of a slope first",
                "a short or thin end is caught by the cutter block",
                PRACTICE);
        static final Caution SLOPES = new Caution(
                "SLOPES",
                "Clamp both slopes together before planing, their edges in line",
                "a feather edge that is not held lifts and splits",
                PRACTICE);
        static final Caution SANDING = new Caution(
                "SANDING",
                "Belt or disc sander: work on the side that goes down, small pieces in a holder, the idle run guarded, extraction"
                        + " on",
                "the side that goes up lifts the work and throws it",
                "OSHA; CCOHS");
        static final Caution DRILLING = new Caution(
                "DRILLING",
                "Drill tuner holes with the head clamped over scrap, before its outline is thin; stop before clearing chips; no"
                        + " gloves",
                "a bit that catches turns the work",
                "CCOHS; common practice");
        static final Caution EDGE_TOOLS = new Caution(
                "EDGE_TOOLS",
                "Hold the work by a clamp, with both hands behind the edge of knife, chisel or scraper",
                "a hand that holds the work is where the edge slips to",
                PRACTICE);
        static final Caution STICKERS = new Caution(
                "STICKERS",
                "Rest the stock on sticks with air on all faces, away from a heater, and cut it only when it is at rest",
                "stock that still moves closes on a saw blade and goes out of true",
                PRACTICE);

        // What is breathed and touched.

        static final Caution DUST = new Caution(
                "DUST",
                "Extract the dust at the tool and wear a mask besides, with every wood; no blowing off",
                "wood dust causes cancer and asthma; limits in Great Britain: 3 mg/m3 of hardwood or mixed, 5 of softwood; some"
                        + " woods sensitise, and then traces act",
                "IARC volume 62; HSE WIS30 and on wood dust");
        static final Caution CARBON_DUST = new Caution(
                "CARBON_DUST",
                "Saw carbon bars wet or under suction, with a mask, and with gloves where no tool turns",
                "the dust itches, and it conducts: keep it away from motors",
                PRACTICE);
        static final Caution EPOXY = new Caution(
                "EPOXY",
                "Epoxy: nitrile gloves, no skin contact, fresh air, thin layers instead of a thick pot",
                "the allergy it causes stays; a thick pot heats",
                "EU-OSHA on epoxy; common practice");
        static final Caution CYANOACRYLATE = new Caution(
                "CYANOACRYLATE",
                "Cyanoacrylate: glasses and fresh air; skin that sticks: warm soapy water, roll apart, do not pull; in an eye:"
                        + " wash, see a doctor",
                "it bonds skin in seconds",
                "NHS on cyanoacrylate");
        static final Caution HOT_GLUE = new Caution(
                "HOT_GLUE",
                "Hot glue at 60 to 65 degC: a water bath that cannot tip, a long brush",
                "glue at that heat scalds and sticks",
                PRACTICE);
        static final Caution FINISH = new Caution(
                "FINISH",
                "Solvent: fresh air, no flame; oily rags flat outdoors, or wetted in a metal tin with a lid",
                "oily rags light themselves",
                "UK fire services");

        // Steps at the bench that spoil a neck, or hurt.

        static final Caution SLIDING_JOINT = new Caution(
                "SLIDING_JOINT",
                "Stop both ends of a sloped joint before clamping down",
                "glue lets it slide under the clamp",
                PRACTICE);
        static final Caution SAW_CLEAR = new Caution(
                "SAW_CLEAR",
                "Saw clear of the lines of the head",
                "wood cut away below the face of the head cannot be put back",
                PRACTICE);
        static final Caution ROD_TEST = new Caution(
                "ROD_TEST",
                "Test the rod both ways before it is laid in",
                "once the fingerboard is on it cannot be changed",
                PRACTICE);
        static final Caution GLUE_OFF_ROD = new Caution(
                "GLUE_OFF_ROD",
                "Keep glue off the rod, and pin the fingerboard so that it cannot slide",
                "a rod that is glued in does not turn",
                PRACTICE);
        static final Caution PIN_THE_BOARD = new Caution(
                "PIN_THE_BOARD",
                "Pin the fingerboard so that it cannot slide",
                "glue lets it slide under the clamps",
                PRACTICE);
        static final Caution GLUED_BAR = new Caution(
                "GLUED_BAR",
                "Roughen and clean the bar, and glue all its three faces with epoxy, its top flush with the glue face",
                "a bar that is not bonded all along adds nothing, and one that stands proud holds the board off",
                PRACTICE);
        static final Caution STRIP_JOINTS = new Caution(
                "STRIP_JOINTS",
                "Plane each joint just before gluing, and alternate the growth rings",
                "a surface that has aged bonds less; strips that all cup one way pull the stack with them",
                PRACTICE);
        static final Caution ROLLER_HOLES = new Caution(
                "ROLLER_HOLES",
                "Drill for the rollers from both sides first, then rout the slots, while the head is square",
                "a bit that meets a slot wanders, and a shaped head gives nothing to hold it by",
                PRACTICE);
        static final Caution FRETS = new Caution(
                "FRETS",
                "Glasses for cutting fret wire; press frets with the neck in soft cauls",
                "cut ends fly, and their points are sharp",
                PRACTICE);
        static final Caution ROD_AT_PITCH = new Caution(
                "ROD_AT_PITCH",
                "Read the relief at pitch. Loosen the rod at pitch. Tighten it with the strings slackened, an eighth of a turn at a"
                        + " time, then retune, wait and read",
                "thread and wood turn more easily with the strings slack",
                PRACTICE);
        static final Caution ROD_TORQUE = new Caution(
                "ROD_TORQUE",
                "Stop at a torque of 1 N m for 1 kN of rod force, 1.5 N m for 1.5 kN, on a 5 mm (3/16 in) thread; stop where it squeaks or"
                        + " jumps",
                "the thread strips or the rod breaks, 0.2 F d being its torque",
                "thread mechanics; the 0.2 from memory");
        static final Caution STRINGS = new Caution(
                "STRINGS",
                "Glasses for bringing up strings, cut ends short, face out of their line",
                "a string that breaks whips back",
                PRACTICE);

        static final List<Caution> ALL = List.of(
                INSTRUCTIONS,
                CLIMB_FEED,
                FULL_SLOT,
                SECOND_PASS,
                STOPPED_CUT,
                RUN_OUT,
                END_OF_CUT,
                HANDS,
                ISOLATE,
                EYES_EARS,
                CREEP,
                CUTTER_SPEED,
                NARROW_STOCK,
                DEPTH_PER_PASS,
                FLAT_FACE,
                TAPE,
                SHORT_FLUTES,
                CUTTER_TOO_WIDE,
                THIN_FLOOR,
                BAND_SAW,
                TABLE_SAW,
                PLANER,
                SLOPES,
                SANDING,
                DRILLING,
                EDGE_TOOLS,
                STICKERS,
                DUST,
                CARBON_DUST,
                EPOXY,
                CYANOACRYLATE,
                HOT_GLUE,
                FINISH,
                SLIDING_JOINT,
                SAW_CLEAR,
                ROD_TEST,
                GLUE_OFF_ROD,
                PIN_THE_BOARD,
                GLUED_BAR,
                STRIP_JOINTS,
                ROLLER_HOLES,
                FRETS,
                ROD_AT_PITCH,
                ROD_TORQUE,
                STRINGS);

        private static final Map<String, Caution> BY_CODE =
                ALL.stream().collect(Collectors.toUnmodifiableMap(Caution::code, Function.identity()));

        private Known() {}
    }
}
