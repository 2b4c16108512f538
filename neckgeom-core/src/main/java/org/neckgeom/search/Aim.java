package org.neckgeom.search;

import java.util.function.Function;
import org.neckgeom.units.Amount;

/** What shall be least, or greatest: {@code sign} 1 or -1 makes it least. */
record Aim<D>(String name, int sign, Function<? super D, ? extends Amount<?>> of) {}
