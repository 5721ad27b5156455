package benchful.core;

/** How practised a group is. It scales students' times and the waste allowance. */
public enum SkillLevel {
    BEGINNER,
    IMPROVER,
    EXPERIENCED
}
