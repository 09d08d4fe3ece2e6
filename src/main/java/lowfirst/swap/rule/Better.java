package lowfirst.swap.rule;

/** Which of two amounts is the better. */
enum Better {
  /** Ratings: more is better. */
  MORE,
  /** Losses: less is better. */
  LESS;

  /** How much better the candidate is than it must be. */
  double margin(double asked, double offered) {
    return this == MORE ? offered / asked - 1 : asked / offered - 1;
  }
}
