import type { SiteHeader } from '../site/site.ts';
import { onceForText } from '../units/once-for-text.ts';

/** What the owner says that the site is built to, beyond the code that binds everybody. */
export interface Claims {
  /** A lightning protection system, whatever its class. */
  readonly lightning: boolean;
  /** Its class (IEC 62305), 1 the strictest; null: none was named. */
  readonly lightningClass: 1 | 2 | 3 | 4 | null;
  /** TIA-222: its edition letter, 'unknown' where only the document was named; null: not claimed. */
  readonly tower: string | null;
  /** A facility standard. */
  readonly military: boolean;
  readonly aviation: boolean;
  readonly ordnance: boolean;
}

const classes: Readonly<Record<string, Claims['lightningClass']>> = { I: 1, II: 2, III: 3, IV: 4 };

/** Read off `site.claims` and the documents under `site.code`. Nobody is held to a standard that the file does not name. */
export function claimsOf({ claims, codes }: Pick<SiteHeader, 'claims' | 'codes'>): Claims {
  return readClaims([claims ?? '', ...codes.map((c) => `${c.document} ${c.edition ?? ''}`)].join('; '));
}

/** Many rules ask the same of one site. */
const readClaims = onceForText((said): Claims => {
  const named =
    /\b(?:class|level|LPL|LPS)\s*(?:LPL|LPS)?\s*(IV|I{1,3}|[1-4])\b/i.exec(said)?.[1]?.toUpperCase() ?? null;
  const lightningClass = named === null ? null : (classes[named] ?? (Number(named) as 1 | 2 | 3 | 4));
  const tower = /\bTIA[- ]?222(?:[- ]?([A-H])\b)?/i.exec(said);
  const isAviation = /\bFAA\b|\baviation\b/i.test(said);
  const isOrdnance = /\bMO[- ]?322\b|\bordnance\b/i.test(said);
  return {
    lightning:
      lightningClass !== null ||
      /(?<!\b(?:no|without)(?: any)? )lightning protection|NFPA 780|UL 96A|62305|BS 6651|AS\/NZS 1768/i.test(said),
    lightningClass,
    tower: tower === null ? null : (tower[1]?.toUpperCase() ?? 'unknown'),
    military: isOrdnance || /MIL-(?:HDBK|STD)|\bTM 5-811|UFGS|\bmilitary\b|\barmy\b|\bdefen[cs]e\b/i.test(said),
    aviation: isAviation,
    ordnance: isOrdnance,
  };
});
