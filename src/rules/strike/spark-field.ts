/** Least field that a spark needs to run on across a gap between points: 5 kV a centimetre, from memory. */
export const sparkFieldVPerM = 500e3;
