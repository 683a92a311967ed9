package org.berrywatt.server.browser;

import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** Somebody who has a keyboard and nothing else: goes on with Tab until what is wanted has the focus, then types or presses. */
final class Keyboard {

    private static final int PATIENCE_TABS = 120;

    /** The name by which the focused element is known to a person, and whether its focus can be seen (WCAG 2.4.7). */
    private static final String FOCUSED = """
            const it = document.activeElement;
            return (it.labels?.[0]?.innerText || it.ariaLabel || it.innerText || it.value || '').replace(/\\s+/g, ' ').trim();""";

    private static final String FOCUS_SHOWS = """
            const it = document.activeElement;
            const around = [it, it.closest('label'), it.nextElementSibling].filter(Boolean).map(each => getComputedStyle(each));
            return around.some(({ outlineStyle, outlineWidth }) => outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2);""";

    private final Device device;

    Keyboard(Device device) {
        this.device = device;
    }

    /** Tabs to what begins with these words, unless the focus is there already. */
    Keyboard to(String words) {
        for (int tabs = 0; tabs < PATIENCE_TABS; tabs++) {
            if (tabs > 0) strike(Keys.TAB);
            if (focused().startsWith(words)) {
                device.waiting()
                        .withMessage("focus that can be seen on '" + words + "', also after a redraw")
                        .until(it -> focused().startsWith(words)
                                && Boolean.TRUE.equals(device.driver().executeScript(FOCUS_SHOWS)));
                return this;
            }
        }
        throw new AssertionError("Tab does not lead to '" + words + "' on a page that shows: " + device.visibleText());
    }

    /** Goes to a link or a button and presses it. */
    void press(String words) {
        to(words).strike(Keys.ENTER);
    }

    /** Goes to a field and types. */
    void type(String field, String text) {
        to(field).strike(text);
    }

    /** Strikes keys where the focus is. */
    void strike(CharSequence keys) {
        new Actions(device.driver()).sendKeys(keys).perform();
    }

    private String focused() {
        return String.valueOf(device.driver().executeScript(FOCUSED));
    }
}
