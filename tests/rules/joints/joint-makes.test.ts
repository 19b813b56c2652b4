import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** One wire from a mast to a rod, with the joint on the rod. */
const site = (joint: string, rest = {}) => {
  const {
    region = 'us',
    wire = '6 AWG copper',
    rod = 'copper-clad steel',
    header = '',
    mast = 'galvanised steel',
    buried = '',
    more = '',
  } = {
    ...(rest as Record<string, string>),
  };
  return `site: {name: Joints, region: ${region}, units: ft, service: unknown${header}}
electrodes: {R: {kind: rod, metal: ${rod}}}
supports: {mast: {kind: mast, metal: ${mast}}}
conductors: {c: {from: mast@base, to: R, wire: ${wire}${buried}, joints: [bolted lug, ${joint}]}}
${more}`;
};

/** NFPA 70 250.8 (second-hand). */
describe('no-sheet-metal-screw', () => {
  const rule = 'no-sheet-metal-screw';
  const bar = (joint: string) => `site: {name: Bar, region: us, service: unknown}
bars: {entry: {kind: entry panel}}
arresters: {a1: {kind: gas tube, on: entry, joint: ${joint}}}
`;

  it('finds a screw in a wire’s joint and in what bolts a part to a bar', () => {
    expect(verdictsOf(rule, site('sheet-metal screw'))).toEqual(['not met c:R: screw', 'met c:mast: other']);
    expect(verdictsOf(rule, bar('sheet-metal screw'))).toEqual(['not met a1:entry: screw']);
    expect(verdictsOf(rule, bar('bolted lug'))).toEqual(['met a1:entry: other']);
  });

  it('is the one finding of the joint: that it is no method for an electrode stands under it', () => {
    const [method] = findingsOf('joint-method-allowed', site('sheet-metal screw')).findings;
    expect([method!.outcome, method!.under]).toEqual(['not met', 'no-sheet-metal-screw:c:R']);
  });

  it('does not ask of what kind a joint is: another rule does', () => {
    expect(verdictsOf(rule, site('unknown'))).toEqual(['met c:mast: other']);
    expect(findingsOf(rule, site('sheet-metal screw', { region: 'iec' })).outcome).toBe('not applicable');
    expect(findingsOf(rule, 'site: {name: Bare, region: us, service: unknown}\n').outcome).toBe('not looked at');
  });
});

/** Army preventive maintenance monthly 599 (read): temporary only. */
describe('no-twist-joint', () => {
  const rule = 'no-twist-joint';

  it('finds a wire that is wound round a rod, everywhere', () => {
    expect(verdictsOf(rule, site('twist'))).toEqual(['not met c:R: twist', 'met c:mast: other']);
    expect(verdictsOf(rule, site('twist', { region: 'iec' }))[0]).toBe('not met c:R: twist');
    expect(findingsOf('joint-method-allowed', site('twist')).findings[0]!.under).toBe('no-twist-joint:c:R');
  });

  it('lets it stand on a temporary station', () => {
    expect(verdictsOf(rule, site('twist', { header: ', temporary: yes' }))).toContain('met c:R: temporary');
    expect(verdictsOf(rule, site('twist', { header: ', temporary: unknown' }))).toContain('not met c:R: twist');
  });
});

