package org.neckgeom.validation;

/** Where expected figures come from, outside this project. */
public enum Source {
    NIST_SP_811("NIST SP 811", "Guide for the Use of the International System of Units, 2008, Appendix B"),
    ISO_16("ISO 16", "Acoustics, standard tuning frequency, 1975"),
    OPENSTAX("OpenStax Physics", "University Physics, Volume 1, sections 12.3, 16.3 and 16.6"),
    GUM("GUM", "JCGM 100:2008, Guide to the expression of uncertainty in measurement"),
    GUM_S1("GUM Supplement 1", "JCGM 101:2008, Propagation of distributions using a Monte Carlo method"),
    JCGM_106("JCGM 106", "JCGM 106:2012, The role of measurement uncertainty in conformity assessment"),
    ISO_14253("ISO 14253-1", "Decision rules for verifying conformity or nonconformity with specifications"),
    ISO_286("ISO 286-1", "ISO code system for tolerances on linear sizes, 2010, Table 1"),
    EA_4_02("EA-4/02", "Evaluation of the uncertainty of measurement in calibration, example S2"),
    NIST_TN_1900("NIST TN 1900", "Simple guide for evaluating and expressing uncertainty, 2015, example E13"),
    DEM_ES_011("DEM-ES-011", "report of a national measurement institute on software for uncertainty, section 9.2"),
    WELCH("course note", "an exercise on effective degrees of freedom, ENGR224"),
    CAPABILITY("process capability", "worked capability figures in an open test suite for uncertainty software"),
    NIST_STRD("NIST StRD", "Statistical Reference Datasets, univariate summary statistics"),
    WOOD_HANDBOOK("Wood Handbook", "Forest Products Laboratory, FPL-GTR-190, 2010"),
    AISC_360("AISC 360", "Specification for structural steel buildings, Commentary, second-order benchmark cases"),
    A228("ASTM A228", "music wire, least strength 2060/d^0.163 MPa as in two engineering tables"),
    MECHANICS("textbook", "R. C. Hibbeler, Mechanics of Materials, composite beams"),
    SHOP_FORMULAS("shop formulas", "cutting-tool data sheets: speed, feed, chip load"),
    GAUGE_BLOCKS("gauge-block notes", "makers' notes on stacking 81-piece inch and metric sets"),
    BEAMS("beam theory", "closed forms of Euler and Bernoulli's beam, evaluated with 20 digits"),
    MPMATH("mpmath", "mpmath 1.3.0 with 20 to 60 digits; the script is kept beside the table"),
    NUMPY("numpy", "simulation with a seed; the script is kept beside the table"),
    DECIMAL("decimal arithmetic", "java.math.BigDecimal"),
    INDRIYA("Indriya", "Indriya 2.2.4, conversions by rational numbers; our own do not use them"),
    HIPPARCHUS("Hipparchus", "Hipparchus 4.0.3: 40-digit arithmetic, automatic differentiation, linear solver"),
    STATISTICS("Commons Statistics", "Apache Commons Statistics 1.3, distributions"),
    JTS("JTS", "JTS Topology Suite 1.20.0, plane geometry"),
    SCIPY("scipy", "numpy and scipy; the scripts are kept beside the table"),
    SCRIPT("script", "double precision; the script is kept beside the table"),
    TIMOSHENKO("Timoshenko 1925", "S. Timoshenko, Analysis of bi-metal thermostats, 1925, from memory"),
    SESSIONS("simulated sessions", "invented machines whose truth is known to the test alone"),
    TRADE("the trade", "general texts on making necks: tutorials, build diaries, repair articles");

    private final String label;
    private final String citation;

    Source(String label, String citation) {
        this.label = label;
        this.citation = citation;
    }

    public String label() {
        return label;
    }

    public String citation() {
        return citation;
    }
}
