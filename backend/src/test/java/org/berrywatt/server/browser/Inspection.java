package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.core.io.ClassPathResource;

/**
 * Looks at a page as everybody may meet it: on a small phone, a tablet, a laptop, the same at 200 % zoom and a projector,
 * in light and dark, without motion. It keeps pictures if they are wanted and refuses what axe-core refuses (WCAG 2.2 A and AA among it),
 * scrolling sideways and words that are cut off (WCAG 1.4.4, 1.4.10), complaints on the console, and other hosts.
 */
final class Inspection {

    /**
     * WCAG 1.4.4: a laptop of 1366 by 768 px at 200 % has half as many CSS pixels each way. Screens without a picture come
     * first, so that charts have drawn themselves before one is taken.
     */
    private static final List<Screen> SCREENS = List.of(
            new Screen("zoomed", 683, 384, true),
            new Screen("tablet", 768, 1024, false),
            new Screen("laptop", 1366, 768, true),
            new Screen("projector", 1920, 1080, Camera.IS_WANTED),
            new Screen("phone", 360, 740, true));

    private static final String AXE = """
            const [rules, done] = arguments;
            const options = { resultTypes: ['violations'], preload: false, ...(rules.length ? { runOnly: rules } : {}) };
            axe.run(options).then(found => done(found.violations.map(it =>
              `${it.id}: ${it.nodes.map(node => node.target.join(' ')).slice(0, 3).join(', ')}`)));""";

    /** Words whose box is too small for them, or that stand beyond the page's edge where nobody can scroll to. */
    private static final String CUT = """
            const wide = document.documentElement.clientWidth;
            const scrolls = it => it && (/auto|scroll/.test(getComputedStyle(it).overflowX) || scrolls(it.parentElement));
            const hasWords = it => [...it.childNodes].some(node => node.nodeType === Node.TEXT_NODE && node.textContent.trim());
            const isCut = it => {
              const { width, height, left, right } = it.getBoundingClientRect();
              const { overflowX, overflowY, visibility, clipPath, textOverflow } = getComputedStyle(it);
              if (width < 2 || height < 2 || visibility !== 'visible' || clipPath !== 'none') return false;
              if (textOverflow === 'ellipsis') return false; // it says itself that there is more
              return (left < wide && right > wide + 1 && !scrolls(it.parentElement))
                || (/hidden|clip/.test(overflowX) && it.scrollWidth > it.clientWidth + 1)
                || (/hidden|clip/.test(overflowY) && it.scrollHeight > it.clientHeight + 3);
            };
            return [...document.querySelectorAll('body *')].filter(it => hasWords(it) && isCut(it))
              .map(it => `${it.tagName.toLowerCase()}.${it.className}: ${it.textContent.trim().slice(0, 40)}`);""";

    private static final String SIDEWAYS =
            "return document.documentElement.scrollWidth - document.documentElement.clientWidth";
    private static final String OTHER_HOSTS = "return performance.getEntriesByType('resource')"
            + ".map(it => new URL(it.name).origin).filter(it => it !== location.origin)";
    private static final String MOVING = "return document.getAnimations()"
            + ".filter(it => it.effect.getComputedTiming().duration > 1).map(it => it.effect.target.className)";

    /**
     * Waits until the page is drawn at its size, charts included, which follow a frame or two later, and stands still. Changes
     * that take no time end at once; those that nobody sees would else be listed as animations for a second or for ever.
     */
    private static final String DRAWN = """
            const done = arguments[0];
            const moves = () => {
              const takesTime = it => it.effect.getComputedTiming().duration > 1;
              document.getAnimations().filter(it => !takesTime(it)).forEach(it => it.finish());
              return document.getAnimations().some(takesTime);
            };
            const fits = canvas => Math.abs(canvas.width / devicePixelRatio - canvas.clientWidth) < 2;
            const shape = () => [...document.querySelectorAll('main, main *')]
              .reduce((sum, it) => { const { top, width } = it.getBoundingClientRect(); return sum + top + 3 * width; }, 0);
            const look = (left, before, still) => requestAnimationFrame(() => {
              const now = shape();
              const calm = now === before && !moves() && [...document.querySelectorAll('canvas')].every(fits);
              if (left === 0 || (calm && still === 2)) done();
              else look(left - 1, now, calm ? still + 1 : 0);
            });
            look(60, NaN, 0);""";

    private final Device device;
    private final Set<String> pages = new HashSet<>();

    /** @param everyState whether every state of a page is looked at here, or its first alone */
    private record Screen(String name, int width, int height, boolean everyState) {}

    Inspection(Device device) throws IOException {
        this.device = device;
        device.bring(new ClassPathResource("META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")
                .getContentAsString(StandardCharsets.UTF_8));
    }

    /** Takes the size that the inspection begins with. */
    void begin() {
        device.prefer("light");
        show(SCREENS.get(0));
    }

    /** Looks at what the device shows, and keeps its pictures under a name. */
    void of(String name) {
        boolean isNew = isNewPage();
        for (var screen : SCREENS) {
            if (screen.everyState || isNew) {
                look(name, screen, isNew);
            }
        }
        inTheDark(name);
        assertThat(device.driver().executeScript(MOVING))
                .as("motion of " + name)
                .isEqualTo(List.of());
        assertThat(device.complaints()).as("console of " + name).allMatch(Inspection::isMeant);
        assertThat(device.driver().executeScript(OTHER_HOSTS))
                .as("other hosts of " + name)
                .isEqualTo(List.of());
        begin();
    }

    private void look(String name, Screen screen, boolean isNew) {
        show(screen);
        var where = name + " on the " + screen.name;
        assertThat(device.driver().executeScript(SIDEWAYS))
                .as("sideways scroll of " + where)
                .isEqualTo(0L);
        assertThat(device.driver().executeScript(CUT))
                .as("cut words of " + where)
                .isEqualTo(List.of());
        if (screen.name.equals("phone") || (screen.name.equals("laptop") && isNew)) {
            assertThat(violations(List.of())).as("axe on " + where).isEqualTo(List.of());
        }
        keep(name, screen);
    }

    /** A wide screen shows the same elements in other places: one state of each page tells of them all. */
    private boolean isNewPage() {
        return pages.add((String) device.driver().executeScript("return location.pathname"));
    }

    /** On the phone, which comes last. */
    private void inTheDark(String name) {
        device.prefer("dark");
        device.driver().executeAsyncScript(DRAWN);
        assertThat(violations(List.of("color-contrast")))
                .as("contrast of " + name + " in the dark")
                .isEqualTo(List.of());
        device.wholePicture(name + "-phone-dark");
    }

    /** A page that is off the network says so. */
    private static boolean isMeant(String complaint) {
        return complaint.contains("net::ERR_INTERNET_DISCONNECTED");
    }

    private void keep(String name, Screen screen) {
        switch (screen.name) {
            case "phone" -> device.wholePicture(name + "-phone");
            case "laptop", "projector" -> device.picture(name + "-" + screen.name);
            default -> {}
        }
    }

    private void show(Screen screen) {
        device.resize(screen.width, screen.height);
        device.driver().executeAsyncScript(DRAWN);
    }

    private Object violations(List<String> rules) {
        return device.driver().executeAsyncScript(AXE, rules);
    }
}
