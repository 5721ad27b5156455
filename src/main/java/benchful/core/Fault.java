package benchful.core;

/**
 * One thing wrong with an input, said so that its writer can mend it.
 *
 * @param pointer where, as a JSON Pointer (RFC 6901) into the input: {@code /steps/3/title}; empty for the whole
 * @param detail what is wrong and how to mend it: a sentence
 */
public record Fault(String pointer, String detail) {}
