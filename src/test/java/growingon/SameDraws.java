package growingon;

import net.jqwik.api.AfterFailureMode;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Lets every property draw the same in every build: one without a seed of its own gets this one,
 * and none goes on where an earlier build failed. The profile {@code tries} draws anew and tries
 * more often; the profile {@code pit}, which runs a property once for each change of the code,
 * tries less often and does not look for the simplest case. It is registered for all properties in
 * {@code META-INF/services}.
 */
public final class SameDraws implements AroundPropertyHook {
  private static final String SEED = "20261107";
  private static final int USUAL_TRIES = 1000;

  /** Whether properties draw anew in this build. */
  static boolean drawsAnew() {
    return Boolean.getBoolean("tries.anew");
  }

  private static int times() {
    return Integer.getInteger("tries.times", 1);
  }

  private static int timesFewer() {
    return Integer.getInteger("tries.fewer", 1);
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    PropertyAttributes attributes = context.attributes();
    attributes.setAfterFailure(AfterFailureMode.RANDOM_SEED);
    attributes.setSeed(drawsAnew() ? null : attributes.seed().orElse(SEED));
    int tries = times() * attributes.tries().orElse(USUAL_TRIES);
    attributes.setTries(Math.max(1, tries / timesFewer()));
    if (timesFewer() > 1) {
      attributes.setShrinking(ShrinkingMode.OFF);
    }
    return property.execute();
  }

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }
}
