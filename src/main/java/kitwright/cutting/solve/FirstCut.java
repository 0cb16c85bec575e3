package kitwright.cutting.solve;

import java.util.List;

/** Which way a panel is first parted into strips. */
public enum FirstCut {
  /** Ripped along the panel. */
  ALONG(Run.ALONG),
  /** Cut across the panel. */
  ACROSS(Run.ACROSS),
  /** Whichever serves better, panel by panel. */
  EITHER(Run.ALONG, Run.ACROSS);

  private final List<Run> runs;

  FirstCut(Run... runs) {
    this.runs = List.of(runs);
  }

  List<Run> runs() {
    return runs;
  }
}
