import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const site = (region: string, mast: string, conductors: string, pool = 'bonded: no') => `
site: {name: Pool, region: ${region}, units: ft, service: unknown}
supports: {mast: {kind: mast${mast}}}
conductors: ${conductors}
metalwork: {pool: {kind: pool, ${pool}}}
`;
const near = (distance: string) => `, bonded: no, near: [{part: pool, distance: ${distance}}]`;
const bond = (wire: string) => `{b: {from: mast@base, to: pool, wire: ${wire}}}`;

/** NFPA 70 680.26(B), second-hand: within 5 ft of the water, 8 AWG solid copper. */
describe('pool-fixed-metal-bonded', () => {
  const rule = 'pool-fixed-metal-bonded';

  it('asks metal within 5 ft, typed in feet and in metres', () => {
    expect(verdictsOf(rule, site('us', near('5.1 ft'), 'none'))).toEqual(['met mast pool: beyond']);
    expect(verdictsOf(rule, site('us', near('4.9 ft'), 'none'))).toEqual(['not met mast pool: apart']);
    expect(verdictsOf(rule, site('us', near('5 ft'), 'none'))).toEqual(['not met mast pool: apart']);
    expect(verdictsOf(rule, site('us', near('over 5 ft'), 'none'))).toEqual(['met mast pool: beyond']);
    expect(verdictsOf(rule, site('us', near('under 5 ft'), 'none'))).toEqual(['not met mast pool: apart']);
    expect(verdictsOf(rule, site('us', near('1.53 m'), 'none'))).toEqual(['met mast pool: beyond']);
    expect(verdictsOf(rule, site('us', near('1.52 m'), 'none'))).toEqual(['not met mast pool: apart']);
  });

  // NFPA 70 680.42 asks of hot tubs and spas outdoors what it asks of pools (from memory)
  it('asks it beside a hot tub or a spa too, which is fixed metal of no other pool', () => {
    for (const kind of ['swimming pool', 'hot tub', 'spa']) {
      const text = site('us', near('2 ft'), 'none').replace('kind: pool', `kind: ${kind}`);
      expect(verdictsOf(rule, text)).toEqual(['not met mast pool: apart']);
      expect(findingsOf('metalwork-bonded', text).outcome).toBe('not applicable');
    }
    const two = site('us', near('2 ft'), 'none', 'bonded: no}, tub: {kind: hot tub');
    expect(verdictsOf(rule, two).filter((v) => / (?:pool tub|tub pool):/.test(v))).toEqual([]);
    const spare = site('us', near('2 ft'), 'none').replace('kind: pool', 'kind: spare mast pipe');
    expect(verdictsOf(rule, spare)).toEqual([]);
  });

  it('measures on the plan: a mast in the pool stands at no distance, one beside it at its own', () => {
    const pool = 'bonded: no, route: [[0, 0], [20, 0], [20, 10], [0, 10]]';
    expect(verdictsOf(rule, site('us', ', bonded: no, at: [10, 5]', 'none', pool))).toEqual([
      'not met mast pool: apart',
    ]);
    expect(verdictsOf(rule, site('us', ', bonded: no, at: [-4, 5]', 'none', pool))).toEqual([
      'not met mast pool: apart',
    ]);
    expect(verdictsOf(rule, site('us', ', bonded: no, at: [-6, 5]', 'none', pool))).toEqual(['met mast pool: beyond']);
  });

  it('takes a bond of 8 AWG, and no thinner one', () => {
    expect(verdictsOf(rule, site('us', near('3 ft'), bond('8 AWG copper')))).toEqual(['met mast pool: bonded']);
    expect(verdictsOf(rule, site('us', near('3 ft'), bond('8.3 mm2 copper')))).toEqual(['not met mast pool: thin']);
    expect(verdictsOf(rule, site('us', near('3 ft'), bond('10 AWG copper')))).toEqual(['not met mast pool: thin']);
  });

  eitherSide(rule, (figure) => site('us', near(figure), 'none'), [
    ['5.1 ft', '4.9 ft'],
    ['1.55 m', '1.5 m'],
  ]);
  eitherSide(rule, (figure) => site('us', near('3 ft'), bond(figure)), [
    ['8 AWG copper', '16.2 kcmil copper'],
    ['8.37 mm2 copper', '8.3 mm2 copper'],
  ]);

  it('asks solid copper of a known size', () => {
    expect(verdictsOf(rule, site('us', near('3 ft'), bond('6 AWG stranded copper')))).toEqual([
      'not met mast pool: thin',
    ]);
    expect(verdictsOf(rule, site('us', near('3 ft'), bond('unknown')))).toEqual([
      'cannot tell mast pool: size unknown',
    ]);
  });

  it('asks copper of that size all the way, by whatever it goes', () => {
    const chain = (a: string, b: string) =>
      verdictsOf(
        rule,
        site(
          'us',
          near('3 ft'),
          `{a: {from: mast@base, to: R, wire: ${a}}, b: {from: R, to: pool, wire: ${b}}}\nelectrodes: {R: {kind: rod}}`,
        ),
      );
    expect(chain('6 AWG copper', '8 AWG copper')).toEqual(['met mast pool: bonded']);
    expect(chain('14 AWG copper', '8 AWG copper')).toEqual(['not met mast pool: thin']);
    expect(chain('6 AWG copper', '14 AWG copper')).toEqual(['not met mast pool: thin']);
    expect(chain('6 AWG copper', 'unknown')).toEqual(['cannot tell mast pool: size unknown']);
    expect(verdictsOf(rule, site('us', near('3 ft'), bond('6 AWG aluminium')))).toEqual([
      'cannot tell mast pool: size unknown',
    ]);
  });

  it('leaves metal that hangs higher than 12 ft, and cannot tell where a conductor goes nobody knows where', () => {
    const gutter = (height: string) =>
      verdictsOf(
        rule,
        site('us', ', metal: none', 'none').replace(
          'metalwork: {',
          `metalwork: {g: {kind: gutter, bonded: no, at: [0, 0, ${height}], near: [{part: pool, distance: 2 ft}]}, `,
        ),
      );
    expect(gutter('12.2 ft')).toEqual([]);
    expect(gutter('3.72 m')).toEqual([]);
    expect(gutter('12 ft')).toEqual(['not met g pool: apart']);
    expect(gutter('3.68 m')).toEqual(['not met g pool: apart']);
    expect(verdictsOf(rule, site('us', near('3 ft'), '{a: {from: mast@base, to: unknown}}'))).toEqual([
      'cannot tell mast pool: bond unknown',
    ]);
  });

  it('cannot tell without a distance, nor without knowing the bond', () => {
    expect(verdictsOf(rule, site('us', '', 'none'))).toEqual(['cannot tell mast pool: distance unknown']);
    const open = ', bonded: unknown, near: [{part: pool, distance: 3 ft}]';
    expect(verdictsOf(rule, site('us', open, 'none'))).toEqual(['cannot tell mast pool: bond unknown']);
  });

  it('is not asked without a pool, without metal, or elsewhere', () => {
    expect(findingsOf(rule, site('iec', near('3 ft'), 'none')).outcome).toBe('not applicable');
    expect(findingsOf(rule, site('us', ', metal: none', 'none')).outcome).toBe('not applicable');
    expect(findingsOf(rule, 'site: {region: us, units: ft, service: unknown}\n').outcome).toBe('not looked at');
  });
});

