package growingon.load.source;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A key of a JSON file: what the reader knows, and what the generated JSON Schema tells an editor.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.FIELD)
public @interface Key {
  /** The key as written in the file. */
  String value();

  /** What it is, with its unit and default. */
  String says();

  /** Whether it must be there. */
  boolean needed() default false;

  /** The words it may be, if it is one of a few. */
  String[] words() default {};

  /** Least number. */
  double least() default Double.NEGATIVE_INFINITY;

  /** Greatest number. */
  double most() default Double.POSITIVE_INFINITY;

  /** How many values a list has, 0 if it is no list. */
  int items() default 0;
}