/** NFPA 70 250.70 (second-hand): zinc on a copper-clad rod is the typical miss. */
describe('clamp-metal-match', () => {
  const rule = 'clamp-metal-match';
  const clamp = (metal: string, more = '', rest = {}) => site(`{kind: rod clamp, metal: ${metal}${more}}`, rest);

  it('finds a zinc clamp on a copper-clad rod or on a copper wire, whatever is stamped on it', () => {
    expect(verdictsOf(rule, clamp('zinc'))).toEqual(['not met c:R: zinc']);
    expect(verdictsOf(rule, clamp('galvanised steel', ', listed: yes'))).toEqual(['not met c:R: zinc']);
    expect(verdictsOf(rule, clamp('zinc', '', { rod: 'galvanised steel' }))).toEqual(['not met c:R: zinc']);
    const steel = { rod: 'galvanised steel', wire: '8 mm2 galvanised steel' };
    expect(verdictsOf(rule, clamp('zinc', '', steel))).toEqual(['met c:R: match']);
    expect(verdictsOf(rule, clamp('bronze'))).toEqual(['met c:R: match']);
  });

  it('takes no other metal for a match: a clamp of one metal on another has to be listed for it', () => {
    const galvanised = { rod: 'galvanised steel' };
    expect(verdictsOf(rule, clamp('bronze', '', galvanised))).toEqual(['cannot tell c:R: mixed']);
    expect(verdictsOf(rule, clamp('bronze', ', listed: yes', galvanised))).toEqual(['met c:R: listed']);
    expect(verdictsOf(rule, clamp('bronze', ', listed: no', galvanised))).toEqual(['not met c:R: not for both']);
    expect(verdictsOf(rule, clamp('aluminium'))).toEqual(['cannot tell c:R: mixed']);
    expect(verdictsOf(rule, clamp('stainless steel'))).toEqual(['met c:R: match']);
  });

  it('cannot tell of a clamp of zinc while nobody named the metals that it holds', () => {
    expect(verdictsOf(rule, clamp('zinc', '', { rod: 'unknown', wire: '6 AWG' }))).toEqual(['cannot tell c:R: mixed']);
    expect(verdictsOf(rule, clamp('zinc', ', listed: yes', { rod: 'unknown', wire: '6 AWG' }))).toEqual([
      'met c:R: listed',
    ]);
  });

  it('folds the galvanic pair of the same joint under it', () => {
    expect(findingsOf('galvanic-pair', clamp('zinc')).findings.find((f) => f.at[0] === 'c:R')!.under).toBe(
      'clamp-metal-match:c:R',
    );
  });

  it('asks of what metal a clamp is, unless it is listed', () => {
    expect(verdictsOf(rule, site('rod clamp'))).toEqual(['cannot tell c:R: nobody said']);
    expect(verdictsOf(rule, site('{kind: rod clamp, listed: yes}'))).toEqual(['met c:R: listed']);
    const two = clamp('bronze').replace(
      'conductors: {',
      'conductors: {d: {from: mast, to: R, wire: 6 AWG copper, joints: [bolted lug, acorn clamp]}, ',
    );
    expect(verdictsOf(rule, two)).toEqual(['cannot tell d:R: nobody said', 'met c:R: match']);
    expect(findingsOf(rule, site('exothermic weld')).outcome).toBe('not applicable');
  });
});

/** MIL-HDBK-419A vol. II (read). */
describe('no-copper-aluminium-contact', () => {
  const rule = 'no-copper-aluminium-contact';
  const onMast = (joint: string, mast = 'aluminium') => `site: {name: Mast, region: iec, service: unknown}
supports: {mast: {kind: mast, metal: ${mast}}}
conductors: {c: {from: mast@base, to: unknown, wire: 16 mm2 copper, joints: [${joint}, unknown]}}
`;

  it('asks for a fitting that is made for both', () => {
    expect(verdictsOf(rule, onMast('hose clamp'))).toEqual(['not met c:mast: contact']);
    expect(verdictsOf(rule, onMast('{kind: bolted lug, listed: no}'))).toEqual(['not met c:mast: contact']);
    expect(verdictsOf(rule, onMast('{kind: bolted lug, listed: yes}'))).toEqual(['met c:mast: made for both']);
    expect(verdictsOf(rule, onMast('{kind: bolted lug, shim: stainless steel}'))).toEqual(['met c:mast: sheet']);
    expect(verdictsOf(rule, onMast('bolted lug'))).toEqual(['cannot tell c:mast: nobody said']);
  });

  it('takes no sheet of copper, zinc or aluminium for one that parts the two', () => {
    const shim = (metal: string, says = '') => verdictsOf(rule, onMast(`{kind: bolted lug, shim: ${metal}${says}}`));
    expect(shim('tinned copper')).toEqual(['met c:mast: sheet']);
    expect(shim('copper')).toEqual(['cannot tell c:mast: nobody said']);
    expect(shim('copper', ', listed: no')).toEqual(['not met c:mast: contact']);
    expect(shim('zinc', ', listed: yes')).toEqual(['met c:mast: made for both']);
  });

  it('leaves other metals, welds and tinned copper to the galvanic series', () => {
    expect(verdictsOf(rule, onMast('hose clamp', 'galvanised steel'))).toEqual([]);
    expect(verdictsOf(rule, onMast('exothermic weld'))).toEqual([]);
    expect(verdictsOf(rule, onMast('hose clamp').replace('16 mm2 copper', '16 mm2 tinned copper'))).toEqual([]);
  });

  it('folds the galvanic pair of the same joint under it', () => {
    expect(findingsOf('galvanic-pair', onMast('hose clamp')).findings[0]!.under).toBe(`${rule}:c:mast`);
  });
});

