package kitwright.privacy;

/** Listens for one kind of private thing. */
interface Ear {
  void hear(AsRead text, Heard heard);
}
