/** Prose of the drawings of two studies. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const compareDrawingWords = {
  title: 'Before and after: {site}',
  description:
    'Plan seen from above with what was added, removed, changed and what stayed drawn apart. Added: {added}. Removed: {removed}. Changed: {changed}.',
  nothing: 'nothing',
  scale: 'Scale 1:{ratio} on {paper} paper at full size',
  note: 'The sign before a number tells what became of a piece; numbers are those of this page.',
  strokes: 'Strokes tell what became of a run, not whether it lies in the soil.',
  fates: {
    added: '+ added: full, thick',
    removed: '× removed: dotted',
    changed: 'Δ changed: dashed',
    same: 'as it was: thin, pale',
  },
  schematicFates: {
    added: '+ added: full',
    removed: '× removed: finely dotted',
    changed: 'Δ changed: dashes and dots',
    same: 'as it was: dashed',
  },
  moved: 'where it stood before',
  schematicTitle: 'Before and after, without a scale: {site}',
  schematicNote: 'Schematic, not to scale: too few positions are typed for a plan.',
  schematicDescription:
    'Schematic without scale of what was and is there, sorted by where it stands. Added: {added}. Removed: {removed}. Changed: {changed}.',
} as const;
