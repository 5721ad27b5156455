package benchful.web;

import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/** A tutor's text with its emphasis and lists, as safe XHTML: any tags typed into it are shown, not run. */
@TemplateExtension
public final class Markdown {
    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder().escapeHtml(true).build();
    private static final PolicyFactory SAFE = new HtmlPolicyBuilder()
            .allowElements("p", "em", "strong", "ul", "ol", "li", "h2", "h3", "h4", "blockquote", "code", "br", "hr", "a")
            .allowUrlProtocols("https", "http")
            .allowAttributes("href").onElements("a")
            .toFactory();

    private Markdown() {}

    public static RawString markdown(String text) {
        return new RawString(text == null ? "" : SAFE.sanitize(RENDERER.render(PARSER.parse(text))));
    }
}
