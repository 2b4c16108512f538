package org.neckgeom.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.strength.RodForce;
import org.neckgeom.text.Names;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;

/** What a check found, as data; its outcome follows from it. */
public sealed interface Finding {

    /** {@return how the check is decided; derived from the rest} */
    Outcome outcome();

    /** {@return the value found, with its unit; nothing where there is none, or it is an estimate in a verdict} */
    default Optional<Amount<?>> value() {
        return Optional.empty();
    }

    /** {@return the limits it is held against; nothing where they are no range of values} */
    default Optional<Limits<?>> limits() {
        return Optional.empty();
    }

    /** {@return the measured value, its standard uncertainty, its limits and the decision; nothing where nothing was measured} */
    default Optional<Verdict<?>> verdict() {
        return Optional.empty();
    }

    /** {@return the conformance probability: that the limits are kept, in [0, 1]; nothing where it is not known} */
    default OptionalDouble conformanceProbability() {
        return OptionalDouble.empty();
    }

    /**
     * The slot: decided by {@link SlotVerdict} alone.
     *
     * @param by the one decision
     * @param allowed limits on the slot's offset
     */
    record Decided(SlotVerdict by, Limits<?> allowed) implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param by the one decision
         * @param allowed limits on the slot's offset
         */
        public Decided {
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(allowed, "allowed");
        }

        @Override
        public Outcome outcome() {
            return by.mayCut() ? Outcome.OK : by.isStop() ? Outcome.STOP : Outcome.OPEN;
        }

        @Override
        public Optional<Limits<?>> limits() {
            return Optional.of(allowed);
        }

