package kitwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import kitwright.cutting.CutPlan;
import kitwright.cutting.Tenths;
import kitwright.cutting.solve.Area;
import kitwright.cutting.solve.BarPiece;
import kitwright.cutting.solve.CutBar;
import kitwright.cutting.solve.CutPanel;
import kitwright.cutting.solve.CutStrip;
import kitwright.cutting.solve.PanelPiece;
import kitwright.cutting.solve.Shortfall;
import kitwright.cutting.solve.Span;
import kitwright.finding.PlainJson;

/** A cut plan as JSON; lengths in mm. */
final class CutJson {
  private CutJson() {}

  static String of(CutPlan plan) {
    return PlainJson.of(json -> write(plan, json));
  }

  private static void write(CutPlan plan, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("cut", plan.cut().id());
    json.writeBooleanField("proved-best", plan.outcome().isProvedBest());
    json.writeNumberField("stock-value", plan.outcome().value());
    json.writeNumberField("bound", plan.outcome().bound());
    json.writeArrayFieldStart("missing");
    for (Shortfall each : plan.missing()) {
      json.writeStartObject();
      json.writeStringField("mark", each.mark());
      json.writeNumberField("qty", each.missing());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("pieces");
    if (plan.lengths().isPresent()) {
      for (CutBar bar : plan.lengths().get().bars()) {
        bar(bar, json);
      }
    }
    if (plan.panels().isPresent()) {
      for (CutPanel panel : plan.panels().get().panels()) {
        panel(panel, json);
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void bar(CutBar bar, JsonGenerator json) throws IOException {
    open(bar.stock(), bar.number(), json);
    for (BarPiece piece : bar.pieces()) {
      json.writeStartObject();
      json.writeStringField("mark", piece.mark());
      json.writeNumberField("copy", piece.copy());
      json.writeNumberField("piece", piece.piece());
      json.writeNumberField("of", piece.of());
      mm("from", piece.from(), json);
      mm("length", piece.length(), json);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("remnants");
    for (Span rest : bar.remnants()) {
      json.writeStartObject();
      mm("from", rest.from(), json);
      mm("length", rest.length(), json);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void panel(CutPanel panel, JsonGenerator json) throws IOException {
    open(panel.stock(), panel.number(), json);
    for (CutStrip strip : panel.strips()) {
      for (PanelPiece piece : strip.pieces()) {
        json.writeStartObject();
        json.writeStringField("mark", piece.mark());
        json.writeNumberField("copy", piece.copy());
        area(piece.area(), json);
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    json.writeArrayFieldStart("remnants");
    for (Area rest : panel.remnants()) {
      json.writeStartObject();
      area(rest, json);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void open(String stock, int number, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("stock", stock);
    json.writeNumberField("number", number);
    json.writeArrayFieldStart("parts");
  }

  private static void area(Area area, JsonGenerator json) throws IOException {
    mm("along", area.along(), json);
    mm("across", area.across(), json);
    mm("length", area.length(), json);
    mm("width", area.width(), json);
  }

  private static void mm(String name, long tenths, JsonGenerator json) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(Tenths.mm(tenths));
  }
}
