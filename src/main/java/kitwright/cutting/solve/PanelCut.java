package kitwright.cutting.solve;

import java.util.List;

/** A panel of a kind and the strips cut from it; the list grows while a plan is made. */
record PanelCut(int kind, List<StripCut> strips) {}
