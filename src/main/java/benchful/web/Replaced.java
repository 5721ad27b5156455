package benchful.web;

/** Told when all that is stored was replaced, as by a backup that was put back, so that whoever keeps some of it reads it anew. */
public record Replaced() {}
