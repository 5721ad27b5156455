package benchful.projects.lines;

import benchful.core.lesson.StepKind;
import benchful.web.Formats;
import benchful.web.Times;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** {@code make: Sew the sections, 4-6-10 min x 5, awl, 2 x needle}; what is to be done stands further in on the lines below. */
final class StepLines implements LineKind {
    /** By the words before a colon, the kind of step. */
    private static final Map<String, StepKind> WORDS = new LinkedHashMap<>();
    private static final Map<Pattern, StepKind> HINTS = new LinkedHashMap<>();
    private static final Pattern PREFIX;
    private static final Pattern AT_MOST = Pattern.compile("(?i)(?:for )?(?:at most|no longer than|not longer than|max\\.?|up to) (\\S.*)");
    private static final Pattern PER_STUDENT = Pattern.compile("(?i)\\+? ?(?:(?:plus|and) )?(\\d.*?) (?:more )?(?:for each|per|each) (?:student|person|head)");
    private static final Pattern AT_HOME = Pattern.compile("(?i)(?:may |can )?(?:ends? |continues? )?at home");
    private static final Pattern RUN_OVER = Pattern.compile("(?i)(?:may |can )?(?:runs?|go(?:es)?) over(?: by)?(?: up to| at most)? (\\S.*)");
    private static final Pattern BESIDE = Pattern.compile("(?i)(?:with )?(?:the |an? )?(?:tutor|teacher|helper|somebody|someone|you)(?: or (?:an? )?helper)?(?: stays?)? beside(?: each(?: student)?| them)?");
    private static final Pattern SHARED = Pattern.compile("(?i)(.*?)(?:^|[ ,]+)(?:(?:one )?(?:shared by|for every) (\\d{1,2})|(in pairs|(?:one )?for each pair))");
    private static final Pattern ANY_TIME = Pattern.compile("(?i)(?:may start )?(?:at )?any ?time");
    private static final Pattern AFTER = Pattern.compile("(?i)(?:after|follows) +(\\S.*)");
    private static final Pattern USE = Pattern.compile("(?:(\\d{1,4})(?: ?× ?| ?x )? ?)?(?:(?:with|using|use|uses|tools?:) )?(\\S.*)");
    private static final Pattern HAZARD = Pattern.compile("(?i)(?:hazards?|danger|careful|caution|beware)[: ]+(\\S.*)");
    private static final Pattern SENTENCE = Pattern.compile("(.{3,118}?[\\p{L}\\d)][.!?]) +(\\p{Lu}.*)");
    private static final int LONGEST_TITLE = 120;
    private static final int MOST_WORDS_OF_A_TOOL = 4;

    static {
        List.of("show", "demonstrate", "demo", "demonstration", "watch").forEach(w -> WORDS.put(w, StepKind.SHOW));
        List.of("make", "do", "work").forEach(w -> WORDS.put(w, StepKind.MAKE));
        List.of("wait", "leave", "leave to dry or set", "leave to dry", "leave to set", "dry", "set", "cure", "cool", "soak").forEach(w -> WORDS.put(w, StepKind.WAIT));
        List.of("together", "all together", "all").forEach(w -> WORDS.put(w, StepKind.TOGETHER));
        List.of("ahead", "prepare beforehand", "beforehand", "before the class", "before class", "prepare").forEach(w -> WORDS.put(w, StepKind.AHEAD));
        List.of("between", "between meetings", "between the meetings", "after the meeting").forEach(w -> WORDS.put(w, StepKind.BETWEEN));
        List.of("homework", "at home", "home").forEach(w -> WORDS.put(w, StepKind.HOMEWORK));
        List.of("collect", "collect or post", "post", "fetch").forEach(w -> WORDS.put(w, StepKind.COLLECT));
        PREFIX = Pattern.compile("(?i)(" + WORDS.keySet().stream().sorted((a, b) -> b.length() - a.length()).collect(Collectors.joining("|")) + ") ?(?::\\s*|\\t)(\\S.*)");
        hint("(?:before (?:the )?class|beforehand|in advance)\\b.*", StepKind.AHEAD);
        hint("between (?:the )?meetings\\b.*", StepKind.BETWEEN);
        hint("homework\\b.*", StepKind.HOMEWORK);
        hint("(?:demonstrate|demo|demonstration|show|watch)\\b.*", StepKind.SHOW);
        hint("(?:welcome|introduc|intro\\b|safety|safe working|tidy|clean up|clear up|clearing|tidying|break\\b|share|admire|goodbye).*", StepKind.TOGETHER);
        hint("(?:let |leave |allow |wait|dry|dries|drying|cure|curing|cool|cooling|soak|soaking|set aside|rest\\b|resting|harden|hang to|chill).*|.*\\b(?:dries|sets|cures|hardens|cools)\\b.*", StepKind.WAIT);
    }

