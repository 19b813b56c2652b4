/** Prose of the page of works and of its chart. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const worksPageWords = {
  chart: {
    title: 'What remains after each work of {site}',
    description: 'Hazards, defects and pieces of advice that remain, against {against}. {list}.',
    byPrice: 'what the works cost together',
    byMaterial: 'the material of the works together',
    before: 'Before: {hazards} hazards, {defects} defects, {advices} pieces of advice',
    after: 'after work {number}, at {spent}: {hazards}, {defects}, {advices}',
    price: 'Spent so far{currency}',
    material: 'Material so far in {unit} of conductor (a rod as {rod}, a joint as {joint}: our own weights)',
    remaining: 'Findings that remain',
    hazards: 'hazards',
    defects: 'defects',
    advices: 'advice',
    number: 'Figures above the plot: number of the work that is done there',
  },
} as const;
