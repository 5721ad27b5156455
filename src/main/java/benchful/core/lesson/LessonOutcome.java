package benchful.core.lesson;

/** How planning ends: with a plan (which may run over the hours), or with what the tutor must mend first. */
public sealed interface LessonOutcome permits Planned, Contradiction {
}