    private static void hint(String words, StepKind kind) {
        HINTS.put(Pattern.compile("(?i)" + words), kind);
    }

    @Override
    public String list() {
        return "/steps";
    }

    @Override
    public String name() {
        return "title";
    }

    @Override
    public List<Entry> entries(String box) {
        return Entry.of(box, true);
    }

    @Override
    public LineRow read(Entry entry, Vocabulary known) {
        LineRow line = new LineRow();
        Matcher prefix = PREFIX.matcher(entry.head());
        StepKind said = prefix.matches() ? WORDS.get(prefix.group(1).toLowerCase(Locale.ROOT)) : null;
        if (said != null) {
            line.put("kind", "Kind", Formats.word(said), prefix.group(1));
        }
        String head = said == null ? entry.head() : prefix.group(2);
        Reading reading = new Reading(head, known, line);
        reading.segments();
        kind(line, reading);
        new TimesTaken(line, reading.times, reading.timeWords, known).put();
        if (!entry.below().isEmpty()) {
            line.append("text", "What to do", entry.below(), "\n\n", entry.below());
        }
        return line;
    }

    private static void kind(LineRow line, Reading reading) {
        if (line.has("kind")) {
            return;
        }
        String title = line.row.path("title").asText();
        Optional<StepKind> hinted = HINTS.entrySet().stream().filter(h -> h.getKey().matcher(title).matches()).map(Map.Entry::getValue).findFirst();
        boolean three = reading.times != null && reading.times.times().size() == 3;
        StepKind kind = three ? StepKind.MAKE : hinted.orElse(line.has("at_most") || line.has("at_home") ? StepKind.WAIT : StepKind.MAKE);
        line.row.put("kind", Formats.word(kind));
        if (!three && hinted.isPresent()) {
            line.doubt("/kind", "Kind", "", "Taken as “%s” because of its words.".formatted(Formats.word(kind)));
        } else {
            line.parts.add(Part.of("/kind", "Kind", ""));
        }
    }

    /** Takes the parts of a line in turn: until one is a time or a tool, they are the title's. */
    private static final class Reading {
        private final String head;
        private final Vocabulary known;
        private final LineRow line;
        private final List<Segment> segments;
        private WrittenTimes times;
        private String timeWords = "";
        private boolean beyondTitle;

        Reading(String head, Vocabulary known, LineRow line) {
            this.head = head;
            this.known = known;
            this.line = line;
            this.segments = Segment.of(head);
        }

        void segments() {
            if (segments.isEmpty()) {
                return;
            }
            int next = title();
            for (Segment s : segments.subList(next, segments.size())) {
                further(s);
            }
        }

        /** @return the first part behind it */
        private int title() {
            Segment first = segments.get(0);
            if (first.quoted()) {
                line.put("title", "Title", first.text(), first.text());
                rest(first.rest());
                return 1;
            }
            boolean timeFirst = segments.size() > 1 && WrittenTimes.of(first.text()).isPresent();
            if (timeFirst) {
                time(first.text());
            }
            int from = timeFirst ? 1 : 0;
            boolean alone = Segment.isTable(head) || endsInTime(segments.get(from));
            int end = from + 1;
            while (!alone && end < segments.size() && !said(segments.get(end))) {
                alone = endsInTime(segments.get(end));
                end++;
            }
            words(head.substring(segments.get(from).from(), segments.get(end - 1).to()).strip());
            return end;
        }

        private void rest(String words) {
            if (!words.isEmpty()) {
                further(new Segment(words.replaceFirst("^[:\\s]+", ""), false, "", 0, 0));
            }
        }

        private boolean endsInTime(Segment s) {
            return times == null && WrittenTimes.within(s.text()).isPresent();
        }

        /** A title with a time at one of its ends, and sentences that follow it. */
        private void words(String written) {
            Optional<WrittenTimes.Beside> time = times == null ? WrittenTimes.within(written) : Optional.empty();
            time.ifPresent(t -> time(t.time()));
            String words = time.map(WrittenTimes.Beside::words).orElse(written);
            Matcher sentence = SENTENCE.matcher(words);
            if (sentence.matches()) {
                line.put("title", "Title", sentence.group(1).replaceFirst("\\.$", ""), sentence.group(1));
                line.append("text", "What to do", sentence.group(2), "\n\n", sentence.group(2));
            } else if (words.length() > LONGEST_TITLE) {
                int cut = Math.max(60, words.lastIndexOf(' ', LONGEST_TITLE - 1));
                line.put("title", "Title", words.substring(0, cut).strip() + "…", "");
                line.row.put("text", words);
                line.doubt("/text", "What to do", words, "The line is too long for a title. All of it is kept as what to do.");
            } else {
                line.put("title", "Title", words, words);
            }
        }

