package frillbook.cli;

import frillbook.source.Nearest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a command line, in our own words and not in the library's. */
final class Misuse {
  /** What stands for an option of ours, by what a person may call it. */
  private static final Map<String, String> OTHER_NAMES =
      Map.ofEntries(
          Map.entry("--set", "--input"),
          Map.entry("--color", "--input frill_fabric_words"),
          Map.entry("--colour", "--input frill_fabric_words"),
          Map.entry("--size", "--diameter"),
          Map.entry("--spacing", "--ring-spacing"),
          Map.entry("--width", "--fabric-width"),
          Map.entry("--file", "--output"),
          Map.entry("--overwrite", "--force"),
          Map.entry("--money", "--currency"));

  private Misuse() {}

  /** One sentence or two, with a full stop. */
  static String told(ParameterException problem) {
    CommandLine line = problem.getCommandLine();
    if (problem instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched.getUnmatched().get(0), unmatched.isUnknownOption(), line);
    } else if (problem instanceof MissingParameterException missing) {
      return missing(missing.getMissing().get(0));
    } else if (problem instanceof OverwrittenOptionException twice) {
      return name(twice.getOverwritten()) + " is given twice. Give it once.";
    } else if (problem.getCause() instanceof TypeConversionException unusable) {
      return name(problem.getArgSpec()) + ": " + unusable.getMessage() + ".";
    } else if (!line.getSubcommands().isEmpty()) {
      return "A command is missing: " + String.join(", ", line.getSubcommands().keySet()) + ".";
    }
    return problem.getMessage() + ".";
  }

  private static String unmatched(String typed, boolean option, CommandLine line) {
    if (option) {
      return option(typed.split("=", 2)[0], line);
    } else if (line.getSubcommands().isEmpty()) {
      return "Found \"" + typed + "\", and nothing more is expected here.";
    }
    return "There is no command "
        + typed
        + "."
        + meant(Nearest.to(typed, line.getSubcommands().keySet()));
  }

  private static String option(String typed, CommandLine line) {
    List<String> names =
        line.getCommandSpec().options().stream()
            .flatMap(option -> Stream.of(option.names()))
            .filter(name -> name.startsWith("--"))
            .toList();
    Optional<String> other =
        Optional.ofNullable(OTHER_NAMES.get(typed))
            .filter(name -> names.contains(name.split(" ", 2)[0]));
    return "There is no option " + typed + "." + meant(other.or(() -> Nearest.to(typed, names)));
  }

  private static String meant(Optional<String> name) {
    return name.map(it -> " Did you mean " + it + "?").orElse("");
  }

  private static String missing(ArgSpec argument) {
    String name = name(argument);
    return argument.isPositional()
        ? name + " is missing: " + argument.description()[0]
        : name + " needs a value: " + name + " " + argument.paramLabel() + ".";
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }
}
