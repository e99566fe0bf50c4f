package easewright.check;

import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.pattern.Pattern;

/** A pattern, what it measures, and the tables to judge it by. */
record Sight(Pattern pattern, GarmentMeasures measures, EaseTables tables) {}
