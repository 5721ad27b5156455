package benchful.web;

/**
 * Told within the transaction in which something gets another name, so that those who refer to it by name follow.
 *
 * @param kind the entity's class
 */
public record Renamed(Class<?> kind, String from, String to) {}
