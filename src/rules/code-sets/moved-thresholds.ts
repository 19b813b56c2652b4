import type { SiteHeader } from '../../site/site.ts';
import type { Clause } from '../rule.ts';
import { adoptedEdition } from './adopted-edition.ts';

/** What one edition asks until the next step. */
export interface MovedStep<V> {
  /** First edition that asks it, a year or a letter; null: the oldest known. */
  readonly from: string | null;
  readonly value: V;
  readonly clause: string | null;
}

/** A threshold that moved between editions of one document: its steps, oldest first. */
export interface Moved<V> {
  readonly document: string;
  readonly subject: string;
  readonly steps: readonly [MovedStep<V>, ...MovedStep<V>[]];
  readonly provenance: Clause['provenance'];
}

const moved = <V>(m: Moved<V>): Moved<V> => m;
const nec = 'NFPA 70';

/** Section 3 of the collection of clauses, one record a row. Sections in square metres, lengths in metres. */
export const movedThresholds = {
  electrodesToBond: moved<'available' | 'present'>({
    document: nec,
    subject: 'electrodes that are to be bonded',
    steps: [
      { from: null, value: 'available', clause: '250.50' },
      { from: '2005', value: 'present', clause: '250.50' },
    ],
    provenance: 'memory',
  }),
  singleRod: moved<'test, then add one' | 'add one unless tested'>({
    document: nec,
    subject: 'a lone rod and its 25 ohm',
    steps: [
      { from: null, value: 'test, then add one', clause: '250.56' },
      { from: '2011', value: 'add one unless tested', clause: '250.53(A)(2)' },
    ],
    provenance: 'second-hand',
  }),
  rodSpacingNote: moved<'more than 6 ft gains' | 'twice the length'>({
    document: nec,
    subject: 'note on the spacing of rods',
    steps: [
      { from: null, value: 'more than 6 ft gains', clause: '250.56' },
      { from: '2011', value: 'twice the length', clause: '250.53(A)(3)' },
    ],
    provenance: 'second-hand',
  }),
  rodInstallation: moved<string>({
    document: nec,
    subject: 'number of the clause on driving a rod',
    steps: [
      { from: null, value: '250.53(G)', clause: '250.53(G)' },
      { from: '2020', value: '250.53(A)(4)', clause: '250.53(A)(4)' },
    ],
    provenance: 'second-hand',
  }),
  intersystemBonding: moved<'exposed metal or a stub' | 'bar for three' | 'listed bar' | 'listed bar or busbar'>({
    document: nec,
    subject: 'where other systems bond to the service',
    steps: [
      { from: null, value: 'exposed metal or a stub', clause: '250.94' },
      { from: '2008', value: 'bar for three', clause: '250.94' },
      { from: '2011', value: 'listed bar', clause: '250.94' },
      { from: '2017', value: 'listed bar or busbar', clause: '250.94(A), (B)' },
    ],
    provenance: 'second-hand',
  }),
  groundingConductorWord: moved<'grounding conductor' | 'bonding or electrode conductor'>({
    document: nec,
    subject: 'what the conductor is called',
    steps: [
      { from: null, value: 'grounding conductor', clause: '810.21' },
      { from: '2011', value: 'bonding or electrode conductor', clause: '810.21' },
    ],
    provenance: 'memory',
  }),
  arrestersListed: moved<'not asked' | 'asked'>({
    document: nec,
    subject: 'antenna arresters that are listed',
    steps: [
      { from: null, value: 'not asked', clause: null },
      { from: '2014', value: 'asked', clause: '810.6, 810.7' },
    ],
    provenance: 'second-hand',
  }),
  soleConnection: moved<'disputed' | 'cleared up'>({
    document: nec,
    subject: 'a conductor that ends at rods alone',
    steps: [
      { from: null, value: 'disputed', clause: '250.66(A)' },
      { from: '2017', value: 'cleared up', clause: '250.66(A)' },
    ],
    provenance: 'second-hand',
  }),
  aluminiumNearSoil: moved<'none within 18 in' | 'by termination and covering'>({
    document: nec,
    subject: 'aluminium close to soil',
    steps: [
      { from: null, value: 'none within 18 in', clause: '250.64(A)' },
      { from: '2020', value: 'by termination and covering', clause: '250.64(A)' },
    ],
    provenance: 'read',
  }),
  communicationsRules: moved<'in each article' | 'in article 800'>({
    document: nec,
    subject: 'rules shared by telephone, cable and network',
    steps: [
      { from: null, value: 'in each article', clause: '800.100, 820.100, 830.100' },
      { from: '2020', value: 'in article 800', clause: '800.100' },
    ],
    provenance: 'second-hand',
  }),
  poolAsElectrode: moved<'silent' | 'barred'>({
    document: nec,
    subject: 'pool parts as electrodes',
    steps: [
      { from: null, value: 'silent', clause: null },
      { from: '2017', value: 'barred', clause: '250.52(B)(3)' },
    ],
    provenance: 'memory',
  }),
  /** The year in which it was barred is not known: only very old texts allow it. */
  gasPipeAsElectrode: moved<'barred'>({
    document: nec,
    subject: 'gas pipe as an electrode',
    steps: [{ from: null, value: 'barred', clause: '250.52(B)(1)' }],
    provenance: 'memory',
  }),
  serviceProtector: moved<'not asked' | 'dwellings' | 'dwellings and more'>({
    document: nec,
    subject: 'surge protector at the service of a dwelling',
    steps: [
      { from: null, value: 'not asked', clause: null },
      { from: '2020', value: 'dwellings', clause: '230.67' },
      { from: '2023', value: 'dwellings and more', clause: '230.67' },
    ],
    provenance: 'memory',
  }),
  /** Chapters for limited energy and communications were arranged anew; its numbers were not seen and are not cited. */
  necNumbers: moved<'cited' | 'not seen'>({
    document: nec,
    subject: 'numbers of clauses',
    steps: [
      { from: null, value: 'cited', clause: null },
      { from: '2026', value: 'not seen', clause: null },
    ],
    provenance: 'memory',
  }),
  /** Rods of a self-supporting tower or pole, and at the base of a guyed one; least length. Edition H was not read. */
  towerRods: moved<{ readonly free: number; readonly guyed: number; readonly lengthM: number | null }>({
    document: 'TIA-222',
    subject: 'rods at a tower',
    steps: [
      { from: 'F', value: { free: 3, guyed: 2, lengthM: null }, clause: 'protective grounding' },
      { from: 'G', value: { free: 6, guyed: 3, lengthM: 3.048 }, clause: 'protective grounding' },
    ],
    provenance: 'second-hand',
  }),
  /** Between bars and from a metal body to a bar. The edition of 2024 was not read. */
  bondingSizesIec: moved<{
    readonly barCopperM2: number;
    readonly barAluminiumM2: number;
    readonly bodyCopperM2: number;
    readonly bodyAluminiumM2: number;
  }>({
    document: 'IEC 62305-3',
    subject: 'sizes of bonding conductors',
    steps: [
      {
        from: '2006',
        value: { barCopperM2: 14e-6, barAluminiumM2: 22e-6, bodyCopperM2: 5e-6, bodyAluminiumM2: 8e-6 },
        clause: 'Tables 8, 9',
      },
      {
        from: '2010',
        value: { barCopperM2: 16e-6, barAluminiumM2: 25e-6, bodyCopperM2: 6e-6, bodyAluminiumM2: 10e-6 },
        clause: 'Tables 8, 9',
      },
    ],
    provenance: 'memory',
  }),
  /** Floor in copper; null: four cases by protection against corrosion and damage. */
  earthingConductorIec: moved<{ readonly floorM2: number | null; readonly withLightningM2: number | null }>({
    document: 'IEC 60364-5-54',
    subject: 'earthing conductor in soil',
    steps: [
      { from: '2002', value: { floorM2: null, withLightningM2: null }, clause: '542.3' },
      { from: '2011', value: { floorM2: 6e-6, withLightningM2: 16e-6 }, clause: '542.3' },
    ],
    provenance: 'memory',
  }),
  antennaBondingExemption: moved<'always bonded' | 'left out in the zone, one dwelling, small leakage'>({
    document: 'IEC 60728-11',
    subject: 'bonding of antennas in the zone under the roof’s edge',
    steps: [
      { from: null, value: 'always bonded', clause: null },
      { from: '2010', value: 'left out in the zone, one dwelling, small leakage', clause: null },
    ],
    provenance: 'second-hand',
  }),
  britishLightningCode: moved<'BS 6651' | 'BS EN 62305'>({
    document: 'BS EN 62305',
    subject: 'which British document speaks of lightning',
    steps: [
      { from: null, value: 'BS 6651', clause: null },
      { from: '2008', value: 'BS EN 62305', clause: null },
    ],
    provenance: 'second-hand',
  }),
  /** Two documents, not two editions: what one shows is never mixed with the other. */
  protectedZone: moved<'cone of 45 degrees'>({
    document: 'MIL-HDBK-419A',
    subject: 'zone under a mast; NFPA 780 and IEC 62305 have a rolling sphere instead',
    steps: [{ from: null, value: 'cone of 45 degrees', clause: null }],
    provenance: 'read',
  }),
} as const;

/**
 * What the adopted edition asks. An edition that nobody typed, or that is older than all that are known, gives the newest
 * step, and `isAdopted` says that it was taken.
 */
export function inEdition<V>(
  { document, steps }: Moved<V>,
  header: Pick<SiteHeader, 'codes'>,
): MovedStep<V> & { readonly isAdopted: boolean } {
  const typed = adoptedEdition(header, document);
  const edition =
    typed === null ? null : (/\b(?:19|20)\d\d\b/.exec(typed)?.[0] ?? /\b[A-H]\b/.exec(typed)?.[0] ?? null);
  const newest = steps[steps.length - 1]!;
  if (edition === null) return { ...newest, isAdopted: false };
  const step = steps.findLast((s) => s.from === null || s.from <= edition);
  return step === undefined ? { ...newest, isAdopted: false } : { ...step, isAdopted: true };
}
