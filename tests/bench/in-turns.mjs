/** What the middle one of several figures is. */
export function median(values) {
  return values.toSorted((a, b) => a - b)[values.length >> 1];
}

/**
 * Runs things one after the other, again and again, so that all feel the same load of the machine. Gives the figures of
 * each by its name; the first round warms up disk and caches and is thrown away.
 */
export async function inTurns(things, rounds) {
  const figures = Object.fromEntries(Object.keys(things).map((name) => [name, []]));
  for (let round = 0; round <= rounds; round++) {
    for (const [name, run] of Object.entries(things)) {
      const figure = await run();
      if (round > 0) figures[name].push(figure);
    }
  }
  return figures;
}