/** IEC 60364-7-702, from memory: zone 1 to 2 m from the edge, zone 2 for 1.5 m more. */
describe('pool-zone-bonding-iec', () => {
  const rule = 'pool-zone-bonding-iec';

  it('asks metal up to the edge of zone 2, typed in metres and in feet', () => {
    expect(verdictsOf(rule, site('iec', near('3.6 m'), 'none'))).toEqual(['met mast pool: beyond']);
    expect(verdictsOf(rule, site('iec', near('3.4 m'), 'none'))).toEqual(['not met mast pool: apart']);
    expect(verdictsOf(rule, site('iec', near('11.6 ft'), 'none'))).toEqual(['met mast pool: beyond']);
    expect(verdictsOf(rule, site('uk', near('11.4 ft'), 'none'))).toEqual(['not met mast pool: apart']);
  });

  it('takes a bond, and cannot tell what nobody knows', () => {
    expect(verdictsOf(rule, site('iec', near('2 m'), bond('4 mm2 copper')))).toEqual(['met mast pool: bonded']);
    expect(verdictsOf(rule, site('iec', '', 'none'))).toEqual(['cannot tell mast pool: distance unknown']);
    expect(findingsOf(rule, site('us', near('2 m'), 'none')).outcome).toBe('not applicable');
    expect(findingsOf(rule, site('iec', ', metal: none', 'none')).outcome).toBe('not applicable');
  });
});

everyOutcome('pool-fixed-metal-bonded');
everyOutcome('pool-zone-bonding-iec');
