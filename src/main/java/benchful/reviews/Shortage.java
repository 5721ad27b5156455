package benchful.reviews;

import io.quarkus.qute.TemplateData;

/**
 * A material that ran short or broke.
 *
 * @param shortIn in how many classes it ran short, and {@code brokenIn} in how many some of it broke
 */
@TemplateData
public record Shortage(String material, int shortIn, int brokenIn) {}
