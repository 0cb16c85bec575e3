package kitwright.edit;

/**
 * A file to be written.
 *
 * @param path from the ledger's root, with forward slashes
 */
public record NewFile(String path, String text) {
  /** The same with a first line that names the ledger’s schema to editors. */
  public NewFile forEditors() {
    return new NewFile(path, Starter.withSchema(path, text));
  }
}
