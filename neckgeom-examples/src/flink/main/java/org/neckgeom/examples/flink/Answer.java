package org.neckgeom.examples.flink;

/** What comes back from the engine: a plain value that it can send and sort. */
public class Answer {

    /** Place in the sweep. */
    public long index;

    /** Least wood in mm, 0 where there is none. */
    public double woodMm;

    /** Why there is no figure, or empty. */
    public String refusal = "";

    /** Made by the engine, which fills the fields. */
    public Answer() {}

    Answer(long index, double woodMm, String refusal) {
        this.index = index;
        this.woodMm = woodMm;
        this.refusal = refusal;
    }
}
