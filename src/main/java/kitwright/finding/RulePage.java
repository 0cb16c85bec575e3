package kitwright.finding;

/**
 * What a person can read about a rule.
 *
 * @param name the rule's plain name, kebab-case
 * @param summary one line: the fault it fires on
 * @param help the whole page, Markdown
 */
public record RulePage(String name, String summary, String help) {}
