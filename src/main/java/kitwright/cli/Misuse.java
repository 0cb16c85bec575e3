package kitwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.value.Nearest;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line library’s complaints, in a builder’s words. */
final class Misuse {
  private Misuse() {}

  /** What is wrong, and where it can be said how to mend it. */
  static String sentence(ParameterException misused) {
    if (misused instanceof UnmatchedArgumentException unknown
        && !unknown.getUnmatched().isEmpty()) {
      return unmatched(unknown);
    }
    if (misused instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing(missing.getMissing().get(0));
    }
    if (misused instanceof OverwrittenOptionException twice) {
      return "“" + name(twice.getOverwritten()) + "” stands twice. Give it once.";
    }
    Optional<ArgSpec> argument = Optional.ofNullable(misused.getArgSpec());
    if (argument.isPresent() && misused.getValue() != null) {
      return unsuited(argument.get(), misused.getValue());
    }
    String said = String.valueOf(misused.getMessage()).replace("\n", " ");
    return said.endsWith(".") ? said : said + ".";
  }

  private static String unmatched(UnmatchedArgumentException unknown) {
    String word = unknown.getUnmatched().get(0);
    if (!word.startsWith("-")) {
      return "“" + word + "” is a word too many.";
    }
    String option = word.replaceFirst("=.*", "");
    List<String> known = new ArrayList<>();
    unknown
        .getCommandLine()
        .getCommandSpec()
        .options()
        .forEach(each -> known.addAll(List.of(each.names())));
    return "There is no option “"
        + option
        + "” here."
        + Nearest.to(option, known).map(near -> " Did you mean “" + near + "”?").orElse("");
  }

  private static String missing(ArgSpec argument) {
    return argument.isOption()
        ? "Behind “"
            + name(argument)
            + "” stands nothing. Write "
            + name(argument)
            + " "
            + wanted(argument)
            + "."
        : "It is not said which: " + argument.paramLabel() + " is missing.";
  }

  private static String unsuited(ArgSpec argument, String value) {
    String where =
        argument.isOption() ? "behind “" + name(argument) + "”" : "for " + argument.paramLabel();
    return "“" + value + "” cannot stand " + where + ". Write " + wanted(argument) + ".";
  }

  private static String wanted(ArgSpec argument) {
    Class<?> type = argument.type();
    if (type.isEnum()) {
      return Arrays.stream(type.getEnumConstants())
          .map(each -> String.valueOf(each).toLowerCase(Locale.ROOT))
          .collect(Collectors.joining(" or "));
    }
    return type == int.class || type == Integer.class ? "a whole number" : argument.paramLabel();
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }
}
