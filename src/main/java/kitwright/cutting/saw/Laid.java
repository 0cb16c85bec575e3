package kitwright.cutting.saw;

/** A part and where it lies on its piece of stock. */
public record Laid(Rect rect, Use.Part part) {}
