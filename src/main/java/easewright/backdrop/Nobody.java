package easewright.backdrop;

import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.util.ParsedURL;

/** Stands where the library asks for a browser: fetches nothing, runs nothing, says nothing. */
final class Nobody extends UserAgentAdapter {
    @Override
    public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL document) {
        return new NoLoadExternalResourceSecurity();
    }

    @Override
    public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL document) {
        return new NoLoadScriptSecurity(type);
    }

    @Override
    public void displayError(Exception e) {
        // What is wrong with one element leaves that one out.
    }

    @Override
    public void displayError(String message) {
        // As above.
    }

    @Override
    public void displayMessage(String message) {
        // Nobody is there to read it.
    }
}
