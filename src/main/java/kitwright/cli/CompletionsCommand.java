package kitwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.edit.Export;
import kitwright.ledger.Kind;

/** Prints what a shell needs to complete the words of the command line. */
final class CompletionsCommand implements Command {
  enum Shell {
    BASH,
    ZSH,
    FISH
  }

  private Shell shell = Shell.BASH;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints a script that completes commands, kinds and tables in a shell: bash, zsh or fish.",
        "For example: kitwright completions bash >"
            + " ~/.local/share/bash-completion/completions/kitwright");
    to.place(0, "SHELL", Shell.class, given -> shell = given, "bash, zsh or fish.");
  }

  @Override
  public int run(Session session) {
    session
        .out()
        .print(
            switch (shell) {
              case BASH -> bash();
              case ZSH -> zsh();
              case FISH -> fish();
            });
    return CLEAN;
  }

  private static String kinds() {
    return Stream.of(Kind.values())
        .map(kind -> kind.word().replace(' ', '-'))
        .collect(Collectors.joining(" "));
  }

  private static String words() {
    return Commands.all().stream().map(Commands.Word::name).collect(Collectors.joining(" "));
  }

  private static String bash() {
    return """
    _kitwright() {
      local word=${COMP_WORDS[COMP_CWORD]}
      if [ "$COMP_CWORD" -gt 1 ] && [ "${word#-}" != "$word" ]; then
        case ${COMP_WORDS[1]} in
    OPTIONS    esac
      elif [ "$COMP_CWORD" -eq 1 ]; then
        COMPREPLY=($(compgen -W "WORDS" -- "$word"))
      elif [ "$COMP_CWORD" -eq 2 ]; then
        case ${COMP_WORDS[1]} in
          new|amend|keys|import) COMPREPLY=($(compgen -W "KINDS" -- "$word")) ;;
          export) COMPREPLY=($(compgen -W "TABLES" -- "$word")) ;;
          *) COMPREPLY=($(compgen -f -- "$word")) ;;
        esac
      else
        COMPREPLY=($(compgen -f -- "$word"))
      fi
    }
    complete -o filenames -F _kitwright kitwright
    """
        .replace("OPTIONS", bashOptions())
        .replace("WORDS\" --", words() + "\" --")
        .replace("KINDS\" --", kinds() + "\" --")
        .replace("TABLES\" --", String.join(" ", Export.tables()) + "\" --");
  }

  private static String bashOptions() {
    return Commands.all().stream()
        .map(
            word ->
                "      "
                    + word.name()
                    + ") COMPREPLY=($(compgen -W \""
                    + String.join(" ", options(word))
                    + "\" -- \"$word\")) ;;\n")
        .collect(Collectors.joining());
  }

  /** The options of a command, by their long names. */
  private static List<String> options(Commands.Word word) {
    return CommandLineRun.line(word, 80).getCommandSpec().options().stream()
        .map(option -> option.longestName())
        .sorted()
        .toList();
  }

  private static String zsh() {
    List<String> lines =
        Commands.all().stream()
            .map(word -> "    '" + word.name() + ":" + quoted(word.does()) + "'")
            .toList();
    return "#compdef kitwright\n_kitwright() {\n  local -a commands=(\n"
        + String.join("\n", lines)
        + "\n  )\n"
        + "  if (( CURRENT == 2 )); then\n    _describe command commands\n"
        + "  elif [[ $words[CURRENT] == -* ]]; then\n    case $words[2] in\n"
        + zshOptions()
        + "    esac\n"
        + "  elif (( CURRENT == 3 )); then\n    case $words[2] in\n"
        + "      new|amend|keys|import) compadd -- "
        + kinds()
        + " ;;\n      export) compadd -- "
        + String.join(" ", Export.tables())
        + " ;;\n      *) _files ;;\n    esac\n  else\n    _files\n  fi\n}\n"
        + "compdef _kitwright kitwright\n";
  }

  private static String zshOptions() {
    return Commands.all().stream()
        .map(
            word ->
                "      "
                    + word.name()
                    + ") compadd -- "
                    + String.join(" ", options(word))
                    + " ;;\n")
        .collect(Collectors.joining());
  }

  private static String fishOptions() {
    return Commands.all().stream()
        .flatMap(
            word ->
                options(word).stream()
                    .map(
                        option ->
                            "complete -c kitwright -n '__fish_seen_subcommand_from "
                                + word.name()
                                + "' -l "
                                + option.substring(2)
                                + "\n"))
        .collect(Collectors.joining());
  }

  private static String fish() {
    String lines =
        Commands.all().stream()
            .map(
                word ->
                    "complete -c kitwright -n __fish_use_subcommand -f -a "
                        + word.name()
                        + " -d '"
                        + quoted(word.does())
                        + "'\n")
            .collect(Collectors.joining());
    return lines
        + fishOptions()
        + "complete -c kitwright -n '__fish_seen_subcommand_from new amend keys import' -f -a '"
        + kinds()
        + "'\ncomplete -c kitwright -n '__fish_seen_subcommand_from export' -f -a '"
        + String.join(" ", Export.tables())
        + "'\n";
  }

  /** As part of a text in single quotes, where zsh also parts words by a colon. */
  private static String quoted(String text) {
    return text.replace("'", "’").replace(":", " –");
  }
}
