/** Prose of the report's section on strikes and of its drawings. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const strikeReportWords = {
  chart: {
    title: 'Potentials over time, strike at {at}',
    description:
      'Potential against [remote ground] over time, one curve for each of {count} {count?part:parts}. {list}.',
    entry: '{part}: greatest {peak} after {atS}',
    time: 'Time, µs',
    timeLog: 'Time, µs (logarithmic)',
    kilovolt: 'Potential against [remote ground], kV',
    volt: 'Potential against [remote ground], V',
  },
} as const;
