package lowfirst.problem;

/** How much a problem matters to the person who builds the kit. */
public enum Severity {
  /** The cell, row or file can't be used as it stands; it was left out. */
  FAULT,
  /** It was used, but two things disagree or something is missing: look before you solder. */
  CAUTION,
  /** The reader made a choice that you may want to confirm; nothing is wrong. */
  NOTE
}
