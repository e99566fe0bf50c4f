package easewright.print;

import easewright.pattern.Finding;
import easewright.text.Words;

/** Findings in words. */
public final class FindingWords {
    private FindingWords() {}

    /** A finding in words, with the piece before it where the words do not name it themselves. */
    public static String sentence(Finding finding, Words words) {
        String said = words.of(finding);
        return said.contains(finding.piece()) ? said : finding.piece() + ": " + said;
    }
}