/** NFPA 70 250.64(C) (second-hand). */
describe('electrode-conductor-continuous', () => {
  const rule = 'electrode-conductor-continuous';
  const wire = (joints: string, from = 'panel') => `site: {name: Wire, region: us, service: panel}
electrodes: {R: {kind: rod}, S: {kind: rod}}
equipment: {panel: {kind: service panel}}
conductors: {gec: {from: ${from}, to: R, wire: 4 AWG copper${joints}}}
`;

  it('lets a crimp that cannot be undone or a weld stand, and no split bolt', () => {
    expect(verdictsOf(rule, wire(', joints: [bolted lug, irreversible crimp, acorn clamp]'))).toEqual([
      'met gec: allowed splice',
    ]);
    expect(verdictsOf(rule, wire(', joints: [bolted lug, split bolt, acorn clamp]'))).toEqual(['not met gec: spliced']);
    expect(verdictsOf(rule, wire(', joints: [bolted lug, acorn clamp]'))).toEqual(['met gec: one piece']);
    expect(verdictsOf(rule, wire(', joints: none'))).toEqual(['met gec: one piece']);
  });

  it('cannot tell where nobody said', () => {
    expect(verdictsOf(rule, wire(''))).toEqual(['cannot tell gec: nobody said']);
    expect(verdictsOf(rule, wire(', joints: [bolted lug, unknown, acorn clamp]'))).toEqual([
      'cannot tell gec: splice unknown',
    ]);
  });

  it('does not catch ties between electrodes', () => {
    expect(findingsOf(rule, wire(', joints: [bolted lug, split bolt, acorn clamp]', 'S')).outcome).toBe(
      'not applicable',
    );
  });
});

/** NFPA 70 250.68(A) (from memory). */
describe('clamp-accessible', () => {
  const rule = 'clamp-accessible';
  const clamp = (says: string, buried = '') => site(`{${says}}`, { buried });

  it('asks that a clamp can be reached, unless it is made for the soil and lies there', () => {
    expect(verdictsOf(rule, clamp('kind: rod clamp, accessible: yes'))).toEqual(['met c:R: reachable']);
    expect(verdictsOf(rule, clamp('kind: rod clamp, accessible: no'))).toEqual(['not met c:R: hidden']);
    expect(verdictsOf(rule, clamp('kind: rod clamp, accessible: no', ', buried: 1 ft'))).toEqual([
      'not met c:R: hidden',
    ]);
    const listed = 'kind: rod clamp, accessible: no, for_burial: yes';
    expect(verdictsOf(rule, clamp(listed, ', buried: 1 ft'))).toEqual([]);
    expect(verdictsOf(rule, clamp(listed))).toEqual(['cannot tell c:R: perhaps buried']);
    expect(findingsOf(rule, clamp(listed)).findings[0]!.remedy).toContain('`top:`');
    expect(verdictsOf(rule, clamp('kind: exothermic weld, accessible: no', ', buried: 1 ft'))).toEqual([]);
  });

  it('asks where nobody said, in one doubt with the rest of the look at it', () => {
    expect(verdictsOf(rule, clamp('kind: rod clamp'))).toEqual(['cannot tell c:R: nobody said']);
    expect(findingsOf(rule, clamp('kind: rod clamp')).findings[0]!.under).toBe('surface-cleaned:c:R+c:mast');
    expect(findingsOf(rule, clamp('kind: exothermic weld')).outcome).toBe('not applicable');
  });
});

/** MIL-HDBK-419A vol. II 1.2.4 (read): in the soil brazed or welded, stricter than the electrical code. */
it('concealed-joint-welded: a clamp in the soil is advice, one in a box is not', () => {
  const rule = 'concealed-joint-welded';
  const buried = ', buried: 18 in';
  expect(verdictsOf(rule, site('{kind: rod clamp, for_burial: yes}', { buried }))).toEqual(['not met c:R: clamp']);
  expect(verdictsOf(rule, site('{kind: rod clamp, accessible: yes}', { buried }))).toEqual(['met c:R: in a well']);
  expect(verdictsOf(rule, site('exothermic weld', { buried }))).toEqual(['met c:R: fused']);
  expect(findingsOf(rule, site('rod clamp', { buried: ', buried: no' })).outcome).toBe('not applicable');
  expect(findingsOf(rule, site('unknown', { buried })).outcome).toBe('not applicable');
});

/** MIL-HDBK-419A vol. I 7.6 (read); no threshold. */
describe('surface-cleaned', () => {
  const rule = 'surface-cleaned';

  it('judges what was said, and asks about all the others in one doubt', () => {
    expect(verdictsOf(rule, site('{kind: rod clamp, cleaned: no}'))).toEqual([
      'not met c:R: paint',
      'cannot tell c:mast: nobody said',
    ]);
    expect(verdictsOf(rule, site('{kind: rod clamp, cleaned: yes}'))).toContain('met c:R: clean');
    expect(verdictsOf(rule, site('rod clamp'))).toEqual(['cannot tell c:R c:mast: nobody said']);
  });

  it('is one line of things to look at for a hundred joints, with all that the same look settles', () => {
    const wires = Array.from(
      { length: 100 },
      (_, i) => `c${i}: {from: mast@base, to: R, joints: [bolted lug, rod clamp]}`,
    );
    const many = site('rod clamp').replace(/conductors: .*/, `conductors: {${wires.join(', ')}}`);
    const doubts = findingsOf(rule, many).findings;
    expect(doubts.map((f) => [f.outcome, f.at.length])).toEqual([['cannot tell', 200]]);
    for (const other of ['clamp-accessible', 'contact-area', 'two-bolt-lug-on-steel', 'clamp-metal-match'])
      expect(findingsOf(other, many).findings.map((f) => f.under)).toEqual([doubts[0]!.id]);
  });

  it('asks nothing of welds', () => {
    const welds = site('exothermic weld').replace('bolted lug', 'exothermic weld');
    expect(findingsOf(rule, welds).outcome).toBe('not applicable');
  });
});

