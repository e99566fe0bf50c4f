package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file cut off inside its document type declaration is refused without a word from the JDK. */
class DoctypeTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE svg",
                "<!DOCTYPE svg [",
                "<!DOCTYPE svg [ ]",
                "<!DOCTYPE svg [ %",
                "<!DOCTYPE svg [ <!ENTITY",
                "<!DOCTYPE svg [ <!ENTITY a \"b\">",
                "<?xml version='1.0'?><!-- <!DOCTYPE --><!DOCTYPE svg [ <!ATTLIST"
            })
    void cutOffInsideTheDeclaration(String text) {
        for (Charset charset : new Charset[] {StandardCharsets.UTF_8, StandardCharsets.UTF_16}) {
            PrintStream usual = System.err;
            ByteArrayOutputStream heard = new ByteArrayOutputStream();
            System.setErr(new PrintStream(heard, true, StandardCharsets.UTF_8));
            try {
                assertThatThrownBy(() -> SafeXml.read(text.getBytes(charset), "skirt.svg"))
                        .isInstanceOfSatisfying(
                                SvgProblem.class, p -> assertThat(p.code()).isEqualTo("not-well-formed"));
            } finally {
                System.setErr(usual);
            }
            assertThat(heard.toString(StandardCharsets.UTF_8)).isEmpty();
        }
    }

    @Test
    void wholeDeclarationsAreRead() throws SvgProblem {
        for (String whole : new String[] {
            "<!DOCTYPE svg><svg xmlns='http://www.w3.org/2000/svg'/>",
            "<!-- <!DOCTYPE [ --><svg xmlns='http://www.w3.org/2000/svg'/>",
            "<!DOCTYPE svg [ <!-- ' --> <!ENTITY a \"<b>'\"> <?x ]> ?> ]><svg xmlns='http://www.w3.org/2000/svg'/>",
            "<svg xmlns='http://www.w3.org/2000/svg'><desc><![CDATA[<!DOCTYPE [ ]]></desc></svg>"
        }) {
            SafeXml.read(whole.getBytes(StandardCharsets.UTF_8), "skirt.svg");
        }
    }
}
