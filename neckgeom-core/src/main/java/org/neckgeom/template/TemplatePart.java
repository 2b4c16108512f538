package org.neckgeom.template;

import java.util.Locale;

/** One view of a neck's templates. */
public enum TemplatePart {
    /** From the front: edges, frets, strings, channel. */
    PLAN,
    /** From the side: glue face, back, board, channel, scarf, head, heel face. */
    SIDE,
    /** Across at four stations, seen from the body: back, board and channel. */
    SECTIONS,
    /** The head's face, turned flat: its outline or the room for it, nut line, posts, wings, scarf and veneer lines. */
    HEAD,
    /** The head's back, turned flat: what lies on the other side of its face, to lay on the back. */
    HEAD_BACK,
    /** The heel's dovetail from the glue face and from its end, or its tenon from the side with the holes. */
    JOINT,
    /** The board of a scarfed head round its saw marks, glue face up: those on its face and on its back, numbered. */
    SAW_MARKS,
    /** A jig in the channel: its edges, pins and centreline, of a jig's own template only. */
    JIG;

    /** Returns such as {@code side} or {@code saw marks}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