/** MIL-HDBK-419A vol. II (read): 3 square inches, printed as 19.5 cm². */
describe('contact-area: on each side of 3 square inches, in both systems', () => {
  const rule = 'contact-area';
  const lug = (area: string) => site('rod clamp').replace('[bolted lug,', `[{kind: bolted lug, contact: ${area}},`);
  eitherSide(rule, lug, [
    ['3 sq in', '2.9 sq in'],
    ['19.5 cm2', '19 cm2'],
  ]);

  it('asks of lugs on flat faces, on no rod', () => {
    expect(verdictsOf(rule, lug('3 sq in'))).toEqual(['met c:mast: wide']);
    expect(verdictsOf(rule, lug('19 cm2'))).toEqual(['not met c:mast: narrow']);
    expect(verdictsOf(rule, lug('15 to 25 cm2'))).toEqual(['cannot tell c:mast: not exact']);
    expect(verdictsOf(rule, site('bolted lug'))).toEqual(['cannot tell c:mast: nobody said']);
    expect(findingsOf(rule, site('rod clamp').replace('bolted lug', 'exothermic weld')).outcome).toBe('not applicable');
  });
});

/** MIL-HDBK-419A vol. II 1.2.4 (read); no threshold. */
it('joint-sealed-dissimilar: bronze on zinc in the soil wants a seal, copper on copper-clad none', () => {
  const rule = 'joint-sealed-dissimilar';
  const clamp = (says: string, rod = 'galvanised steel') =>
    site(`{kind: rod clamp, metal: bronze${says}}`, { rod, buried: ', buried: 18 in' });
  expect(verdictsOf(rule, clamp(', sealed: yes'))).toEqual(['met c:R: sealed']);
  expect(verdictsOf(rule, clamp(', sealed: no'))).toEqual(['not met c:R: open to water']);
  expect(verdictsOf(rule, clamp(''))).toEqual(['cannot tell c:R: nobody said']);
  expect(
    findingsOf(rule, site('{kind: rod clamp, metal: copper, sealed: no}', { buried: ', buried: 18 in' })).outcome,
  ).toBe('not applicable');
});

/** Common practice (second-hand). A count has no unit. */
it('two-bolt-lug-on-steel: one bolt or two on a leg of steel; aluminium is not asked', () => {
  const rule = 'two-bolt-lug-on-steel';
  const lug = (bolts: string, mast = 'galvanised steel') =>
    site('rod clamp', { mast }).replace('[bolted lug,', `[{kind: bolted lug, bolts: ${bolts}},`);
  expect(verdictsOf(rule, lug('2'))).toEqual(['met c:mast: two']);
  expect(verdictsOf(rule, lug('1'))).toEqual(['not met c:mast: one']);
  expect(verdictsOf(rule, lug('unknown'))).toEqual(['cannot tell c:mast: nobody said']);
  expect(findingsOf(rule, lug('1', 'aluminium')).outcome).toBe('not applicable');
});