        private void time(String words) {
            times = WrittenTimes.of(words).orElseThrow();
            timeWords = words;
            beyondTitle = true;
        }

        /** Whether these words are known for something beyond the title. */
        private boolean said(Segment s) {
            return s.quoted() || times == null && WrittenTimes.of(s.text()).isPresent() || tool(s.text()).isPresent() || HAZARD.matcher(s.text()).matches()
                    || List.of(AT_HOME, ANY_TIME, BESIDE).stream().anyMatch(p -> p.matcher(s.text()).matches())
                    || longest(s.text()).isPresent() || over(s.text()).isPresent() || span(PER_STUDENT, s.text()).isPresent() || AFTER.matcher(s.text()).matches();
        }

        private Optional<String> tool(String words) {
            Matcher shared = SHARED.matcher(words);
            return plainTool(words).or(() -> shared.matches() ? plainTool(shared.group(1)) : Optional.empty());
        }

        private Optional<String> plainTool(String words) {
            Matcher use = USE.matcher(words);
            return use.matches() ? known.tool(Segment.unquoted(use.group(2))).or(() -> known.tool(words)) : Optional.empty();
        }

        private static Optional<String> span(Pattern pattern, String words) {
            Matcher m = pattern.matcher(words);
            return m.matches() ? WrittenTimes.of(m.group(1)).filter(t -> t.times().size() == 1 && t.repeats() == null).map(t -> Times.words(t.times().get(0))) : Optional.empty();
        }

        /** A bare number counts minutes, as in a field. */
        private static Optional<String> longest(String words) {
            return minutes(AT_MOST, words);
        }

        private static Optional<String> over(String words) {
            return minutes(RUN_OVER, words);
        }

        private static Optional<String> minutes(Pattern pattern, String words) {
            Matcher m = pattern.matcher(words);
            return m.matches() && m.group(1).matches("\\d{1,5}") ? Optional.of(m.group(1) + " min") : span(pattern, words);
        }

        private void further(Segment s) {
            String text = s.text();
            Matcher after = AFTER.matcher(text);
            Matcher hazard = HAZARD.matcher(text);
            Optional<String> danger = hazard.matches() ? known.hazard(hazard.group(1)) : Optional.empty();
            if (s.quoted()) {
                use(text, 1, text);
                rest(s.rest());
            } else if (text.startsWith("(") && text.endsWith(")") && text.length() > 2 && tool(text).isEmpty()) {
                line.append("text", "What to do", text.substring(1, text.length() - 1).strip(), "\n\n", text);
            } else if (times == null && WrittenTimes.of(text).isPresent()) {
                time(text);
            } else if (longest(text).isPresent()) {
                line.put("at_most", "Longest wait", longest(text).get(), text);
            } else if (span(PER_STUDENT, text).isPresent()) {
                line.put("per_student", "More for each student", span(PER_STUDENT, text).get(), text);
            } else if (over(text).isPresent()) {
                line.put("may_run_over", "May run over by", over(text).get(), text);
            } else if (BESIDE.matcher(text).matches()) {
                line.put("beside", "Somebody beside each student", "true", text);
            } else if (AT_HOME.matcher(text).matches()) {
                line.put("at_home", "May end at home", "true", text);
            } else if (ANY_TIME.matcher(text).matches()) {
                line.row.putArray("after");
                line.parts.add(Part.of("/after", "May start at any time", text));
            } else if (danger.isPresent()) {
                line.row.withArrayProperty("hazards").add(danger.get());
                line.parts.add(Part.of("/hazards/" + (line.row.path("hazards").size() - 1), "Hazard", text));
            } else if (tool(text).isPresent()) {
                uses(text);
            } else if (after.matches()) {
                line.row.withArrayProperty("after").addObject().put("step", after.group(1).strip());
                line.parts.add(Part.of("/after/" + (line.row.path("after").size() - 1) + "/step", "Follows", text));
            } else if (endsInTime(s)) {
                WrittenTimes.Beside beside = WrittenTimes.within(text).orElseThrow();
                time(beside.time());
                unknown(beside.words());
            } else {
                unknown(text);
            }
        }

