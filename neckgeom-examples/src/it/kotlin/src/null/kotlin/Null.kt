import javax.measure.quantity.Length
import org.neckgeom.measure.Limits

/** Must not compile: the packages are null-marked, and no argument may be null. */
fun main() {
    println(Limits.within<Length>(null))
}
