/** Cases of equipment through which a bond goes on: what lands on one is joined to all else that does. */
export const passingCases: readonly string[] = [
  'rack',
  'cabinet',
  'service panel',
  'sub-panel',
  'meter box',
  'generator',
];
