package benchful.projects.writing;

import benchful.web.Writing;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;

/**
 * What stands beside a box of lines.
 *
 * @param rules what a line may say: never more than three
 */
@TemplateData
public record BoxWords(String label, String example, List<String> rules) {
    private static final Map<String, BoxWords> WORDS = Map.of(
            "/sizes", new BoxWords("The sizes, one on each line", "Small: height 15 cm, width 10 cm\nLarge: height 21 cm, width 15 cm", List.of(
                    "The size’s name and a colon, then what is measured with its number and unit, commas between.",
                    "Amounts of materials may then use the words: “30 cm + 5 x height”.",
                    "If there is only one size, leave it as it is.")),
            "/materials", new BoxWords("What one piece takes, one material on each line", "linen thread 30 cm + 5 x height\nbook cloth 2 pieces of 20 cm by 15 cm\nPVA glue 5 ml, one for the class", List.of(
                    "Name and amount: “linen thread 30 cm”, “4 rivets”, “card 2 pieces of 20 cm by 15 cm”.",
                    "Then, after commas, what else there is: “waste 5%”, “one for the class”, “on the bench”, “choose colour”, “or grey card”.",
                    "Lines copied from a letter, a list with bullets or a table are read too.")),
            "/tools", new BoxWords("Tools, one on each line", "awl\nneedle 2\nsafety glasses, each their own", List.of(
                    "Without a number there are enough for all. Where one is scarce, write how many there are: “needle 2”.",
                    "“each their own” for what nobody may share.",
                    "Tools that steps name are put here by themselves.")),
            "/steps", new BoxWords("The steps, one on each line", "together: Welcome, 10 min\nshow: How to sew, 5 min\nmake: Sew the sections, 4-6-10 min x 5, needle\n  Take the needle in at the first hole.\nwait: The glue dries, 20 min", List.of(
                    "Title, time, tools, commas between: “Sew the sections, 4-6-10 min x 5, awl”. Three times are the quick, the usual and the slow student’s; “x 5” where it is done five times, “press shared by 2” for pairs.",
                    "Begin with “show:”, “make:”, “wait:”, “together:” or “ahead:” to say what kind of step it is.",
                    "What to do stands on the next lines, a little further in.")));

    static BoxWords of(String list) {
        BoxWords words = WORDS.get(list);
        Writing writing = Writing.current();
        return new BoxWords(words.label, words.example, words.rules.stream().map(writing::spelt).toList());
    }
}
