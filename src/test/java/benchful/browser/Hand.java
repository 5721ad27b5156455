package benchful.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

/** A tutor's hand at a page, which counts what it does: fields that are filled, presses of the mouse or the finger, and of keys. */
final class Hand {
    private final Page page;
    private int fields;
    private int clicks;
    private int keys;

    Hand(Page page) {
        this.page = page;
    }

    /** Puts the cursor into a field and types letter by letter as far as the count goes. */
    void type(Locator field, String text) {
        fields++;
        clicks++;
        keys += text.length();
        field.fill(text);
        field.dispatchEvent("input");
    }

    void choose(Locator field, String option) {
        fields++;
        clicks += 2;
        field.selectOption(option);
    }

    void press(Locator button) {
        clicks++;
        button.click();
    }

    Page page() {
        return page;
    }

    int fields() {
        return fields;
    }

    int clicks() {
        return clicks;
    }

    @Override
    public String toString() {
        return "%d fields, %d clicks, %d keystrokes".formatted(fields, clicks, keys);
    }
}