/** NFPA 70 250.70 (second-hand); no threshold. */
describe('clamps and methods on an electrode', () => {
  it('joint-method-allowed: exothermic, listed lug, connector or clamp', () => {
    const rule = 'joint-method-allowed';
    expect(verdictsOf(rule, site('exothermic weld'))).toEqual(['met c:R: a method']);
    expect(verdictsOf(rule, site('{kind: rod clamp, listed: yes}'))).toEqual(['met c:R: a method']);
    expect(verdictsOf(rule, site('{kind: rod clamp, listed: no}'))).toEqual(['not met c:R: not listed']);
    expect(verdictsOf(rule, site('hose clamp'))).toEqual(['not met c:R: not a method']);
    expect(verdictsOf(rule, site('rod clamp'))).toEqual(['cannot tell c:R: nobody said']);
    expect(findingsOf(rule, site('rod clamp').replace('to: R', 'to: mast')).outcome).toBe('not applicable');
  });

  it('clamp-listed-for-burial: a clamp in the soil is marked for it', () => {
    const rule = 'clamp-listed-for-burial';
    const buried = ', buried: 18 in';
    expect(verdictsOf(rule, site('{kind: rod clamp, for_burial: yes}', { buried }))).toEqual(['met c:R: listed']);
    expect(verdictsOf(rule, site('{kind: rod clamp, for_burial: no}', { buried }))).toEqual([
      'not met c:R: not for soil',
    ]);
    expect(verdictsOf(rule, site('rod clamp', { buried }))).toEqual(['cannot tell c:R: stamp unknown']);
    expect(findingsOf(rule, site('exothermic weld', { buried })).outcome).toBe('not applicable');
    expect(findingsOf(rule, site('rod clamp', { buried: ', buried: no' })).outcome).toBe('not applicable');
  });

  it('clamp-listed-for-burial: asks for what is missing, and what is typed then settles it', () => {
    const rule = 'clamp-listed-for-burial';
    const settle = (text: string) => findingsOf(rule, text).findings[0]!.remedy!;
    expect(verdictsOf(rule, site('rod clamp'))).toEqual(['cannot tell c:R: nobody said']);
    for (const field of ['`buried: no`', '`top:`', '`for_burial:`']) expect(settle(site('rod clamp'))).toContain(field);
    const plain = site('{kind: rod clamp, for_burial: no}');
    expect(verdictsOf(rule, plain)).toEqual(['cannot tell c:R: perhaps buried']);
    expect(settle(plain)).toContain('`buried:`');
    expect(settle(plain)).not.toContain('for_burial');
    const above = plain.replace('kind: rod,', 'kind: rod, top: 0 in,');
    expect(findingsOf(rule, above).outcome).toBe('not applicable');
    expect(verdictsOf(rule, plain.replace('kind: rod,', 'kind: rod, top: 6 in,'))).toEqual([
      'not met c:R: not for soil',
    ]);
    const unnamed = site('{kind: unknown, for_burial: no}', { buried: ', buried: 18 in' });
    expect(verdictsOf(rule, unnamed)).toEqual(['cannot tell c:R: kind unknown']);
  });

  it('one-conductor-per-clamp: one, unless it is listed for more', () => {
    const rule = 'one-conductor-per-clamp';
    const two = (clamp: string) => `site: {name: Clamp, region: us, service: unknown}
electrodes: {R: {kind: rod}}
supports: {a: {kind: mast}, b: {kind: mast}}
joints: {k: {${clamp}, on: R}}
conductors: {c: {from: a@base, to: R, joints: [exothermic weld, k]}, d: {from: b@base, to: R, joints: [exothermic weld, k]}}
`;
    expect(verdictsOf(rule, two('kind: rod clamp'))).toEqual(['not met k: several']);
    expect(verdictsOf(rule, two('kind: rod clamp, for_wires: 2'))).toEqual(['met k: listed for several']);
    expect(verdictsOf(rule, two('kind: rod clamp, for_wires: 1'))).toEqual(['not met k: several']);
    expect(verdictsOf(rule, two('kind: exothermic weld'))).toContain('met k: made for several');
    expect(verdictsOf(rule, two('kind: unknown'))).toEqual(['cannot tell k: kind unknown']);
    expect(verdictsOf(rule, two('kind: other'))).toEqual(['cannot tell k: kind unknown']);
    for (const kind of ['twist', 'sheet-metal screw'])
      expect(verdictsOf(rule, two(`kind: ${kind}`))).toEqual(['not met k: several']);
    expect(verdictsOf(rule, site('rod clamp'))).toContain('met c:R: one');
    const none = site('exothermic weld').replace('bolted lug', 'exothermic weld');
    expect(findingsOf(rule, none).outcome).toBe('not applicable');
  });
});

/** NFPA 70 250.70, 250.8; MIL-HDBK-419A (read); no threshold. Solder may fill a joint that is bolted or crimped as well. */
it('no-solder-in-path: solder alone is a hazard, another method is not asked about what fills it', () => {
  const rule = 'no-solder-in-path';
  expect(verdictsOf(rule, site('solder'))).toEqual(['not met c:R: solder', 'met c:mast: other']);
  expect(findingsOf(rule, site('solder')).findings[0]!.severity).toBe('hazard');
  // one cause: that it is no method for an electrode stands beneath
  expect(findingsOf('joint-method-allowed', site('solder')).findings[0]!.under).toBe('no-solder-in-path:c:R');
  expect(findingsOf('joint-method-allowed', site('hose clamp')).findings[0]!.under).toBeNull();
  expect(verdictsOf(rule, site('{kind: bolted lug, note: filled with solder}'))).toContain('met c:R: other');
  expect(verdictsOf(rule, site('brazed'))).toContain('met c:R: other');
  expect(verdictsOf(rule, site('unknown'))).toContain('cannot tell c:R: kind unknown');
  expect(findingsOf(rule, `${site('solder').replace(/conductors: .*/, 'conductors: none')}`).outcome).toBe(
    'not applicable',
  );
});