        @Override
        public OptionalDouble conformanceProbability() {
            return by.chance();
        }
    }

    /**
     * A measured value against its limits: within is OK, undecided is open.
     *
     * @param decided value, uncertainty, limits
     * @param outside what a value outside means: open where the step shown puts it right, else stop
     */
    record Measured(Verdict<?> decided, Outcome outside) implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param decided value, uncertainty, limits
         * @param outside what a value outside means: open where the step shown puts it right, else stop
         */
        public Measured {
            Objects.requireNonNull(decided, "decided");
            Objects.requireNonNull(outside, "outside");
        }

        @Override
        public Outcome outcome() {
            return switch (decided.call()) {
                case WITHIN -> Outcome.OK;
                case UNDECIDED -> Outcome.OPEN;
                case OUTSIDE -> outside;
            };
        }

        @Override
        public Optional<Amount<?>> value() {
            return Optional.of(decided.estimate().value());
        }

        @Override
        public Optional<Limits<?>> limits() {
            return Optional.of(decided.limits());
        }

        @Override
        public Optional<Verdict<?>> verdict() {
            return Optional.of(decided);
        }

        @Override
        public OptionalDouble conformanceProbability() {
            return OptionalDouble.of(decided.probability());
        }
    }

    /**
     * A computed value against its limits, which it may meet.
     *
     * @param found the value
     * @param allowed its limits, of the same kind of quantity
     * @param outside what a value outside means: open where the step shown puts it right, else stop
     */
    record Computed(Amount<?> found, Limits<?> allowed, Outcome outside) implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param found the value
         * @param allowed its limits, of the same kind of quantity
         * @param outside what a value outside means: open where the step shown puts it right, else stop
         */
        public Computed {
            Objects.requireNonNull(found, "found");
            Objects.requireNonNull(allowed, "allowed");
            Objects.requireNonNull(outside, "outside");
        }

        @Override
        public Outcome outcome() {
            return allowed.allowLibrary(found.libraryValue()) ? Outcome.OK : outside;
        }

        @Override
        public Optional<Amount<?>> value() {
            return Optional.of(found);
        }

        @Override
        public Optional<Limits<?>> limits() {
            return Optional.of(allowed);
        }
    }

    /**
     * What is left of something of which some must be left: more than 0 is OK.
     *
     * @param left 0 or less where nothing is left
     */
    record Remaining(Amount<?> left) implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param left 0 or less where nothing is left
         */
        public Remaining {
            Objects.requireNonNull(left, "left");
        }

        @Override
        public Outcome outcome() {
            return left.libraryValue() > 0 ? Outcome.OK : Outcome.STOP;
        }

        @Override
        public Optional<Amount<?>> value() {
            return Optional.of(left);
        }
    }

    /**
     * A computed value with the probability that its limits are kept, which must be high enough.
     *
     * @param found the value as designed
     * @param allowed its limits
     * @param probability that the limits are kept, in [0, 1]
     * @param wanted least probability that is OK, in [0, 1]
     * @param outside what a value as designed outside its limits means
     */
    record Likely(Amount<?> found, Limits<?> allowed, double probability, double wanted, Outcome outside)
            implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param found the value as designed
         * @param allowed its limits
         * @param probability that the limits are kept, in [0, 1]
         * @param wanted least probability that is OK, in [0, 1]
         * @param outside what a value as designed outside its limits means
         */
        public Likely {
            Objects.requireNonNull(found, "found");
            Objects.requireNonNull(allowed, "allowed");
            Objects.requireNonNull(outside, "outside");
            probability = ratio("probability", probability);
            wanted = ratio("wanted", wanted);
        }

        @Override
        public Outcome outcome() {
            return !allowed.allowLibrary(found.libraryValue())
                    ? outside
                    : probability >= wanted ? Outcome.OK : Outcome.OPEN;
        }

        @Override
        public Optional<Amount<?>> value() {
            return Optional.of(found);
        }

        @Override
        public Optional<Limits<?>> limits() {
            return Optional.of(allowed);
        }

        @Override
        public OptionalDouble conformanceProbability() {
            return OptionalDouble.of(probability);
        }
    }

    private static double ratio(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw Refusal.of(name, "range", "be from 0 to 1", Numbers.plain(value));
        }
        return value + 0.0;
    }

    /** What a check waits for. */
    enum Missing {
        /** The offset of the slot, read on the neck. */
        SLOT_OFFSET,
        /** The depth of the channel as cut. */
        CHANNEL_DEPTH,
        /** A rod that can be adjusted. */
        ADJUSTABLE_ROD,
        /** The length of a heel block. */
        HEEL_BLOCK_LENGTH,
        /** A figure of the wood, such as its shrinkage. */
        WOOD_FIGURE
    }

    /**
     * Several values that all must keep their limits: the worst decides.
     *
     * @param each one or more
     */
    record Together(List<Computed> each) implements Finding {
        /**
         * Keeps a copy.
         *
         * @param each one or more
         */
        public Together {
            each = Names.all(each, "each");
        }

        @Override
        public Outcome outcome() {
            return each.stream().map(Computed::outcome).max(Outcome::compareTo).orElse(Outcome.OK);
        }
    }

    /**
     * The force by which the rod sets the relief: within its reach is OK, else open.
     *
     * @param force as estimated
     */
    record Reach(RodForce force) implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param force as estimated
         */
        public Reach {
            Objects.requireNonNull(force, "force");
        }

        @Override
        public Outcome outcome() {
            return force.reach() == RodForce.Reach.CAN ? Outcome.OK : Outcome.OPEN;
        }
    }

    /**
     * What contradicts each other: none is OK.
     *
     * @param count how many, 0 or more
     * @param hasRemedy whether each can be put right: then open, else stop
     */
    record Conflicting(int count, boolean hasRemedy) implements Finding {
        @Override
        public Outcome outcome() {
            return count == 0 ? Outcome.OK : hasRemedy ? Outcome.OPEN : Outcome.STOP;
        }
    }

    /**
     * Not known yet: open.
     *
     * @param waitingFor what must be read or given
     * @param allowed the limits it will be held against, where there are any
     */
    record Pending(Missing waitingFor, Optional<Limits<?>> allowed) implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param waitingFor what must be read or given
         * @param allowed the limits it will be held against, where there are any
         */
        public Pending {
            Objects.requireNonNull(waitingFor, "waitingFor");
            Objects.requireNonNull(allowed, "allowed");
        }

        @Override
        public Outcome outcome() {
            return Outcome.OPEN;
        }

        @Override
        public Optional<Limits<?>> limits() {
            return allowed;
        }
    }

    /**
     * Good inputs without an answer: stop.
     *
     * @param why what has no answer
     */
    record NoSolution(Fault why) implements Finding {
        /**
         * Checks that nothing is missing.
         *
         * @param why what has no answer
         */
        public NoSolution {
            Objects.requireNonNull(why, "why");
        }

        @Override
        public Outcome outcome() {
            return Outcome.STOP;
        }
    }
}
