package benchful.plans.whatif;

import benchful.core.lesson.advice.BreakChange;
import benchful.core.lesson.advice.Change;
import benchful.web.Times;
import benchful.web.forms.FormTree;
import benchful.web.forms.JsonPointers;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What suggested changes are in the setup of a class: which fields get which values. */
final class SetupChange {
    private final JsonNode setup;
    private final Map<String, Integer> owned;
    private final Map<Change, WhatIf> others;
    private final Map<String, String> fields = new LinkedHashMap<>();

    private SetupChange(JsonNode setup, Map<String, Integer> owned, Map<Change, WhatIf> others) {
        this.setup = setup;
        this.owned = owned;
        this.others = others;
    }

    /**
     * One after the other, each upon what those before it left.
     *
     * @param owned  how many there are of each tool that only the project counts: its number no longer goes once the class has its own
     * @param others what changes that the engine does not know by itself, such as a smaller size, are in the setup
     */
    static WhatIf of(List<Change> changes, FormTree tree, JsonNode setup, Map<String, Integer> owned, Map<Change, WhatIf> others) {
        Map<String, String> fields = new LinkedHashMap<>();
        JsonNode now = setup;
        for (Change change : changes) {
            SetupChange one = new SetupChange(now, owned, others);
            one.make(change);
            fields.putAll(one.fields);
            now = new WhatIf(one.fields).over(tree, now);
        }
        return new WhatIf(fields);
    }

    private void make(Change change) {
        if (change instanceof Change.Helper) {
            put("/helpers", number("/helpers") + 1);
        } else if (change instanceof Change.MoreTools more) {
            more.more().forEach(tool -> bring(JsonPointers.below("/tools", tool.name()), owned.getOrDefault(tool.name(), 0), tool.count()));
        } else if (change instanceof Change.FewerStudents fewer) {
            fewer(fewer.fewer());
        } else if (change instanceof Change.PrepareAhead ahead) {
            add("/prepared_ahead", ahead.steps());
        } else if (change instanceof Change.TakenHome home) {
            add("/homework", home.steps());
        } else if (change instanceof Change.OwnPace) {
            put("/own_pace", "true");
        } else if (change instanceof Change.OneMoreGroup) {
            put("/groups", Math.max(1, number("/groups")) + 1);
        } else if (change instanceof Change.ShownToGroups shown) {
            put("/groups", Math.max(shown.groups(), number("/groups")));
            add("/shown_to_groups", shown.steps());
        } else if (change instanceof BreakChange pause) {
            pause(pause);
        } else if (others.containsKey(change)) {
            fields.putAll(others.get(change).fields());
        } else {
            hours(change);
        }
    }

    private void bring(String pointer, int without, int more) {
        put(pointer, setup.at(pointer).asInt(without) + more);
    }

    private void hours(Change change) {
        int last = setup.path("meetings").size() - 1;
        if (change instanceof Change.EarlierStart earlier) {
            put("/meetings/0/starts", time("/meetings/0/starts").minus(earlier.by()));
        } else if (change instanceof Change.LongerBooking longer) {
            String end = "/meetings/" + last + "/ends";
            put(end, time(end).plus(longer.by()));
        } else if (change instanceof Change.MoreMeetings more) {
            again(more, last);
        } else if (change instanceof Change.SplitInTwo split) {
            split(split);
        }
    }

    /** With the breaks that only the last meeting has. */
    private void again(Change.MoreMeetings more, int last) {
        LocalDate date = LocalDate.parse(setup.at("/meetings/" + last + "/date").asText());
        int pauses = setup.path("breaks").size();
        for (int i = 1; i <= more.times(); i++) {
            meeting(last + i, date.plus(more.later().multipliedBy(i)), time("/meetings/" + last + "/starts"), time("/meetings/" + last + "/ends"));
            for (int j = 0; j < setup.path("breaks").size(); j++) {
                if (number("/breaks/" + j + "/meeting") == last + 1) {
                    another("/breaks/" + pauses++, "/breaks/" + j, last + 1 + i);
                }
            }
        }
    }

    /** The same break in one meeting only, or in all where that is 0. */
    private void another(String place, String like, int meeting) {
        setup.at(like).properties().forEach(field -> put(place + "/" + field.getKey(), field.getValue().asText()));
        if (meeting > 0) {
            put(place + "/meeting", meeting);
        }
    }

    /** The break that stands fixed at that time. */
    private void pause(BreakChange change) {
        int more = setup.path("breaks").size();
        for (int i = 0; i < setup.path("breaks").size(); i++) {
            String pause = "/breaks/" + i;
            if (time(pause + "/at").equals(change.at())) {
                if (change instanceof BreakChange.Moved moved) {
                    put(pause + "/at", moved.to());
                } else if (change instanceof BreakChange.Shortened shortened) {
                    put(pause + "/lasts", Times.words(shortened.to()));
                } else if (change instanceof BreakChange.Split split) {
                    pause(pause, split.to(), split.first());
                    another("/breaks/" + more, pause, number(pause + "/meeting"));
                    pause("/breaks/" + more++, split.later(), split.second());
                }
            }
        }
    }

    private void pause(String pointer, LocalTime at, Duration lasts) {
        put(pointer + "/at", at);
        put(pointer + "/lasts", Times.words(lasts));
    }

    private void meeting(int index, LocalDate date, LocalTime starts, LocalTime ends) {
        put("/meetings/" + index + "/date", date);
        put("/meetings/" + index + "/starts", starts);
        put("/meetings/" + index + "/ends", ends);
    }

    private void split(Change.SplitInTwo split) {
        LocalTime starts = time("/meetings/0/starts");
        LocalTime middle = starts.plus(split.first());
        LocalDate date = LocalDate.parse(setup.at("/meetings/0/date").asText());
        meeting(1, date.plus(split.later()), starts, starts.plus(Duration.between(middle, time("/meetings/0/ends"))));
        put("/meetings/0/ends", middle);
        List<String> first = new ArrayList<>(List.of("/rest/meeting"));
        IntStream.range(0, setup.path("breaks").size()).forEach(i -> first.add("/breaks/" + i + "/meeting"));
        first.stream().filter(place -> !setup.at(place).isMissingNode()).forEach(place -> put(place, ""));
    }

    /** Each who stays away wanted the size that most of those want who are not known by name. */
    private void fewer(int students) {
        put("/headcount", number("/headcount") - students);
        Map<String, Integer> mix = new LinkedHashMap<>();
        setup.path("sizes").properties().forEach(size -> mix.put(JsonPointers.below("/sizes", size.getKey()), size.getValue().asInt()));
        int unsaid = number("/headcount") - setup.path("students").size() - mix.values().stream().mapToInt(n -> n).sum();
        for (int i = 0; i < students; i++) {
            int most = mix.values().stream().mapToInt(n -> n).max().orElse(0);
            if (unsaid >= most) {
                unsaid--;
            } else {
                String size = mix.keySet().stream().filter(place -> mix.get(place) == most).findFirst().orElseThrow();
                mix.put(size, most - 1);
                put(size, most - 1);
            }
        }
    }

    private void add(String list, List<String> steps) {
        int next = setup.at(list).size();
        for (String step : steps) {
            put(list + "/" + next++, step);
        }
    }

    private int number(String pointer) {
        return setup.at(pointer).asInt(0);
    }

    private LocalTime time(String pointer) {
        return LocalTime.parse(setup.at(pointer).asText());
    }

    private void put(String pointer, Object value) {
        fields.put(pointer, value.toString());
    }
}
