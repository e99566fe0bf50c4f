package easewright.check;

import easewright.ease.EaseSheet;
import easewright.measure.GarmentMeasures;
import easewright.pattern.Pattern;

/** A pattern, what it measures, and the ease it has. */
record Sight(Pattern pattern, GarmentMeasures measures, EaseSheet sheet) {}
