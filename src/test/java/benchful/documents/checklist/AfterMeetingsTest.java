package benchful.documents.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.PrintSamples;
import benchful.documents.parts.PrintSource;
import java.util.List;
import org.junit.jupiter.api.Test;

class AfterMeetingsTest {
    private static final PrintSource DISHES = PrintSamples.source(
            List.of("classes/leaf-print-dishes-two-evenings.yaml", "projects/leaf-print-dish.yaml", "venues/boatshed-studio.yaml"));

    @Test
    void listsTheTutorsWorkAfterEachMeeting() {
        List<ChecklistContent.Section> sections = AfterMeetings.sections(DISHES);
        assertThat(sections).extracting(ChecklistContent.Section::title).containsExactly("After the meeting of Tue 25 May 2027", "After the meeting of Tue 8 Jun 2027");
        assertThat(sections.get(0).items()).extracting(ChecklistContent.Item::text).containsExactly(
                "step 12, The tutor loads the kiln, 32 min, done by Sun 6 Jun 2027, 18:30.", "step 13, First firing, and the kiln cools begins; ready Thu 3 Jun 2027, 21:12.");
        assertThat(sections.get(1).items()).extracting(item -> item.at() + " " + item.text()).containsExactly(
                "From Tue 8 Jun 2027, 20:15: step 20, The tutor loads the kiln again, 38 min.",
                "Tue 8 Jun 2027, 20:53 step 21, Second firing, and the kiln cools begins; ready Thu 10 Jun 2027, 20:53.",
                "From Thu 10 Jun 2027, 20:53: step 22, Collect your dish. Tell the students.");
    }

    @Test
    void leavesItOutOfWhatHappensDuringTheClass() {
        assertThat(During.section(DISHES).items()).extracting(ChecklistContent.Item::text)
                .anyMatch(text -> text.contains("The dish dries; ready")).noneMatch(text -> text.contains("firing"));
    }
}
