package frillbook;

import frillbook.reading.PackagedTemplates;
import frillbook.source.TemplateSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/**
 * The built-in templates after slips of the hand.
 *
 * @param files the text of each by its name
 */
public record DamagedTemplates(Map<String, String> files) implements TemplateSource {
  private static final Map<String, String> WHOLE = new TreeMap<>(PackagedTemplates.files());

  /** With a slip or two in one file, the same for the same seed. */
  public static DamagedTemplates inOne(long seed) {
    Random dice = new Random(seed);
    List<String> names = List.copyOf(WHOLE.keySet());
    String name = names.get(dice.nextInt(names.size()));
    Map<String, String> files = new TreeMap<>(WHOLE);
    files.computeIfPresent(name, (n, text) -> damaged(text, dice));
    if (dice.nextBoolean()) {
      files.computeIfPresent(name, (n, text) -> damaged(text, dice));
    }
    return new DamagedTemplates(files);
  }

  /** With a slip in every file, the same for the same seed. */
  public static DamagedTemplates inAll(long seed) {
    Random dice = new Random(seed);
    Map<String, String> files = new TreeMap<>(WHOLE);
    files.replaceAll((name, text) -> damaged(text, dice));
    return new DamagedTemplates(files);
  }

  private static String damaged(String text, Random dice) {
    Damage[] kinds = Damage.values();
    return kinds[dice.nextInt(kinds.length)].to(text, dice);
  }

  @Override
  public Optional<String> text(String file) {
    return Optional.ofNullable(files.get(file));
  }
}
