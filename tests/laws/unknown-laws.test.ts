/** What is not known, held against the plainest way to answer it: try every setting. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { electrodesOf, follow, membersAmong, nodesOf, plainOf, serviceOf } from './plain-metal.ts';
import { docOf, few, type Spec, siteOfText, specs, textOf } from './small-sites.ts';

test('what is unknown: tried out with every setting, the answers are those that are given, and the named fields decide', () => {
  fc.assert(
    fc.property(specs, (drawn) => {
      // A wire that lands on rods nobody joined lands on one of them; which one is no field of the file.
      const joined = drawn.joined === 'no' && drawn.wires.some(({ from, to }) => from === 'rods' || to === 'rods');
      const spec = joined ? { ...drawn, joined: 'yes' } : drawn;
      const doc = fewUnknown(docOf(spec), 5);
      const fields = unknownFields(doc);
      const { bonding } = bondingOf(siteOfText(textOf(spec.service, doc)), null);
      const settings = Array.from({ length: 2 ** fields.length }, (_, bits) => unbondedIn(spec, doc, fields, bits));
      if (settings.every((set) => set === null)) {
        expect([[], null]).toContainEqual(bonding.unbondedElectrodes);
        return;
      }
      const electrodes = [...new Set(settings.flatMap((set) => [...set!.all]))].sort();
      const out = (id: string) => settings.map((set) => set!.unbonded.has(id));
      expect(bonding.unbondedElectrodes).toEqual(electrodes.filter((id) => out(id).every(Boolean)));
      const some = electrodes.filter((id) => out(id).some(Boolean) && !out(id).every(Boolean));
      expect(bonding.perhapsUnbonded.map(({ electrode }) => electrode)).toEqual(some);
      for (const { electrode, decidedBy } of bonding.perhapsUnbonded) {
        expect(fields, electrode).toEqual(expect.arrayContaining([...decidedBy]));
        const bits = decidedBy.reduce((mask, field) => mask | (1 << fields.indexOf(field)), 0);
        const answers = out(electrode);
        // Settings that agree in the named fields agree in the answer.
        for (const [i, answer] of answers.entries()) {
          expect(answers[i & bits], `${electrode} by ${decidedBy}`).toBe(answer);
        }
      }
    }),
    few,
  );
});

/** Paths of what is unknown in the file and decides a tie. That nobody says how the sections of a crank-up meet is typed by leaving it out. */
function unknownFields(doc: ReturnType<typeof docOf>): readonly string[] {
  const paths = Object.entries(doc).flatMap(([section, members]) =>
    Object.entries(members).flatMap(([id, fields]) =>
      Object.entries(fields)
        .filter(([field, value]) => value === 'unknown' && field !== 'joined')
        .map(([field]) => `${section}.${id}.${field}`),
    ),
  );
  const crank = doc.supports!.crank!;
  return crank.sections === undefined ? [...paths, 'supports.crank.sections'] : paths;
}

/** The same file with what is unknown beyond so many fields set to yes. */
function fewUnknown(doc: ReturnType<typeof docOf>, most: number) {
  return unknownFields(doc)
    .slice(most)
    .reduce((held, path) => withField(held, path, true), doc);
}

function withField(doc: ReturnType<typeof docOf>, path: string, isYes: boolean): ReturnType<typeof docOf> {
  const [section, id, field] = path.split('.') as [string, string, string];
  const values = field === 'sections' ? ['bolted', 'sliding'] : ['yes', 'no'];
  const more = { [field]: isYes ? values[0] : values[1], ...(field === 'sections' && !isYes ? { jumpers: 'no' } : {}) };
  return { ...doc, [section]: { ...doc[section], [id]: { ...doc[section]![id], ...more } } };
}

/** Electrodes that the bonds of one setting do not tie to the service; null with no service known. */
function unbondedIn(spec: Spec, doc: ReturnType<typeof docOf>, fields: readonly string[], bits: number) {
  const set = fields.reduce((held, path, i) => withField(held, path, ((bits >> i) & 1) === 1), doc);
  const plain = plainOf(siteOfText(textOf(spec.service, set)));
  if (plain.run.bonding.service.is !== 'known') return null;
  const reached = new Set(membersAmong(plain, follow(plain, nodesOf(plain, serviceOf(plain)))));
  const all = electrodesOf(plain);
  return { all, unbonded: new Set(all.filter((id) => !reached.has(id))) };
}
