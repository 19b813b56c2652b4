import type { StudySource } from '../../study/study.ts';

/** Figures of work in the soil and along walls, as a contractor is told them, each with the rule that it stands in and its sources. */
export interface SheetLimit {
  readonly key: 'depth' | 'ring' | 'radius' | 'joints' | 'reach' | 'surface' | 'cover' | 'guard' | 'photo';
  /** A length; null: no figure. */
  readonly lengthM: number | null;
  /** Rule of the catalogue that asks it; null: none does. */
  readonly rule: string | null;
  /** Each document with its own clause, and how that one is known. */
  readonly sources: readonly StudySource[];
}

type Side = 'us' | 'iec' | 'au';

const ours: StudySource = { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' };
const handbook = { document: 'MIL-HDBK-419A', provenance: 'read' } as const;

const code = { document: 'NFPA 70', edition: null } as const;
const lightning = { document: 'NFPA 780', edition: null, provenance: 'memory' } as const;

/** 18 in, asked of rings that serve a tower or lightning alone. */
const depthUs = limit('depth', 0.4572, 'ring-depth-us', { ...lightning, clause: null });
/** 30 in, asked of a ring that is an electrode of the service. */
const ringUs = limit('ring', 0.762, 'ring-depth-us', { ...code, clause: '250.53(F)', provenance: 'memory' });
const depthIec = limit('depth', 0.5, 'electrode-from-foundation-iec', {
  document: 'IEC 62305-3',
  edition: '2010',
  clause: '5.4.3',
  provenance: 'memory',
});
const depthAu = limit('depth', 0.6, 'au-rod-dimensions', {
  document: 'AS/NZS 1768',
  edition: '2021',
  clause: 'as a trade page sums it up',
  provenance: 'second-hand',
});
/** 8 in. */
const radius = limit(
  'radius',
  0.2032,
  'bend-radius',
  { ...handbook, edition: 'vol. II', clause: 'down conductors' },
  { ...lightning, clause: '4.9.5' },
);
const surface = limit('surface', null, 'surface-cleaned', { ...handbook, edition: 'vol. I', clause: '7.6' });
const photo = limit('photo', null, 'photo-before-backfill', { ...handbook, edition: null, clause: 'vol. II 1.2.4' });
/** 6 ft. */
const guardM = 1.8288;

const american: readonly SheetLimit[] = [
  depthUs,
  ringUs,
  radius,
  limit('joints', null, 'one-conductor-per-clamp', { ...code, clause: '250.70', provenance: 'second-hand' }),
  limit('reach', null, 'clamp-accessible', { ...code, clause: '250.68(A)', provenance: 'memory' }),
  surface,
  limit('cover', null, 'not-on-cover-or-door', {
    ...code,
    clause: '800.100(B), 810.21(F), 250.94',
    provenance: 'second-hand',
  }),
  limit(
    'guard',
    guardM,
    'conductor-guarded',
    { document: 'UL 96A', edition: '2007', clause: '9.3.3', provenance: 'read' },
    { ...code, clause: '250.64(B)', provenance: 'memory' },
    { ...code, clause: '810.21(D)', provenance: 'second-hand' },
  ),
  photo,
];

/** Elsewhere the clauses of the American code do not bind: what stands in them is practice there. */
const international: readonly SheetLimit[] = [
  radius,
  limit('joints', null, null, ours),
  limit('reach', null, null, ours),
  surface,
  limit('cover', null, null, ours),
  limit('guard', guardM, null, ours),
  photo,
];

const bySide: Readonly<Record<Side, readonly SheetLimit[]>> = {
  us: american,
  iec: [depthIec, ...international],
  au: [depthAu, ...international],
};

export function sheetLimits(region: string): readonly SheetLimit[] {
  if (region === 'au') return bySide.au;
  return region === 'us' || region === 'ca' || region === 'unknown' ? bySide.us : bySide.iec;
}

/** A length of the table; a key without one is a slip of whoever asks (RangeError). */
export function limitM(region: string, key: SheetLimit['key']): number {
  const lengthM = sheetLimits(region).find((l) => l.key === key)?.lengthM ?? null;
  if (lengthM === null) throw new RangeError(`${key} has no figure`);
  return lengthM;
}

/** A code of the United States: it does not bind elsewhere. */
export function isAmericanCode({ document }: StudySource): boolean {
  return /^(?:NFPA|UL)\b/.test(document);
}

function limit(
  key: SheetLimit['key'],
  lengthM: number | null,
  rule: string | null,
  ...sources: readonly StudySource[]
): SheetLimit {
  return { key, lengthM, rule, sources };
}