/** Anodic index tables after MIL-STD-889 (second-hand): 0.15 V outdoors; bronze 0.40 V and copper 0.35 V, zinc coating 1.20 V. */
it('galvanic-pair: metals near each other and far apart', () => {
  const rule = 'galvanic-pair';
  expect(verdictsOf(rule, site('{kind: rod clamp, metal: bronze}'))).toContain('met c:R: near');
  expect(verdictsOf(rule, site('{kind: rod clamp, metal: zinc}'))).toContain('not met c:R: apart');
  // 0.35 and 0.5 V: as far apart as goes well, and to the hundredth no more
  expect(verdictsOf(rule, site('{kind: rod clamp, metal: stainless steel}'))).toContain('met c:R: near');
  const alone = site('exothermic weld').replace('bolted lug', 'exothermic weld');
  expect(findingsOf(rule, alone).outcome).toBe('not applicable');
});

/** What keeps the water out is typed, or the pair stands; the sheet alone leaves 0.7 V between stainless and zinc. */
describe('galvanic-pair, where somebody did something about it', () => {
  const rule = 'galvanic-pair';
  const at = (joint: string, rest = {}) =>
    verdictsOf(rule, site('exothermic weld', rest).replace('[bolted lug, ', `[{kind: bolted lug${joint}}, `));

  it('is met by a sheet or a listed joint once it is sealed, as typed', () => {
    expect(at(', shim: stainless steel, sealed: yes')).toEqual(['met c:mast: sheet']);
    expect(at(', listed: yes, sealed: yes')).toEqual(['met c:mast: made for both']);
    expect(at(', metal: tinned copper, listed: yes, sealed: yes', { mast: 'aluminium' })).toEqual([
      'met c:mast: made for both',
    ]);
    const half = [', shim: stainless steel', ', listed: yes', ', sealed: yes', ', listed: yes, sealed: no'];
    for (const open of ['', ...half, ', listed: no, sealed: yes', ', shim: copper, sealed: yes'])
      expect(at(open)).toEqual(['not met c:mast: apart']);
  });

  it('takes no zinc on copper, and no joint that nobody makes for two metals', () => {
    const rod = (joint: string) => verdictsOf(rule, site(joint)).filter((v) => v.includes('c:R'));
    expect(rod('{kind: rod clamp, metal: zinc, listed: yes, sealed: yes}')).toEqual(['not met c:R: apart']);
    const hose = site('exothermic weld').replace('[bolted lug, ', '[{kind: hose clamp, listed: yes, sealed: yes}, ');
    expect(verdictsOf(rule, hose)).toEqual(['not met c:mast: apart']);
  });

  it('does not ask indoors, where it is dry; where nobody said where, it does', () => {
    const frame = (where: string) => `site: {name: Frame, region: us, service: unknown}
metalwork: {frame: {kind: steel frame, metal: galvanised steel${where}}}
conductors: {c: {from: frame, to: unknown, wire: 6 AWG copper, joints: [bolted lug, unknown]}}
`;
    expect(findingsOf(rule, frame(', where: inside')).outcome).toBe('not applicable');
    expect(verdictsOf(rule, frame(', where: outside'))).toEqual(['not met c:frame: apart']);
    expect(verdictsOf(rule, frame(''))).toEqual(['not met c:frame: apart']);
  });
});

/** IEC 62305-3 E.7, NFPA 780 annex D (from memory): what somebody wrote down; no threshold. */
it('condition-sound: what was found sound, loose or open', () => {
  const rule = 'condition-sound';
  expect(verdictsOf(rule, site('{kind: rod clamp, condition: sound}'))).toEqual(['met c:R: sound']);
  expect(verdictsOf(rule, site('{kind: rod clamp, condition: loose}'))).toEqual(['not met c:R: loose']);
  const open = findingsOf(rule, site('{kind: rod clamp, condition: open}')).findings[0]!;
  expect([open.outcome, open.because.key, open.severity]).toEqual(['not met', 'open', 'hazard']);
  expect(findingsOf(rule, site('rod clamp')).outcome).toBe('not applicable');
});

/** Ours: a bridge of the graph. */
describe('single-point-of-failure-joint', () => {
  const rule = 'single-point-of-failure-joint';

  it('names all that one failure takes off, and is met by a second way', () => {
    expect(verdictsOf(rule, site('rod clamp'))).toEqual(['not met c c:R c:mast: single']);
    const two = site('rod clamp')
      .replace('conductors: {', 'conductors: {d: {from: mast@base, to: R2, joints: [bolted lug, rod clamp]}, ')
      .replace('electrodes: {', 'electrodes: {R2: {kind: rod}, ');
    expect(verdictsOf(rule, two)).toEqual(['met mast: two ways']);
    // a second way that may be there is none yet
    const perhaps = two.replace('conductors: {d: {', 'conductors: {d: {present: unknown, ');
    expect(verdictsOf(rule, perhaps)).toEqual(['cannot tell c c:R c:mast: perhaps single']);
    expect(findingsOf(rule, site('rod clamp').replace('from: mast@base', 'from: R')).outcome).toBe('not applicable');
  });
});

