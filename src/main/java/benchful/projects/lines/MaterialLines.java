package benchful.projects.lines;

import benchful.projects.lines.Amounts.Amount;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code linen thread: 30 cm + 5 x height, waste 5%}. */
final class MaterialLines implements LineKind {
    private static final Pattern SHARED = Pattern.compile("(?i)shared|(?:(?:one|1|enough) )?(?:for|to) (?:the )?(?:whole )?(?:class|everybody|everyone|all)|for all to share");
    private static final Pattern SERVES = Pattern.compile("(?i)(?:one |shared )?(?:for|by|between) (?:every|each|groups? of|a group of) ?(\\d{1,3}|pair)(?: students)?");
    private static final Pattern LENT = Pattern.compile("(?i)lent|(?:it )?comes back|handed back");
    private static final Pattern BENCH = Pattern.compile("(?i)(?:stays |remains |kept )?(?:on|at) the bench|not in (?:the )?kits?|not packed");
    private static final Pattern WASTE = Pattern.compile("(?i)(?:\\+ ?)?(?:waste|spoilt|extra|plus)?:? ?(\\d{1,2}(?:[.,]\\d{1,6})?) ?%(?: (?:waste|spoilt|extra))?");
    private static final Pattern CHOICE = Pattern.compile("(?i)(?:students? )?(?:choose|choice of|choice:)(?: (?:their|its|a))? +(\\S.*)");
    private static final Pattern OR = Pattern.compile("(?i)or +(\\S.*)");
    private static final Pattern GRAIN = Pattern.compile("(?i)(?:length )?along the grain");
    private static final Pattern TIMES = Pattern.compile("(\\S.*?)(?: x ?| ?× ?)(\\d{1,4})");
    private static final Pattern COUNT = Pattern.compile("(\\d{1,4})(?: ?× ?| ?x )(\\p{L}.*)");
    private static final String ABOUT = "^(?i)(?:about|approx\\.?|circa|ca\\.?|c\\.|~) *";
    private static final Pattern DASH = Pattern.compile(" [-–—] (?=\\p{L})([\\w]+)");
    private static final Pattern BRACKETS = Pattern.compile("(.*\\S) ?\\(([^()]+)\\)");
    private static final int MOST_WORDS = 40;

    @Override
    public String list() {
        return "/materials";
    }

    @Override
    public String name() {
        return "material";
    }

    @Override
    public List<Entry> entries(String box) {
        return Entry.of(box, false);
    }

    @Override
    public LineRow read(Entry entry, Vocabulary known) {
        LineRow line = new LineRow();
        List<Segment> segments = Segment.of(dashes(entry.head(), known));
        for (int i = 0; i < segments.size(); i++) {
            if (i == 0) {
                first(segments.get(0), known, line);
            } else {
                further(segments.get(i), known, line);
            }
        }
        if (!line.has("amount")) {
            line.doubt("/amount", "Amount", "", "No amount was found. Say how much one piece takes, such as 30 cm.");
        }
        return line;
    }

    /** A dash before a word parts as a comma does, but not where it takes a measure away. */
    private static String dashes(String head, Vocabulary known) {
        return head.indexOf('"') >= 0 ? head : DASH.matcher(head).replaceAll(m -> known.names(m.group(1)) ? Matcher.quoteReplacement(m.group()) : Matcher.quoteReplacement(", " + m.group(1)));
    }

    private static void first(Segment s, Vocabulary known, LineRow line) {
        if (s.quoted()) {
            line.put("material", "Material", s.text(), s.text());
            String rest = s.rest().replaceFirst("^:\\s*", "");
            if (!rest.isEmpty()) {
                amountOrNote(rest, known, line);
            }
            return;
        }
        int colon = s.text().indexOf(": ");
        if (colon > 0) {
            line.put("material", "Material", s.text().substring(0, colon).strip(), s.text().substring(0, colon));
            amountOrNote(s.text().substring(colon + 2).strip(), known, line);
        } else if (!together(s.text(), known, line)) {
            bracketed(s.text(), known, line);
        }
    }

