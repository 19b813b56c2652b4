import type { Answer, Support } from '../site/site.ts';

/** Kinds that are of metal from foot to top unless their owner says otherwise. */
const metalKinds: ReadonlySet<string> = new Set([
  'lattice tower',
  'tower',
  'mast',
  'roof mast',
  'crank-up tower',
  'tilt-over mast',
  'air terminal',
]);
const otherKinds: ReadonlySet<string> = new Set(['wood pole', 'building face', 'tree']);
/** Kinds whose sections move against each other, so that nobody may take them for one metal unseen. */
const movingKinds: ReadonlySet<string> = new Set(['crank-up tower', 'tilt-over mast']);

/** Whether a support is of metal. */
export function isMetal(support: Support): Answer {
  if (support.metal === 'none') return 'no';
  if (support.metal !== null || metalKinds.has(support.kind)) return 'yes';
  return otherKinds.has(support.kind) ? 'no' : 'unknown';
}

/** Whether a support is one piece of metal from foot to top, and the field that decides where that is not known. */
export function isOnePiece(support: Support): { readonly is: Answer; readonly decidedBy: string | null } {
  const metal = isMetal(support);
  if (metal === 'no') return { is: 'no', decidedBy: null };
  const by = (field: string) => `supports.${support.id}.${field}`;
  const { sections, jumpers } = support;
  if (sections === 'sliding' || sections === 'hinged') {
    if (jumpers === 'no') return { is: 'no', decidedBy: null };
    if (jumpers === 'unknown') return { is: 'unknown', decidedBy: by('jumpers') };
  }
  if (metal === 'unknown') return { is: 'unknown', decidedBy: by('metal') };
  if (sections === null && movingKinds.has(support.kind) && jumpers !== 'yes') {
    return { is: 'unknown', decidedBy: by('sections') };
  }
  return { is: 'yes', decidedBy: null };
}