/** MIL-STD-188-124B: 1 milliohm (from memory); MIL-HDBK-419A: 5 milliohm at conduit and trays (read). */
describe('bond-resistance', () => {
  const rule = 'bond-resistance';
  const read = (ohm: string, header = ', claims: MIL-HDBK-419A') =>
    site('rod clamp', { header, more: `readings: {r1: {kind: joint, joint: 'c:R', reads: ${ohm}}}\n` });

  it('asks 1 milliohm where a military standard is named', () => {
    expect(verdictsOf(rule, read('1 mohm'))).toEqual(['met c:R: low']);
    expect(verdictsOf(rule, read('0.00105 ohm'))).toEqual(['not met c:R: high']);
    expect(verdictsOf(rule, read('over range'))).toEqual(['not met c:R: high']);
    expect(verdictsOf(rule, read('under 2 mohm'))).toEqual(['cannot tell c:R: not exact']);
  });

  it('asks 5 milliohm of a bond on conduit', () => {
    const conduit = (ohm: string) => `site: {name: Conduit, region: us, service: unknown, claims: MIL-HDBK-419A}
metalwork: {pipe: {kind: conduit}}
conductors: {c: {from: pipe, to: unknown, joints: [b, unknown]}}
joints: {b: {kind: bolted lug, on: pipe, resistance: ${ohm}}}
`;
    expect(verdictsOf(rule, conduit('4.9 mohm'))).toEqual(['met b: low']);
    expect(verdictsOf(rule, conduit('5.1 mohm'))).toEqual(['not met b: high']);
  });

  it('holds nobody else to it', () => {
    expect(findingsOf(rule, read('9 mohm', '')).outcome).toBe('not applicable');
    expect(findingsOf(rule, site('rod clamp', { header: ', claims: MIL-HDBK-419A' })).outcome).toBe('not looked at');
  });
});

/** IEC 62305-3:2010 5.3.6 (read). */
describe('test-joint-present', () => {
  const rule = 'test-joint-present';
  const down = (
    joint: string,
    electrode = '{kind: rod}',
    role = 'down conductor',
  ) => `site: {name: Down, region: iec, service: unknown}
electrodes: {R: ${electrode}}
supports: {rod: {kind: air terminal}}
conductors: {d: {from: rod, to: R, role: ${role}, joints: [{kind: bolted lug, for_test: no}, ${joint}]}}
`;

  it('asks a joint that opens with a tool on each down conductor', () => {
    expect(verdictsOf(rule, down('{kind: bolted lug, for_test: yes}'))).toEqual(['met d: there']);
    expect(verdictsOf(rule, down('{kind: bolted lug, for_test: no}'))).toEqual(['not met d: missing']);
    expect(verdictsOf(rule, down('bolted lug'))).toEqual(['cannot tell d: nobody said']);
  });

  it('asks none before a foundation, nor where nobody speaks of lightning protection', () => {
    expect(findingsOf(rule, down('bolted lug', '{kind: concrete-encased}')).outcome).toBe('not applicable');
    const mast = down('bolted lug', '{kind: rod}', 'mast lead').replace('air terminal', 'mast');
    expect(findingsOf(rule, mast).outcome).toBe('not applicable');
  });
});

/** IEC 62305-3:2010 4.3 (from memory): 0.2 ohm. */
describe('rebar-continuity', () => {
  const rule = 'rebar-continuity';
  const frame = (
    readings: string,
    claims = ', claims: class III',
  ) => `site: {name: Frame, region: iec, units: m, service: unknown${claims}}
metalwork: {frame: {kind: steel frame}}
${readings}`;
  const read = (ohm: string, between = '[frame, frame]') =>
    frame(`readings: {r1: {kind: continuity, between: ${between}, reads: ${ohm}}}\n`);

  it('asks 0.2 ohm from top to bottom', () => {
    expect(verdictsOf(rule, read('0.2 ohm'))).toEqual(['met frame: low']);
    expect(verdictsOf(rule, read('210 mohm'))).toEqual(['not met frame: high']);
    expect(verdictsOf(rule, read('over range'))).toEqual(['not met frame: high']);
    expect(verdictsOf(rule, read('0.1 to 0.3 ohm'))).toEqual(['cannot tell frame: not exact']);
  });

  it('cannot tell without a reading on the steel itself; asks nothing where no protection is claimed', () => {
    expect(verdictsOf(rule, frame(''))).toEqual(['cannot tell frame: nobody measured']);
    expect(findingsOf(rule, frame('', '')).outcome).toBe('not applicable');
  });
});

