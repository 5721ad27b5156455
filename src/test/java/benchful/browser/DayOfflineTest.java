package benchful.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.core.day.Course;
import benchful.core.day.Running;
import benchful.core.day.RunningTest;
import benchful.core.day.Tap;
import benchful.web.Formats;
import benchful.web.Visitor;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.LocatorAssertions;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.MalformedURLException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class that is run in a browser: with the network cut, a reload, a page whose process dies, and a second device. Every tap arrives once. */
@QuarkusTest
class DayOfflineTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<Course> COURSES = List.of(RunningTest.COURSE, RunningTest.TWO_BREAKS, RunningTest.ASKED, RunningTest.IN_GROUPS);
    private static Browser browser;

    @TestHTTPResource
    URI address;

    @Inject
    SampleData data;

    private final List<BrowserContext> devices = new ArrayList<>();
    /** What was tapped, as "finish knot", or "help" of what concerns the whole class. */
    private final List<String> pressed = new ArrayList<>();
    private String day;

    @BeforeAll
    static void openBrowser() {
        browser = Browser.open();
    }

    @AfterAll
    static void closeBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void samples() {
        data.onlySamples();
        day = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/day";
    }

    @AfterEach
    void closeDevices() {
        devices.forEach(BrowserContext::close);
    }

    /** Opened once with a network, so that it is kept. */
    private Page device() {
        return device(browser.window(360));
    }

    private Page device(BrowserContext device) {
        devices.add(device);
        Page page = device.newPage();
        page.navigate(address.resolve(day).toString());
        page.waitForFunction("""
                async () => {
                  const kept = await caches.open('benchful-day-1');
                  return !!(await kept.match(location.href)) && !!(await kept.match(new URL('/js/day/running.js', location.href).href))
                    && !!(await kept.match(new URL('/css/day.css', location.href).href));
                }""");
        return page;
    }

    private void press(Page page, String label) {
        press(page, page.locator("button[aria-label^=\"%s\"]:visible".formatted(label)).first());
    }

    /** Until the device shows it: only then is it kept there, and counted among what is to be sent. */
    private void press(Page page, Locator button) {
        String told = button.getAttribute("value");
        pressed.add(told.replaceAll(" -?\\d*$| - ?\\d*$", ""));
        Locator latest = page.locator("[data-undo]");
        String before = latest.getAttribute("value");
        page.locator("button[value=\"%s\"]:visible".formatted(told)).first().click();
        assertThat(latest).not().hasAttribute("value", before);
    }

    /** What goes on is over, or what is next begins, as long as there is any of it. */
    private void goOnToTheEnd(Page page) {
        Locator next = page.locator("[data-now] button[data-tap=finish]:visible, [data-next] button[data-tap=start]:visible");
        while (next.count() > 0) {
            press(page, next.first());
        }
    }

    private JsonNode log() throws MalformedURLException, JsonProcessingException {
        return JSON.readTree(new Visitor(address.toURL()).open(day).page().selectFirst("form[data-day]").attr("data-log"));
    }

    /** What arrived, as {@link #pressed} says it; a note is of whatever goes on. */
    private List<String> told() throws MalformedURLException, JsonProcessingException {
        List<String> told = new ArrayList<>();
        log().forEach(t -> told.add((t.path("kind").asText() + " " + (t.path("kind").asText().equals("note") ? "" : t.path("step").asText())).strip()));
        return told;
    }

    private static void allSent(Page page) {
        assertThat(page.locator("[data-state]")).isHidden(new LocatorAssertions.IsHiddenOptions().setTimeout(60_000));
    }

    /** A whole class, from its welcome to its last step: every tap of both devices arrives, and once. */
    @Test
    void runsAClassToItsEndThroughACutAReloadAFlatBatteryAndASecondDevice(@TempDir Path battery) throws Exception {
        BrowserContext phone = browser.lasting(battery, 360);
        Page page = device(phone);
        Page tablet = device();
        assertThat(page.locator("[data-undo-part]")).isHidden();
        press(page, "Start: Welcome");
        assertThat(page.locator("[data-undo-part]")).isVisible();
        assertThat(tablet.locator("[data-now] h3").first()).containsText("Welcome", new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
        press(page, "Finish: Welcome");
        allSent(page);
        assertThat(told()).containsExactly("start welcome", "finish welcome");

        phone.setOffline(true);
        press(page, "One more minute: ");
        press(page, "One more wants help");
        assertThat(page.locator("[data-help]")).hasText("1");
        assertThat(page.locator("[data-state]")).containsText("No network");
        tablet.locator("summary:has-text('Who is here')").click();
        press(tablet, "Came late: ");
        allSent(tablet);
        page.reload();
        assertThat(page.locator("[data-help]")).hasText("1");
        assertThat(page.locator("[data-now] h3").first()).not().containsText("Welcome");
        press(page, "Finish: ");
        assertThat(page.locator("[data-state]")).containsText("3 to send");
        kill(page);
        phone.close();
        phone = browser.lasting(battery, 360);
        devices.set(0, phone);
        phone.setOffline(true);
        page = phone.newPage();
        page.navigate(address.resolve(day).toString());
        assertThat(page.locator("[data-help]")).hasText("1");
        page.locator("#note").fill("ran out of guard");
        page.locator("button[data-tap=note]").click();
        pressed.add("note");
        assertThat(page.locator("[data-notes-list]")).containsText("ran out of guard");
        assertThat(page.locator("[data-state]")).containsText("4 to send");

        phone.setOffline(false);
        allSent(page);
        assertThat(page.locator("[data-presence]:has-text('late')")).hasCount(1, new LocatorAssertions.HasCountOptions().setTimeout(60_000));
        assertThat(tablet.locator("[data-help]")).hasText("1", new LocatorAssertions.HasTextOptions().setTimeout(60_000));
        press(page, "The break begins");
        press(page, "The break is over");
        goOnToTheEnd(page);
        assertThat(page.locator("[data-done]")).isVisible();
        assertThat(tablet.locator("[data-done]")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(60_000));
        assertThat(tablet.locator("[data-idle]")).isVisible();
        allSent(page);
        page.reload();
        allSent(page);
        assertThat(told()).containsExactlyInAnyOrderElementsOf(pressed).hasSizeGreaterThan(20);
    }

    /** The process of the page dies: nothing of it is asked any more. */
    private static void kill(Page page) {
        try {
            page.navigate("chrome://crash", new Page.NavigateOptions().setTimeout(5_000));
        } catch (PlaywrightException dead) {
            assertThat(dead).isNotNull();
        }
    }

    /** A tablet that is weeks behind the program of this test, and a phone ten minutes ahead of it: the class is as far as it is, on both. */
    @Test
    void putsWhatADeviceTapsWhoseClockIsOffWhereItBelongs() throws Exception {
        Page tablet = device();
        BrowserContext fast = browser.window(360);
        LocalDateTime moment = LocalDateTime.parse(new Visitor(address.toURL()).open(day).page().selectFirst("form[data-day]").attr("data-moment"));
        long ahead = Duration.between(LocalDateTime.now(), moment).plusMinutes(10).toMillis();
        fast.addInitScript("const right = Date.now; Date.now = () => right() + %d;".formatted(ahead));
        Page phone = device(fast);
        assertThat(phone.locator("[data-clock-off]")).containsText("10 min fast against", new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
        assertThat(tablet.locator("[data-clock-off]")).containsText(" slow against", new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
        press(phone, "Start: Welcome");
        allSent(phone);
        assertThat(tablet.locator("[data-now] h3").first()).containsText("Welcome", new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
        press(tablet, "Finish: Welcome");
        allSent(tablet);
        assertThat(phone.locator("[data-now] h3").first()).not().containsText("Welcome", new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
        assertThat(told()).containsExactly("start welcome", "finish welcome");
        LocalDateTime started = LocalDateTime.parse(log().get(0).path("at").asText());
        assertThat(Duration.between(started, LocalDateTime.parse(log().get(1).path("at").asText()))).isLessThan(Duration.ofMinutes(3));
    }

    @Test
    void canBeReadAndUsedByEverybodyWhileItRuns() {
        Page page = device();
        press(page, "Start: Welcome");
        press(page, "Finish: Welcome");
        page.locator("summary").all().forEach(summary -> summary.click());
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
        assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")).isEqualTo(0);
        assertThat((Integer) page.evaluate("[...document.querySelectorAll('form.board button')].filter(b => b.checkVisibility() && b.getBoundingClientRect().height < 44).length")).isZero();
        page.locator("[data-now] button").first().focus();
        page.keyboard().press("Enter");
        assertThat(page.locator("[data-undo]")).isVisible();
    }

    /** The browser's fold and the program's are two pieces of code; drawn days must come to the same in both. */
    @Test
    void comesToTheSameAsTheProgramOnDrawnDays() throws Exception {
        Page page = device();
        Random random = new Random(11);
        List<Map<String, Object>> cases = new ArrayList<>();
        List<List<String>> expected = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            List<Tap> taps = RunningTest.drawn(random, random.nextInt(14));
            LocalDateTime now = RunningTest.ONE.plusSeconds(random.nextInt(8000));
            Course course = COURSES.get(i % COURSES.size());
            cases.add(Map.of("number", i % COURSES.size(), "now", now.toString(), "taps", taps.stream().map(DayOfflineTest::written).toList()));
            expected.add(summary(Running.of(course, taps, now)));
        }
        Object answers = page.evaluate("""
                async ({courses, cases}) => {
                  const {course, running} = await import('/js/day/running.js');
                  const one = Date.parse('2027-03-06T13:00'), at = ms => Math.round((ms - one) / 1000);
                  return cases.map(({number, now, taps}) => {
                    const r = running(course(courses[number]), taps.map(t => ({...t, at: Date.parse(t.at)})), Date.parse(now));
                    return [...r.steps.map(s => `${s.item.key} ${s.stage} ${at(s.begins)} ${at(s.ends)} ${s.finished}`), `end ${at(r.end)} ${r.behind / 1000} ${r.help} ${r.present}`,
                      ...r.breaks.map(b => `${b.key} ${b.stage} ${at(b.begins)} ${at(b.ends)} ${at(b.due)}`), ...r.remedies.map(m => `${m.what} ${m.step} ${m.minutes} ${m.gain / 1000}`)];
                  });
                }""", Map.of("courses", COURSES.stream().map(DayOfflineTest::written).toList(), "cases", cases));
        assertThat(JSON.convertValue(answers, new TypeReference<List<List<String>>>() {})).isEqualTo(expected);
    }

    private static Map<String, Object> written(Course course) {
        return Map.of("students", course.students(), "end", course.end().toString(),
                "steps", course.steps().stream().map(s -> Map.of("key", s.key(), "title", s.title(), "group", s.group(), "handsOn", s.handsOn(), "own", s.own(),
                        "start", s.start().toString(), "end", s.end().toString(), "length", (int) s.length().toSeconds(), "notBefore", s.notBefore() == null ? "" : s.notBefore().toString())).toList(),
                "pauses", course.pauses().stream().map(p -> Map.of("key", p.key(), "start", p.start().toString(), "end", p.end().toString())).toList());
    }

    private static Map<String, Object> written(Tap t) {
        Map<String, Object> tap = new LinkedHashMap<>();
        tap.put("id", t.id());
        tap.put("at", t.at().toString());
        tap.put("kind", Formats.word(t.kind()));
        tap.put("step", t.step());
        tap.put("number", t.number());
        return tap;
    }

    private static List<String> summary(Running r) {
        List<String> lines = new ArrayList<>();
        r.steps().forEach(s -> lines.add("%s %s %d %d %d".formatted(s.item().key(), Formats.word(s.stage()), at(s.begins()), at(s.ends()), s.finished())));
        lines.add("end %d %d %d %d".formatted(at(r.end()), r.behind().toSeconds(), r.help(), r.present()));
        r.breaks().forEach(b -> lines.add("%s %s %d %d %d".formatted(b.key(), Formats.word(b.stage()), at(b.begins()), at(b.ends()), at(b.due()))));
        r.remedies().forEach(m -> lines.add("%s %s %d %d".formatted(Formats.word(m.what()), m.step(), m.minutes(), m.gain().toSeconds())));
        return lines;
    }

    private static long at(LocalDateTime time) {
        return Duration.between(RunningTest.ONE, time).toSeconds();
    }
}
