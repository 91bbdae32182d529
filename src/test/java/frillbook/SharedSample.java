package frillbook;

import java.util.function.Supplier;

/**
 * What all tests of a class look at, made once.
 *
 * <p>While mutants are tried it is made anew for each test: a mutant is tried only by the tests
 * that reach it, and what is made before the first test, as in {@code @BeforeAll}, reaches it for
 * that one alone.
 */
public final class SharedSample<T> {
  private final Supplier<T> maker;
  private T made;

  public SharedSample(Supplier<T> maker) {
    this.maker = maker;
  }

  public T get() {
    if (made == null || SampleBriefs.areScaled()) {
      made = maker.get();
    }
    return made;
  }
}