        /** A tool that is known, with how many share it. */
        private void uses(String text) {
            Matcher shared = SHARED.matcher(text);
            boolean together = plainTool(text).isEmpty() && shared.matches();
            String words = together ? shared.group(1) : text;
            Matcher use = USE.matcher(words);
            String whole = known.tool(words).orElse(null);
            boolean counted = whole == null && use.matches();
            use(counted ? plainTool(words).orElseThrow() : whole, counted && use.group(1) != null ? Integer.parseInt(use.group(1)) : 1, text);
            if (together) {
                share(shared);
            }
        }

        /** The tool before it is there for several. */
        private void share(Matcher shared) {
            ArrayNode tools = line.row.withArrayProperty("tools");
            ((ObjectNode) tools.get(tools.size() - 1)).put("shared_by", shared.group(2) == null ? "2" : shared.group(2));
            line.parts.add(Part.of("/tools/" + (tools.size() - 1) + "/shared_by", "Students who share it", shared.group().substring(shared.group(1).length()).strip()));
        }

        /** Short words behind a time are a tool that is new, longer ones tell what to do. */
        private void unknown(String text) {
            Matcher shared = SHARED.matcher(text);
            boolean together = shared.matches() && (isNewTool(shared.group(1)) || shared.group(1).isEmpty() && line.has("tools"));
            String words = together ? shared.group(1) : text;
            if (together && words.isEmpty()) {
                share(shared);
            } else if (isNewTool(words)) {
                Matcher use = USE.matcher(words);
                boolean counted = use.matches() && use.group(1) != null;
                use(Segment.unquoted(use.group(2).strip()), counted ? Integer.parseInt(use.group(1)) : 1, text);
                if (together) {
                    share(shared);
                }
            } else {
                line.append("text", "What to do", text, "\n\n", text);
            }
        }

        private boolean isNewTool(String words) {
            Matcher use = USE.matcher(words);
            return beyondTitle && words.split("\\s+").length <= MOST_WORDS_OF_A_TOOL && words.length() <= 80 && use.matches() && use.group(2).matches("[\\p{L}\"].*");
        }

        private void use(String tool, int each, String words) {
            beyondTitle = true;
            line.row.withArrayProperty("tools").addObject().put("tool", tool).put("each", String.valueOf(each));
            line.parts.add(Part.of("/tools/" + (line.row.path("tools").size() - 1) + "/tool", "Tool", words));
        }
    }

    /** Puts the times of a step where its kind has them. */
    private record TimesTaken(LineRow line, WrittenTimes times, String words, Vocabulary known) {
        void put() {
            boolean own = line.row.path("kind").asText().equals(Formats.word(StepKind.MAKE));
            if (times == null && line.row.path("kind").asText().equals(Formats.word(StepKind.COLLECT))) {
                return;
            }
            if (times == null) {
                line.doubt(own ? "/student/usual" : "/lasts", "Time", "", "No time was found. Say how long it takes, such as 10 min" + (own ? ", or 5-10-20 min for the quick, the usual and the slow." : "."));
                return;
            }
            if (own) {
                student();
            } else {
                lasts();
            }
            repeats();
        }

        private void student() {
            List<Duration> three = times.three();
            line.row.putObject("student").put("quick", Times.words(three.get(0))).put("usual", Times.words(three.get(1))).put("slow", Times.words(three.get(2)));
            line.parts.add(new Part("/student/usual", "Time", words, switch (times.times().size()) {
                case 1 -> "Only the usual time is written. The quick are taken to need %s, the slow %s.".formatted(Times.words(three.get(0)), Times.words(three.get(2)));
                case 2 -> "Two times are written. The usual one is taken to be %s.".formatted(Times.words(three.get(1)));
                default -> null;
            }));
        }

        private void lasts() {
            Duration longest = times.times().get(times.times().size() - 1);
            line.row.put("lasts", Times.words(longest));
            line.parts.add(new Part("/lasts", "Time", words, times.times().size() == 1 ? null : "More than one time is written. The last was taken, %s.".formatted(Times.words(longest))));
        }

        private void repeats() {
            if (times.repeats() != null) {
                Optional<String> formula = new Amounts(known).formula(times.repeats());
                line.row.put("repeats", formula.orElse(times.repeats()));
                line.parts.add(new Part("/repeats", "Repeats in one piece", "", formula.isPresent() ? null : "“%s” is no number and no measure. Say how often.".formatted(times.repeats())));
            } else if (times.each()) {
                line.doubt("/repeats", "Repeats in one piece", "", "Each of how many? Write it behind the time, such as “%s x 5”.".formatted(words.replaceFirst(" each.*", "")));
            }
        }
    }

