package benchful.web.sending;

import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.FormElement;

/** A form as it stood on a page, sent as often as wanted without the page being opened again. */
record SentForm(String action, Map<String, String> cookies, Map<String, String> fields) {

    /** @param form a selector of the form on the page */
    static SentForm on(String page, String form) {
        Response answer = RestAssured.given().redirects().follow(false).get(page);
        FormElement found = (FormElement) Jsoup.parse(answer.asString()).selectFirst(form);
        Map<String, String> fields = new LinkedHashMap<>();
        found.formData().forEach(field -> fields.put(field.key(), field.value()));
        return new SentForm(found.attr("action"), answer.cookies(), fields);
    }

    SentForm with(String field, String value) {
        Map<String, String> more = new LinkedHashMap<>(fields);
        more.put(field, value);
        return new SentForm(action, cookies, more);
    }

    /** As a browser that has lost, or never had, its cookie. */
    SentForm withoutCookies() {
        return new SentForm(action, Map.of(), fields);
    }

    String key() {
        return fields.get("form-key").split("\\.")[0];
    }

    Response send() {
        return RestAssured.given().redirects().follow(false).cookies(cookies)
                .contentType("application/x-www-form-urlencoded; charset=UTF-8").formParams(fields).post(action);
    }
}