    /** "sodium hydroxide 71 g (in a dry jar)". */
    private static void bracketed(String text, Vocabulary known, LineRow line) {
        Matcher brackets = BRACKETS.matcher(text);
        if (brackets.matches() && together(brackets.group(1), known, line)) {
            line.append("note", "Note", brackets.group(2).strip(), "; ", brackets.group(2));
        } else {
            String name = text.replaceFirst("\\s*:$", "");
            line.put("material", "Material", name, name);
        }
    }

    /** "linen thread 30 cm", "30 cm linen thread", "4 rivets", "rivets x 4". */
    private static boolean together(String text, Vocabulary known, LineRow line) {
        Amounts amounts = new Amounts(known);
        Matcher times = TIMES.matcher(text);
        if (times.matches() && Character.isLetter(times.group(1).charAt(0)) && !times.group(1).matches(".*\\d\\s*\\w{0,4}")) {
            taken(line, times.group(1), new Amount(times.group(2), null, null, null), times.group(2));
            return true;
        }
        Matcher count = COUNT.matcher(text);
        Optional<Split> split = count.matches() && amounts.formula(count.group(2)).isEmpty()
                ? Optional.of(new Split(count.group(2), new Amount(count.group(1), null, null, null), count.group(1)))
                : text.matches("[\\d¼-¾⅐-⅞].*") ? head(text, amounts).or(() -> tail(text, amounts)) : tail(text, amounts);
        split.ifPresent(found -> taken(line, found.name, found.amount, found.words));
        return split.isPresent();
    }

    private record Split(String name, Amount amount, String words) {}

    /** The longest end that is an amount. */
    private static Optional<Split> tail(String text, Amounts amounts) {
        for (int at = text.indexOf(' '), word = 0; at > 0 && word < MOST_WORDS; at = text.indexOf(' ', at + 1), word++) {
            String words = text.substring(at + 1).strip();
            String bare = unbracketed(words.replaceFirst(ABOUT, ""));
            if (bare.matches("[\\d(¼-¾⅐-⅞.\\p{L}].*") && !Amounts.isRow(bare)) {
                String name = text.substring(0, at).replaceFirst("\\s*[-–=:]$", "").strip();
                Optional<Amount> amount = amounts.read(bare, name).or(() -> bare.matches("[\\d(].*") ? amounts.withUnknown(bare) : Optional.empty());
                if (amount.isPresent() && !name.isEmpty()) {
                    return Optional.of(new Split(name, amount.get(), words));
                }
            }
        }
        return Optional.empty();
    }

    /** The longest beginning that is an amount, but no mere ratio, as of a thread's number. */
    private static Optional<Split> head(String text, Amounts amounts) {
        for (int at = text.lastIndexOf(' '), word = 0; at > 0 && word < MOST_WORDS; at = text.lastIndexOf(' ', at - 1), word++) {
            String words = text.substring(0, at).strip();
            String name = text.substring(at + 1).strip().replaceFirst("^of ", "");
            Optional<Amount> amount = words.matches("\\d+[/-]\\d+") || Amounts.isRow(words) ? Optional.empty() : amounts.read(words, name);
            if (amount.isPresent() && name.matches("\\p{L}.*")) {
                return Optional.of(new Split(name, amount.get(), words));
            }
        }
        return Optional.empty();
    }

    private static String unbracketed(String words) {
        return words.startsWith("(") && words.endsWith(")") && words.indexOf(')') == words.length() - 1 ? words.substring(1, words.length() - 1) : words;
    }

    private static void taken(LineRow line, String name, Amount amount, String words) {
        line.put("material", "Material", name, name);
        taken(line, amount, words);
    }

    private static void taken(LineRow line, Amount amount, String words) {
        line.put("amount", "Amount", amount.amount(), words);
        if (amount.width() != null) {
            line.put("width", "Width", amount.width(), "");
        }
        if (amount.pieces() != null) {
            line.put("pieces", "Cut into pieces", amount.pieces(), "");
        }
        if (amount.doubt() != null) {
            line.doubt("/amount", "Amount", "", amount.doubt());
        }
    }

