package benchful.core.lesson;

/** The row of the plan's picture that a block stands in. Demonstrations are drawn for the tutor as well, see {@link TutorLoad}. */
public enum Lane {
    CLASS, WAIT, EQUIPMENT, HOME
}
