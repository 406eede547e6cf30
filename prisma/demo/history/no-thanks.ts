/** Why customers of the demo said no, in their words; some say nothing. Invented. */
export const noThanks = [
  "",
  "",
  "More than we can spend this year.",
  "We decided to sell the van and stay at home.",
  "Found somebody closer to us.",
  "The wait for the parts is too long, we leave in three weeks.",
  "My insurer does not want it.",
  "Changed my mind about the noise.",
] as const;
