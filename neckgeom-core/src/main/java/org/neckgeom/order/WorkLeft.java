package org.neckgeom.order;

import java.util.List;
import java.util.Set;

/**
 * The operations left to do, as search and plan need them.
 *
 * @param operations in their usual order
 * @param start what holds before the first of them
 * @param notAskedFor conditions that only operations this neck does not have put, so that none asks for them any more
 * @param kept the orders that must be kept
 */
record WorkLeft(List<Operation> operations, Set<Condition> start, Set<Condition> notAskedFor, List<KeptOrder> kept) {}
