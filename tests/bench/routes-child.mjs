// Prints the processor time that shortest routes take on a ground of buildings and a trench, and the costs found.
import { shortestRoutes } from '../../src/rework/routes/shortest-routes.ts';

const box = (id, e, n, wide, deep) => ({
  id,
  cornersM: [
    [e, n],
    [e + wide, n],
    [e + wide, n + deep],
    [e, n + deep],
  ],
  clearanceM: 0.3,
});
const areas = Array.from({ length: 12 }, (_, i) =>
  box(`house-${i}`, (i % 4) * 22, Math.floor(i / 4) * 20, 12 + (i % 3), 9),
);
const barriers = [
  {
    id: 'gas',
    routeM: [
      [-10, 45],
      [34, 45],
    ],
    clearanceM: 1,
  },
];
const trenches = [
  {
    id: 'ring',
    routeM: [
      [-3, -3],
      [90, -3],
      [90, 55],
      [-3, 55],
    ],
    factor: 0.5,
  },
];
const places = [
  [-5, 3],
  [40, 15],
  [88, 30],
  [20, 57],
  [60, 33],
  [-4, 38],
];
const ends = (count) => places.slice(0, count).map((p, i) => ({ id: `e${i}`, placesM: [p] }));

const start = process.cpuUsage();
const pairs = places.flatMap((a, i) => places.slice(0, i).map((b) => [a, b]));
const costs = pairs.map(([a, b]) =>
  costOf([
    { id: 'a', placesM: [a] },
    { id: 'b', placesM: [b] },
  ]),
);
const pairsMs = process.cpuUsage(start).user / 1000;
const again = process.cpuUsage();
costs.push(costOf(ends(6)));
console.log(JSON.stringify({ pairs: pairs.length, pairsMs, treeMs: process.cpuUsage(again).user / 1000, costs }));

function costOf(wanted) {
  const found = shortestRoutes({ areas, barriers, trenches }, wanted);
  if (found.none !== null) throw new Error(found.none);
  return found.costM;
}
