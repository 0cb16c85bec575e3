package kitwright.edit;

/**
 * A file to be written.
 *
 * @param path from the ledger's root, with forward slashes
 */
public record NewFile(String path, String text) {}
