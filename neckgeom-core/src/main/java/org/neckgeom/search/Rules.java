package org.neckgeom.search;

import java.util.List;
import java.util.function.Function;

/** Limits that are measured together, such as the checks of one plan; as many margins as names, in their order. */
record Rules<D>(List<String> names, Function<? super D, List<SearchMargin>> margins) {}
