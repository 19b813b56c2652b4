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
  plan: {
    title: 'Where the current goes, strike at {at}',
    description:
      'Plan seen from above, with the peak current of each conductor, line, support and [electrode] beside it. {list}.',
    entry: '{part} {current}',
    struck: 'struck',
    width: 'width of a line: {currentA} at its peak',
    buried: 'the same in the soil: dashed',
    idle: 'carries less than 1 % of the stroke: grey',
    bare: 'bare [electrode] wire in the soil',
    soil: 'into the soil from this [electrode]',
    numbers: 'Numbers as on the site plan.',
  },
} as const;
