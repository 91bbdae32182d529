package frillbook.cli;

import frillbook.source.Nearest;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which input a person means. */
final class InputName {
  private InputName() {}

  /**
   * The name of the input that {@code typed} names, by its own name or by another that is taken for
   * it alone.
   *
   * @throws Refusal with what may have been meant
   */
  static String of(Form form, String typed) {
    String name = typed.strip().toLowerCase(Locale.ROOT).replaceAll("[-\\s]+", "_");
    if (find(form, name).isPresent()) {
      return name;
    }
    List<String> meant =
        form.inputs().stream()
            .filter(input -> input.was().contains(name))
            .map(InputTemplate::name)
            .toList();
    if (meant.size() == 1) {
      return meant.get(0);
    }
    throw new Refusal(Refusal.USAGE, unknown(form, typed.strip(), meant));
  }

  /** The input of that very name. */
  static InputTemplate input(Form form, String name) {
    return find(form, name)
        .orElseThrow(() -> new Refusal(Refusal.USAGE, unknown(form, name, List.of())));
  }

  private static Optional<InputTemplate> find(Form form, String name) {
    return form.inputs().stream().filter(input -> input.name().equals(name)).findFirst();
  }

  private static String unknown(Form form, String typed, List<String> meant) {
    List<String> names = form.inputs().stream().map(InputTemplate::name).toList();
    List<String> near = meant.isEmpty() ? Nearest.to(typed, names).stream().toList() : meant;
    return "There is no input named \""
        + typed
        + "\"."
        + (near.isEmpty() ? "" : " Did you mean " + String.join(" or ", near) + "?")
        + " 'frillbook inputs' lists all.";
  }
}
