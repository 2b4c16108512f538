package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.units.ShopUnits;

/** The kinds of length that neck files are made of. The outer limits catch slips of a unit, nothing finer. */
final class Lengths {

    /** More than 0, at most 3 m: no neck is longer. */
    static final QuantityKind<Length> SIZE =
            QuantityKind.length().moreThan(ShopUnits.mm(0)).atMost(ShopUnits.mm(3000));

    /** 0 or more, at most 3 m. */
    static final QuantityKind<Length> SIZE_OR_NOTHING =
            QuantityKind.length().atLeast(ShopUnits.mm(0)).atMost(ShopUnits.mm(3000));

    /** Either sign, at most 3 m either way. */
    static final QuantityKind<Length> EITHER_WAY =
            QuantityKind.length().atLeast(ShopUnits.mm(-3000)).atMost(ShopUnits.mm(3000));

    /** More than 0, at most 100 m: the radius of a crown. */
    static final QuantityKind<Length> RADIUS =
            QuantityKind.length().moreThan(ShopUnits.mm(0)).atMost(ShopUnits.mm(100_000));

    /** More than 0, at most 6 mm: the diameter of a string; 14 mm is a slip for 14 thou. */
    static final QuantityKind<Length> STRING = QuantityKind.length()
            .moreThan(ShopUnits.mm(0))
            .atMost(ShopUnits.mm(6))
            .suchAs("0.43 mm or 17 thou");

    private Lengths() {}
}