    @Override
    public Set<String> said(ObjectNode row, Vocabulary known) {
        Set<String> said = new HashSet<>(Set.of("title", "kind", "text"));
        if (!WrittenTimes.written(row).isEmpty()) {
            said.addAll(List.of("lasts", "student", "repeats"));
        }
        for (String time : List.of("at_most", "per_student", "may_run_over")) {
            if (!row.has(time) || isTime(row.path(time).asText())) {
                said.add(time);
            }
        }
        said.addAll(List.of("at_home", "beside"));
        if (plainTools(row)) {
            said.add("tools");
        }
        if (known.knowsHazards(row)) {
            said.add("hazards");
        }
        if (plainOrder(row)) {
            said.add("after");
        }
        return said;
    }

    /** With its times as they are read back, however they were typed. */
    @Override
    public ObjectNode spoken(ObjectNode row, Vocabulary known) {
        ObjectNode spoken = row.deepCopy();
        List.of("lasts", "at_most", "per_student", "may_run_over").forEach(key -> spell(spoken, key));
        if (spoken.path("student") instanceof ObjectNode student) {
            List.of("quick", "usual", "slow").forEach(key -> spell(student, key));
        }
        return spoken;
    }

    private static void spell(ObjectNode row, String key) {
        if (row.has(key) && isTime(row.path(key).asText())) {
            row.put(key, Times.words(Times.parse(row.path(key).asText())));
        }
    }

    /** What is no number of students who share a tool is beyond a line. */
    private static boolean plainTools(JsonNode row) {
        boolean plain = true;
        for (JsonNode tool : row.path("tools")) {
            plain &= tool.path("shared_by").asText("1").matches("\\d{1,2}");
        }
        return plain;
    }

    /** Gaps are beyond a line. */
    private static boolean plainOrder(JsonNode row) {
        boolean gaps = false;
        for (JsonNode link : row.path("after")) {
            gaps |= link.has("least") || link.has("most") || !link.has("step");
        }
        return !gaps;
    }

    private static boolean isTime(String text) {
        try {
            return !Times.parse(text).isNegative();
        } catch (IllegalArgumentException | ArithmeticException e) {
            return false;
        }
    }

    @Override
    public String written(JsonNode row, Vocabulary known, boolean quoted) {
        List<String> parts = new ArrayList<>();
        String kind = row.path("kind").asText();
        String title = row.path("title").asText();
        parts.add((kind.isEmpty() ? "" : kind + ": ") + (quoted || title.startsWith("\"") ? Segment.quotedIfNeeded(title, true) : title));
        String times = WrittenTimes.written(row);
        if (!times.isEmpty()) {
            parts.add(row.has("repeats") ? times + " x " + row.path("repeats").asText() : times);
        }
        time(row, "at_most", "at most ", "", parts);
        time(row, "per_student", "+", " for each student", parts);
        time(row, "may_run_over", "may run over ", "", parts);
        if (row.path("beside").asBoolean()) {
            parts.add("somebody beside each student");
        }
        if (row.path("at_home").asBoolean()) {
            parts.add("at home");
        }
        if (plainTools(row)) {
            row.path("tools").forEach(t -> parts.add(use(t, quoted)));
        }
        if (known.knowsHazards(row)) {
            row.path("hazards").forEach(h -> parts.add("hazard " + h.asText()));
        }
        if (plainOrder(row)) {
            order(row, parts);
        }
        return Entry.under(String.join(", ", parts), row.path("text").asText());
    }

    private static void order(JsonNode row, List<String> parts) {
        if (row.path("after").isArray() && row.path("after").isEmpty()) {
            parts.add("any time");
        }
        row.path("after").forEach(a -> parts.add("after " + a.path("step").asText()));
    }

    private static void time(JsonNode row, String key, String before, String behind, List<String> parts) {
        String typed = row.path(key).asText();
        if (isTime(typed)) {
            parts.add(before + Times.words(Times.parse(typed)) + behind);
        }
    }

    private static String use(JsonNode use, boolean quoted) {
        String each = use.path("each").asText();
        String tool = Segment.quotedIfNeeded(use.path("tool").asText(), quoted);
        String shared = use.path("shared_by").asText();
        return (each.equals("1") || each.isEmpty() ? tool : each + " x " + tool) + (shared.isEmpty() ? "" : " shared by " + shared);
    }

}