everyOutcome('no-copper-aluminium-contact');
everyOutcome('clamp-metal-match');
everyOutcome('electrode-conductor-continuous');
everyOutcome('clamp-accessible');
everyOutcome('bond-resistance');
everyOutcome('test-joint-present');
everyOutcome('rebar-continuity');
it('where no kind of joint was typed neither screw nor twist is asked about', () => {
  const untyped = site('rod clamp').replace(/, joints: \[.*\]/, '');
  for (const rule of ['no-sheet-metal-screw', 'no-twist-joint', 'surface-cleaned'])
    expect(findingsOf(rule, untyped).outcome).toBe('not applicable');
});

everyOutcome('no-sheet-metal-screw', { 'cannot tell': 'a kind that nobody knows is asked about by no-solder-in-path' });
everyOutcome('no-twist-joint', { 'cannot tell': 'a kind that nobody knows is asked about by no-solder-in-path' });
everyOutcome('surface-cleaned');
everyOutcome('contact-area');
everyOutcome('joint-sealed-dissimilar');
everyOutcome('two-bolt-lug-on-steel');
everyOutcome('joint-method-allowed');
everyOutcome('clamp-listed-for-burial');
everyOutcome('one-conductor-per-clamp');
everyOutcome('no-solder-in-path');
everyOutcome('concealed-joint-welded', {
  'cannot tell': 'whether it lies in the soil, and of what kind it is, is asked by the rules on clamps and solder',
});
everyOutcome('galvanic-pair', {
  'cannot tell': 'only metals that somebody named are compared, and what keeps them dry counts once it is typed',
  limits: 'the table goes in steps of 0.05 V: the next pair above 0.15 V is 0.2 V, which is not close by',
});
everyOutcome('condition-sound', { 'cannot tell': 'only what somebody wrote down is judged' });
everyOutcome('single-point-of-failure-joint');

/** What is behind the cover of a panel is live: nobody but an electrician looks at it. */
describe('a joint behind the cover of a panel', () => {
  const house = (kind: string, joints = 'bolted lug, bolted lug') => `site: {name: House, region: us, service: unknown}
electrodes: {R: {kind: rod}}
equipment: {box: {kind: ${kind}, where: inside}}
bars: {igb: {kind: intersystem bonding termination, where: outside, on: box}}
conductors: {c: {from: box, to: R, wire: 6 AWG copper, joints: [${joints}]}}
`;
  const looks = (rule: string, text: string) =>
    findingsOf(rule, text).findings.map((f) => [
      f.at.join('+'),
      f.tool,
      /with the cover of the panel off/.test(f.remedy),
    ]);

  it.each(['service panel', 'meter box', 'sub-panel'])('is for an electrician at a %s', (kind) => {
    expect(looks('surface-cleaned', house(kind))).toEqual([
      ['c:R', 'eyes', false],
      ['c:box', 'electrician', true],
    ]);
    expect(looks('contact-area', house(kind))).toEqual([['c:box', 'electrician', true]]);
    expect(looks('no-solder-in-path', house(kind, 'unknown, unknown'))).toEqual([
      ['c:R', 'eyes', false],
      ['c:box', 'electrician', true],
    ]);
  });

  it('is for anybody at a radio, and on a bar outside of the box', () => {
    const both = [['c:R+c:box', 'eyes', false]];
    expect(looks('surface-cleaned', house('transceiver'))).toEqual(both);
    const bar = house('meter box').replace('from: box', 'from: igb');
    expect(looks('surface-cleaned', bar)).toEqual([['c:R+c:igb', 'eyes', false]]);
    expect(looks('surface-cleaned', house('transceiver').replace('service: unknown', 'service: box'))).toHaveLength(2);
  });

  it('stands beneath the look that settles it, each at its side of the cover', () => {
    const unders = (rule: string) => findingsOf(rule, house('service panel')).findings.map((f) => f.under);
    expect(unders('contact-area')).toEqual(['surface-cleaned:c:box']);
    const clamp = house('service panel', 'bolted lug, rod clamp');
    expect(findingsOf('clamp-metal-match', clamp).findings.map((f) => f.under)).toEqual(['surface-cleaned:c:R']);
  });

  it('asks the kind of a splice of the wire to the electrode, with every cover on', () => {
    const spliced = house('service panel', 'bolted lug, unknown, bolted lug').replace(
      'service: unknown',
      'service: box',
    );
    const [found] = findingsOf('electrode-conductor-continuous', spliced).findings;
    expect(found!.because.key).toBe('splice unknown');
    expect(found!.remedy).toContain('`joints:`');
  });
});
