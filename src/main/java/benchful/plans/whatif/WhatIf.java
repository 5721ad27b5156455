package benchful.plans.whatif;

import benchful.web.forms.FormTree;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A class otherwise than it is stored: some fields of its setup with other values, named by their JSON Pointers as in its
 * form. To take it is to send these fields; nothing else of the setup is touched.
 *
 * @param fields a blank value takes the field out
 */
@TemplateData
public record WhatIf(Map<String, String> fields) {
    public WhatIf {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** The fields among those typed that differ from what is stored. */
    public static WhatIf typed(MultivaluedMap<String, String> form, JsonNode stored) {
        Map<String, String> changed = new LinkedHashMap<>();
        form.forEach((name, values) -> {
            if (name.startsWith("/") && !values.isEmpty() && !values.get(0).strip().equals(stored.at(name).asText(""))) {
                changed.put(name, values.get(0).strip());
            }
        });
        return new WhatIf(changed);
    }

    /** Reads {@link #sent}; what is no field is passed over. */
    public static WhatIf read(String sent) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String pair : sent.split("&")) {
            String[] parts = pair.split("=", 2);
            if (parts.length == 2 && decoded(parts[0]).startsWith("/")) {
                fields.put(decoded(parts[0]), decoded(parts[1]));
            }
        }
        return new WhatIf(fields);
    }

    /** What takes it back, once it was taken: each of its fields as it is stored before. */
    public WhatIf reversed(JsonNode stored) {
        Map<String, String> before = new LinkedHashMap<>(fields);
        before.replaceAll((name, value) -> stored.at(name).asText(""));
        return new WhatIf(before);
    }

    /** In one text, as the body of a form would be. */
    public String sent() {
        return fields.entrySet().stream().map(e -> encoded(e.getKey()) + "=" + encoded(e.getValue())).collect(Collectors.joining("&"));
    }

    public ObjectNode over(FormTree tree, JsonNode setup) {
        MultivaluedMap<String, String> form = new MultivaluedHashMap<>();
        fields.forEach(form::putSingle);
        return tree.over(setup, form);
    }

    /** The same as a part of an address. */
    public String inAddress() {
        return encoded(sent());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** What is badly encoded stands for nothing. */
    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException badlyEncoded) {
            return "";
        }
    }
}
