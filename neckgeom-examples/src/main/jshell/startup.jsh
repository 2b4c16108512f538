// What neckgeom-examples/neckshell has at hand before the first line, beside JShell's own imports.

import org.neckgeom.board.*;
import org.neckgeom.budget.*;
import org.neckgeom.channel.*;
import org.neckgeom.neck.*;
import org.neckgeom.fault.*;
import org.neckgeom.fixture.*;
import org.neckgeom.form.*;
import org.neckgeom.head.*;
import org.neckgeom.heel.*;
import org.neckgeom.measure.*;
import org.neckgeom.order.*;
import org.neckgeom.page.*;
import org.neckgeom.plan.*;
import org.neckgeom.search.*;
import org.neckgeom.shape.*;
import org.neckgeom.shop.*;
import org.neckgeom.solid.*;
import org.neckgeom.state.*;
import org.neckgeom.stock.*;
import org.neckgeom.strength.*;
import org.neckgeom.sweep.*;
import org.neckgeom.table.*;
import org.neckgeom.template.*;
import org.neckgeom.units.*;

import org.neckgeom.examples.neck.NeckFile;

import static org.neckgeom.units.LengthStyle.DECIMAL_INCHES;
import static org.neckgeom.units.LengthStyle.INCH_FRACTIONS;
import static org.neckgeom.units.LengthStyle.MILLIMETRES;
import static org.neckgeom.units.ShopUnits.*;

// Called once, printIn(INCH_FRACTIONS) makes every println follow; printIn() lets each answer print as it was asked.
LengthStyle printedIn = null;
void printIn(LengthStyle style) { printedIn = style; }
void printIn() { printedIn = null; }

void println(Object answer) { System.out.println(org.neckgeom.examples.shell.Spoken.in(printedIn, answer)); }
void println() { System.out.println(); }

void help() { println(org.neckgeom.examples.shell.Help.screen()); }
void help(String topic) { println(org.neckgeom.examples.shell.Help.topic(topic)); }
