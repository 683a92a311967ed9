package org.berrywatt.server.paper;

import java.util.List;
import org.berrywatt.contract.PaperTableAnswer.Choice;
import org.berrywatt.server.platform.Texts;
import org.berrywatt.server.typed.Words;

/** What may stand in a column, by its key or in words of the language that is spoken. */
record Choices(Texts texts) {

    List<Choice> of(PaperColumn column) {
        return column.choices().stream()
                .map(key -> new Choice(key, texts.say(column.words() + key)))
                .toList();
    }

    /**
     * The key that is meant; a text that means none is left as it is, for the door to refuse. Behind a colon stands what a
     * choice means that names nothing: {@code other: spinach}.
     */
    String read(PaperColumn column, String text) {
        var wanted = Words.key(text.split(":", 2)[0].strip());
        return of(column).stream()
                .filter(choice -> Words.key(choice.key()).equals(wanted)
                        || Words.key(choice.words()).equals(wanted))
                .map(Choice::key)
                .findFirst()
                .orElse(text);
    }
}