    private static void further(Segment s, Vocabulary known, LineRow line) {
        String text = s.text();
        Matcher waste = WASTE.matcher(text);
        Matcher choice = CHOICE.matcher(text + s.rest());
        Matcher serves = SERVES.matcher(text);
        if (s.quoted()) {
            line.append("note", "Note", (text + " " + s.rest()).strip(), "; ", text + s.rest());
        } else if (SHARED.matcher(text).matches()) {
            line.put("shared", "One for the whole class", "true", text);
        } else if (serves.matches()) {
            line.put("shared", "One for some students", "true", text);
            line.row.put("serves", serves.group(1).equalsIgnoreCase("pair") ? "2" : serves.group(1));
        } else if (LENT.matcher(text).matches()) {
            line.put("lent", "Lent", "true", text);
        } else if (BENCH.matcher(text).matches()) {
            line.put("in_kit", "Stays on the bench", "false", text);
        } else if (GRAIN.matcher(text).matches()) {
            line.put("grain", "Length along the grain", "true", text);
        } else if (waste.matches()) {
            line.put("waste", "Waste in %", waste.group(1).replace(',', '.'), text);
        } else if (choice.matches() && !line.has("choice")) {
            line.put("choice", "Students choose its", Segment.unquoted(choice.group(1)), text);
        } else if (OR.matcher(text).matches()) {
            String other = Segment.unquoted(text.substring(2).strip());
            line.row.withArrayProperty("alternatives").add(other);
            line.parts.add(Part.of("/alternatives/" + (line.row.path("alternatives").size() - 1), "Instead it can be", text));
        } else {
            amountOrNote(text, known, line);
        }
    }

    private static void amountOrNote(String text, Vocabulary known, LineRow line) {
        Amounts amounts = new Amounts(known);
        String words = text.replaceFirst(ABOUT, "");
        Optional<Amount> amount = line.has("amount") ? Optional.empty() : amounts.read(words, line.row.path("material").asText()).or(() -> amounts.withUnknown(words));
        if (amount.isPresent()) {
            taken(line, amount.get(), text);
        } else {
            boolean bracketed = text.startsWith("(") && text.endsWith(")") && text.length() > 2;
            line.append("note", "Note", bracketed ? text.substring(1, text.length() - 1).strip() : text, "; ", text);
        }
    }

    @Override
    public Set<String> said(ObjectNode row, Vocabulary known) {
        return new HashSet<>(Set.of("material", "amount", "width", "pieces", "grain", "shared", "serves", "lent", "in_kit", "waste", "choice", "alternatives", "note"));
    }

    @Override
    public String written(JsonNode row, Vocabulary known, boolean quoted) {
        List<String> parts = new ArrayList<>();
        String amount = amount(row);
        parts.add(Segment.quotedIfNeeded(row.path("material").asText(), quoted) + (amount.isEmpty() ? "" : ": " + amount));
        flag(row, "shared", "true", row.has("serves") ? "one for every " + row.path("serves").asText() : "one for the class", parts);
        flag(row, "lent", "true", "lent", parts);
        flag(row, "in_kit", "false", "on the bench", parts);
        flag(row, "grain", "true", "along the grain", parts);
        if (row.has("waste")) {
            parts.add("waste " + row.path("waste").asText() + "%");
        }
        if (row.has("choice")) {
            parts.add("choose " + Segment.quotedIfNeeded(row.path("choice").asText(), quoted));
        }
        row.path("alternatives").forEach(a -> parts.add("or " + Segment.quotedIfNeeded(a.asText(), quoted)));
        if (row.has("note")) {
            parts.add(quoted ? Segment.quotedIfNeeded(row.path("note").asText(), true) : "(" + row.path("note").asText() + ")");
        }
        return String.join(", ", parts);
    }

    private static void flag(JsonNode row, String key, String value, String words, List<String> parts) {
        if (row.path(key).asText().equals(value)) {
            parts.add(words);
        }
    }

    private static String amount(JsonNode row) {
        String amount = row.path("amount").asText();
        String each = row.has("width") ? amount + " by " + row.path("width").asText() : amount;
        return row.has("pieces") ? row.path("pieces").asText() + " pieces of " + each : each;
    }
}
