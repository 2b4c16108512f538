/** A program that uses the library: one line. */
module shop.check {
    requires org.neckgeom.core;
}
