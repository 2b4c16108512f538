package org.neckgeom.table;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.measure.Reading;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** A noun with a key of each sort. */
final class Box extends Noun<Box> {

    static final Table<Box> TABLE = Table.of("box", "a box", Box::new);

    static final Key<Box, String> NAME = TABLE.needed("name", Types.TEXT, "what the box is called");
    static final Key<Box, Integer> SIDES = TABLE.needed("sides", Types.whole(3, 12), "how many sides");
    static final Key<Box, Amount<Length>> WALL =
            TABLE.usual("wall thickness", Types.SIZE, ShopUnits.mm(8), "of each side; 8 mm when left out");
    static final Key<Box, Boolean> LID = TABLE.usual("with lid", Types.YES_OR_NO, false, "whether it has a lid; no");
    static final Key<Box, List<Double>> RATIOS =
            TABLE.optional("ratios", Types.list(Types.number(0, 1), 2, 3), "side ratios");
    static final Key<Box, Reading<Length>> READ =
            TABLE.optional("read", Types.reading(Types.SIZE, 3), "its width as read");
    static final Key<Box, Lock> LOCK = TABLE.optional("lock", Types.group(Lock.TABLE), "the lock, if any");
    static final Key<Box, Amount<Length>> HINGE = TABLE.optional("hinge", Types.SIZE, "its length");
    static final Key<Box, Amount<Length>> STRAP = TABLE.optional("strap", Types.SIZE, "its length, instead of a hinge");

    static {
        TABLE.atMostOne(HINGE, STRAP);
        TABLE.moved(Moves.none().and("pins", "lock.pins").and("side count", "sides"));
    }

    private static final Form<Box> FORM = Form.<Box>of("box").finds("box", "a box");

    private Box(Values<Box> values) {
        super(values);
        if (values.at(SIDES) == 7) {
            throw values.refused(SIDES, "seven", "not be 7", 7);
        }
    }

    static Box of(String name, int sides) {
        return new Box(TABLE.values().with(NAME, name).with(SIDES, sides));
    }

    static Box unfinished() {
        return new Box(TABLE.values().with(LID, true));
    }

    Box wall(Quantity<Length> thick) {
        return new Box(values().amount(WALL, thick));
    }

    Box hinge(Quantity<Length> length) {
        return new Box(values().amount(HINGE, length));
    }

    Box strap(Quantity<Length> length) {
        return new Box(values().amount(STRAP, length));
    }

    Amount<Length> wall() {
        return values().at(WALL);
    }

    int pins() {
        return values().find(LOCK).map(Lock::pins).orElse(0);
    }

    @Override
    public Form<Box> form() {
        return FORM;
    }

    /** A noun in a noun. */
    static final class Lock extends Noun<Lock> {

        static final Table<Lock> TABLE = Table.of("lock", "a lock", Lock::new);
        static final Key<Lock, Integer> PINS = TABLE.needed("pins", Types.whole(1, 9), "its pins");

        private static final Form<Lock> FORM = Form.<Lock>of("lock").finds("lock", "a lock");

        private Lock(Values<Lock> values) {
            super(values);
        }

        int pins() {
            return values().at(PINS);
        }

        @Override
        public Form<Lock> form() {
            return FORM;
        }
    }
}
