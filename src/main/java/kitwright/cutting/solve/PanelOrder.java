package kitwright.cutting.solve;

/** All parts of one mark, by its place in the task's list. */
record PanelOrder(int part, int qty) {}
