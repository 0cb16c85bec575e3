package kitwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitwright.cutting.CutPlan;
import kitwright.cutting.DoneCut;
import kitwright.cutting.PieceCut;
import kitwright.cutting.Tenths;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.cutting.saw.Way;
import kitwright.finding.PlainJson;

/** A cut plan as JSON; lengths in mm. */
final class CutJson {
  private final JsonGenerator json;

  private CutJson(JsonGenerator json) {
    this.json = json;
  }

  static String of(CutPlan plan) {
    return PlainJson.of(json -> new CutJson(json).plan(plan));
  }

  static String of(DoneCut done) {
    return PlainJson.of(json -> new CutJson(json).done(done));
  }

  private void done(DoneCut done) throws IOException {
    json.writeStartObject();
    json.writeStringField("cut", done.cut().id());
    json.writeStringField("done", done.cut().done().orElseThrow().toString());
    if (done.took().isPresent()) {
      counts("used", "stock", done.took().get());
    }
    strings("left-overs", done.left());
    json.writeEndObject();
  }

  private void plan(CutPlan plan) throws IOException {
    json.writeStartObject();
    json.writeStringField("cut", plan.cut().id());
    json.writeBooleanField(
        "proved-best", plan.outcome().isProvedBest() && !plan.pieces().isEmpty());
    json.writeStringField("among", "plans " + plan.manner().words());
    json.writeStringField("quality", plan.quality());
    if (plan.worth().isPresent()) {
      json.writeStringField("stock-worth", plan.worth().get().toString());
    }
    json.writeNumberField("stock-value", plan.outcome().value());
    json.writeNumberField("bound", plan.outcome().bound());
    counts("used", "stock", plan.used());
    counts("missing", "mark", plan.missing());
    strings("refused", List.copyOf(plan.refused().values()));
    strings("withheld", plan.rack().withheld());
    strings("notes", plan.notes());
    json.writeArrayFieldStart("pieces");
    for (PieceCut piece : plan.pieces()) {
      piece(piece);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void piece(PieceCut piece) throws IOException {
    json.writeStartObject();
    json.writeStringField("stock", piece.stock().id());
    json.writeNumberField("number", piece.number());
    json.writeArrayFieldStart("parts");
    for (Board.Piece each : piece.board().becoming(Use.Part.class).toList()) {
      Use.Part part = (Use.Part) each.use();
      json.writeStartObject();
      json.writeStringField("mark", part.mark());
      json.writeNumberField("copy", part.copy());
      json.writeNumberField("piece", part.piece());
      json.writeNumberField("of", part.of());
      json.writeBooleanField("turned", part.turned());
      rect(each.rect());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("remnants");
    for (Board.Piece left : piece.board().becoming(Use.Left.class).toList()) {
      json.writeStartObject();
      rect(left.rect());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cuts");
    cuts(piece.board());
    json.writeEndArray();
    json.writeEndObject();
  }

  /** In an order in which they can be made. */
  private void cuts(Board start) throws IOException {
    Board board = start;
    while (board instanceof Board.Sawn sawn) {
      json.writeStartObject();
      json.writeStringField("way", sawn.way().name().toLowerCase(Locale.ROOT));
      mm("at", sawn.at());
      mm("kerf", sawn.kerf());
      boolean cross = sawn.way() == Way.CROSS;
      mm("from", cross ? sawn.rect().across() : sawn.rect().along());
      mm("length", cross ? sawn.rect().width() : sawn.rect().length());
      json.writeEndObject();
      cuts(sawn.near());
      board = sawn.far();
    }
  }

  private void counts(String name, String key, Map<String, Integer> counts) throws IOException {
    json.writeArrayFieldStart(name);
    for (Map.Entry<String, Integer> each : counts.entrySet()) {
      json.writeStartObject();
      json.writeStringField(key, each.getKey());
      json.writeNumberField("qty", each.getValue());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void strings(String name, List<String> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }

  private void rect(Rect rect) throws IOException {
    mm("along", rect.along());
    mm("across", rect.across());
    mm("length", rect.length());
    mm("width", rect.width());
  }

  private void mm(String name, long tenths) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(Tenths.mm(tenths));
  }
}
