package org.neckgeom.channel;

/** Small pieces of text that several answers share. */
final class Words {

    private Words() {}

    /** Returns {@code 3 passes} or {@code 1 pass}. */
    static String count(int number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }
}
