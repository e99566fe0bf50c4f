package easewright.pattern;

/** How much a finding matters. */
public enum Severity {
    NOTE,
    CAUTION,
    FAULT
}
