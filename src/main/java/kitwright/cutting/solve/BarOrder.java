package kitwright.cutting.solve;

/**
 * A run of like pieces to be cut: whole parts of one mark, or one piece of a jointed part.
 *
 * @param part its place in the task's list
 * @param copy the first copy it is for
 * @param qty so many copies from there
 * @param piece which piece of the part, from 1
 * @param of how many pieces make the part
 */
record BarOrder(int part, int copy, int qty, int piece, int of, long length, int priority) {}
