package kitwright.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An editor’s side of the Language Server Protocol, as far as one file is opened and asked about.
 */
final class LanguageServer implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Process process;
  private final OutputStream out;
  private final InputStream in;
  private final Map<String, JsonNode> diagnostics = new HashMap<>();
  private int asked;

  private LanguageServer(Process process) {
    this.process = process;
    this.out = process.getOutputStream();
    this.in = process.getInputStream();
  }

  static LanguageServer start(List<String> command, Path folder) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    LanguageServer server = new LanguageServer(process);
    ObjectNode initialize = JSON.createObjectNode();
    initialize.put("processId", ProcessHandle.current().pid());
    initialize.put("rootUri", folder.toUri().toString());
    initialize
        .putObject("capabilities")
        .putObject("textDocument")
        .putObject("hover")
        .putArray("contentFormat")
        .add("markdown");
    server.ask("initialize", initialize);
    server.tell("initialized", JSON.createObjectNode());
    return server;
  }

  /** Opens a file in the editor, and gives what is underlined in it. */
  JsonNode open(Path file, String text) throws IOException {
    String uri = file.toUri().toString();
    ObjectNode document = JSON.createObjectNode();
    document
        .putObject("textDocument")
        .put("uri", uri)
        .put("languageId", "yaml")
        .put("version", 1)
        .put("text", text);
    tell("textDocument/didOpen", document);
    while (!diagnostics.containsKey(uri)) {
      take();
    }
    return diagnostics.get(uri);
  }

  /** What is offered or told at a place; both counted from 0. */
  JsonNode at(String method, Path file, int line, int column) throws IOException {
    ObjectNode where = JSON.createObjectNode();
    where.putObject("textDocument").put("uri", file.toUri().toString());
    where.putObject("position").put("line", line).put("character", column);
    return ask("textDocument/" + method, where);
  }

  private JsonNode ask(String method, ObjectNode params) throws IOException {
    int id = ++asked;
    send(
        JSON.createObjectNode()
            .put("jsonrpc", "2.0")
            .put("id", id)
            .put("method", method)
            .<ObjectNode>set("params", params));
    while (true) {
      JsonNode message = take();
      if (!message.has("method") && message.path("id").asInt() == id) {
        return message.path("result");
      }
    }
  }

  private void tell(String method, ObjectNode params) throws IOException {
    send(
        JSON.createObjectNode()
            .put("jsonrpc", "2.0")
            .put("method", method)
            .<ObjectNode>set("params", params));
  }

  /**
   * The next message; what the server asks is answered, with nothing but the settings it asks for.
   */
  private JsonNode take() throws IOException {
    JsonNode message = receive();
    String method = message.path("method").asText();
    if (method.equals("textDocument/publishDiagnostics")) {
      diagnostics.put(
          message.path("params").path("uri").asText(), message.path("params").path("diagnostics"));
    } else if (message.has("method") && message.has("id")) {
      ObjectNode answer = JSON.createObjectNode().put("jsonrpc", "2.0");
      answer.set("id", message.get("id"));
      if (method.equals("workspace/configuration")) {
        ArrayNode all = answer.putArray("result");
        message.path("params").path("items").forEach(item -> all.addNull());
      } else {
        answer.putNull("result");
      }
      send(answer);
    }
    return message;
  }

  private void send(JsonNode message) throws IOException {
    byte[] body = JSON.writeValueAsBytes(message);
    out.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    out.write(body);
    out.flush();
  }

  private JsonNode receive() throws IOException {
    int length = 0;
    for (String line = line(); !line.isEmpty(); line = line()) {
      if (line.startsWith("Content-Length: ")) {
        length = Integer.parseInt(line.substring(16));
      }
    }
    return JSON.readTree(in.readNBytes(length));
  }

  private String line() throws IOException {
    StringBuilder line = new StringBuilder();
    for (int c = in.read(); c != '\n'; c = in.read()) {
      if (c < 0) {
        throw new IOException("the language server has ended");
      }
      line.append(c == '\r' ? "" : (char) c);
    }
    return line.toString();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
