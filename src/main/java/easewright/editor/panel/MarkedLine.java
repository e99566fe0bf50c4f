package easewright.editor.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.event.Event;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** A line whose numbers in brackets lead to their sources. All numbers of a line are one stop of the Tab key. */
final class MarkedLine {
    private static final Pattern MARK = Pattern.compile("\\[\\d+]");

    /** So many letters have room beside all that may stand in a row. */
    private static final int ROOM = 48;

    private final Pane pane;
    private final SourceList sources;
    private List<String> said = List.of();

    private MarkedLine(Pane pane, SourceList sources) {
        this.pane = pane;
        this.sources = sources;
        OneStop.in(pane);
    }

    /** One that is cut short where there is no room. */
    static MarkedLine brief(SourceList sources) {
        HBox pane = new HBox();
        pane.setAlignment(Pos.CENTER_LEFT);
        return new MarkedLine(pane, sources);
    }

    /** One that goes on in as many lines as it takes. */
    static MarkedLine whole(SourceList sources) {
        Pane pane = new TextFlow();
        pane.getStyleClass().add("marked-line");
        return new MarkedLine(pane, sources);
    }

    Pane pane() {
        return pane;
    }

    /**
     * Says it, with a hint for who points at it.
     *
     * @param hint all that there is to say, where there may be no room for it
     */
    void say(String words, String hint) {
        say(words);
        pane.getChildren().forEach(part -> {
            if (part instanceof Label label) {
                Hints.on(label, hint);
            }
        });
        shortenTheEnd();
    }

    /** What stands behind the last number is cut short before the words that the numbers are for. */
    private void shortenTheEnd() {
        int last = said.size() - 1;
        boolean tail = last > 0 && !MARK.matcher(said.get(last)).matches();
        int letters =
                said.stream().limit(Math.max(0, last)).mapToInt(String::length).sum();
        for (int i = 0; i <= last; i++) {
            if (pane.getChildren().get(i) instanceof Label label) {
                boolean whole = tail && i < last && letters <= ROOM;
                label.setMinWidth(whole ? Region.USE_PREF_SIZE : Region.USE_COMPUTED_SIZE);
            }
        }
    }

    /** While a seam is pulled, only the figures change: parts are made anew only where others come. */
    void say(String words) {
        List<String> now = parts(words);
        if (!shape(now).equals(shape(said))) {
            pane.getChildren().setAll(now.stream().map(this::part).toList());
        }
        for (int i = 0; i < now.size(); i++) {
            put(now.get(i), pane.getChildren().get(i));
        }
        said = now;
    }

    private static List<Boolean> shape(List<String> parts) {
        return parts.stream().map(p -> MARK.matcher(p).matches()).toList();
    }

    private static List<String> parts(String words) {
        List<String> parts = new ArrayList<>();
        Matcher mark = MARK.matcher(words);
        int from = 0;
        while (mark.find()) {
            if (mark.start() > from) {
                parts.add(words.substring(from, mark.start()));
            }
            parts.add(mark.group());
            from = mark.end();
        }
        if (from < words.length()) {
            parts.add(words.substring(from));
        }
        return parts;
    }

    private Node part(String words) {
        if (MARK.matcher(words).matches()) {
            return new SourceMark(pane instanceof TextFlow);
        }
        if (pane instanceof TextFlow) {
            return new Text();
        }
        Label label = new Label();
        label.getStyleClass().addAll("quiet", "classes");
        return label;
    }

    private void put(String words, Node part) {
        if (part instanceof Button mark) {
            mark.setText(words);
            sources.name(mark);
            mark.setOnAction(e -> sources.lead(words, mark));
            // What is pressed is the number, not the row that it stands in.
            mark.setOnMouseClicked(Event::consume);
        } else if (part instanceof Text text) {
            text.setText(words);
        } else {
            ((Label) part).setText(words);
        }
    }
}
