package growingon.money;

/** A grade by the name of its ladder and its own. */
public record GradeName(String ladder, String grade) {}
