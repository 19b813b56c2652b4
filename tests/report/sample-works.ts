import { readFileSync } from 'node:fs';
import { costOf } from '../../src/rework/cost/cost-of.ts';
import { effectOf } from '../../src/rework/plan/effect-of.ts';
import { outlookOf } from '../../src/rework/plan/outlook.ts';
import type { Material, Step, Work, WorkRun, WorksPlan } from '../../src/rework/work.ts';
import type { Study } from '../../src/study/study.ts';
import { type SiteChange, tryChange } from '../../src/study/try-change.ts';

/** A plan typed by hand, one work of each kind, tried on a site as a planner would try it. */
type Typed = Pick<Work, 'id' | 'kind' | 'at' | 'changes' | 'materials'> & Partial<Work>;

const each = (name: string, n: number): Material => ({ name, unit: 'each', count: { low: n, high: n } });
const metres = (name: string, m: number): Material => ({ name, unit: 'm', count: { low: m, high: m } });
const run = (part: string, lengthM: number, depthM: number | null, routeM: WorkRun['routeM'] = []): WorkRun => ({
  part,
  routeM,
  lengthM: { low: lengthM, high: lengthM },
  depthM,
});
const add = (section: 'conductors' | 'electrodes' | 'arresters', id: string, fields: object): SiteChange =>
  ({ is: 'add', section, id, fields }) as SiteChange;
const set = (section: string, id: string, field: string, value: unknown): SiteChange =>
  ({ is: 'set', section, id, field, value }) as SiteChange;

const welds = ['exothermic weld', 'exothermic weld'];
const foot = 0.3048;

const clubWorks: readonly Typed[] = [
  {
    id: 'bond:E2',
    kind: 'bond',
    at: ['E2', 'E1'],
    changes: [
      add('conductors', 'w-bond', {
        from: 'E2',
        to: 'E1',
        wire: '6 AWG copper',
        route: [
          [49, 24],
          [50, -2],
          [0, -2],
          [0, 0],
        ],
        length: '78 ft',
        buried: '30 in',
        joints: welds,
      }),
    ],
    materials: [metres('6 AWG copper', 78 * foot), each('exothermic weld', 2)],
    runs: [
      run('w-bond', 78 * foot, 30 * 0.0254, [
        [49 * foot, 24 * foot],
        [50 * foot, -2 * foot],
        [0, -2 * foot],
        [0, 0],
      ]),
    ],
  },
  {
    id: 'replace-joint:c3',
    kind: 'replace-joint',
    at: ['c3:tower-rods.1'],
    changes: [set('conductors', 'c3', 'joints', ['bolted lug', 'exothermic weld'])],
    materials: [each('exothermic weld', 1)],
  },
  {
    id: 'replace-conductor:c5',
    kind: 'replace-conductor',
    at: ['c5'],
    changes: [set('conductors', 'c5', 'wire', '6 AWG copper'), set('conductors', 'c5', 'where', 'outside')],
    materials: [metres('6 AWG copper', 38 * foot), each('bolted lug', 1), each('acorn clamp', 1)],
    runs: [run('c5', 38 * foot, null)],
  },
  {
    id: 'second-path:entry',
    kind: 'second-path',
    at: ['entry', 'main-panel'],
    changes: [
      add('conductors', 'w-second', {
        from: 'entry',
        to: 'main-panel',
        wire: '2 AWG copper',
        length: '70 ft',
        buried: 'no',
        where: 'outside',
        joints: ['bolted lug', 'bolted lug'],
      }),
    ],
    materials: [metres('2 AWG copper', 70 * foot), each('bolted lug', 2)],
    runs: [run('w-second', 70 * foot, null)],
  },
  {
    id: 'tie-metalwork:fence',
    kind: 'tie-metalwork',
    at: ['fence'],
    changes: [
      add('conductors', 'w-fence', {
        from: 'fence',
        to: 'tower-rods.1',
        wire: '6 AWG copper',
        length: '10 ft',
        buried: '18 in',
        joints: ['bolted lug', 'exothermic weld'],
      }),
    ],
    materials: [metres('6 AWG copper', 10 * foot), each('bolted lug', 1), each('exothermic weld', 1)],
    runs: [run('w-fence', 10 * foot, 18 * 0.0254)],
  },
  {
    id: 'add-rods:E1',
    kind: 'add-rods',
    at: ['E1'],
    changes: [
      add('electrodes', 'w-rod', {
        kind: 'rod',
        at: [0, -18],
        length: '8 ft',
        diameter: '5/8 in',
        metal: 'copper-clad steel',
      }),
      add('conductors', 'w-rod-lead', {
        from: 'w-rod',
        to: 'E1',
        wire: '6 AWG copper',
        length: '18 ft',
        buried: '30 in',
        joints: welds,
      }),
    ],
    materials: [each('rod', 1), metres('6 AWG copper', 18 * foot), each('exothermic weld', 2)],
    runs: [run('w-rod-lead', 18 * foot, 30 * 0.0254)],
  },
  {
    id: 'deepen-rod:E2',
    kind: 'deepen-rod',
    at: ['E2'],
    changes: [set('electrodes', 'E2', 'length', '16 ft')],
    materials: [each('rod', 1), each('rod coupler', 1)],
  },
  {
    id: 'close-ring:tower-rods',
    kind: 'close-ring',
    at: ['tower-rods.1', 'tower-rods.3'],
    changes: [
      add('conductors', 'w-ring', {
        from: 'tower-rods.1',
        to: 'tower-rods.3',
        wire: '2 AWG copper',
        length: '16 ft',
        buried: '30 in',
        joints: welds,
      }),
    ],
    materials: [metres('2 AWG copper', 16 * foot), each('exothermic weld', 2)],
    runs: [run('w-ring', 16 * foot, 30 * 0.0254)],
  },
  {
    id: 'add-protector:service',
    kind: 'add-protector',
    at: ['main-panel'],
    changes: [
      add('arresters', 'w-mains', {
        kind: 'mains protector',
        on: 'main-panel',
        where: 'clubhouse',
        listed: 'yes',
        lead: '6 in',
      }),
      set('lines', 'service-drop', 'path', ['street', 'w-mains', 'main-panel']),
    ],
    materials: [each('mains protector', 1)],
  },
  {
    id: 'move-arrester:a2',
    kind: 'move-arrester',
    at: ['a2'],
    changes: [
      set('arresters', 'a2', 'on', 'entry'),
      set('arresters', 'a2', 'at', null),
      set('arresters', 'a2', 'bonded', null),
    ],
    materials: [each('bolted lug', 1)],
  },
  {
    id: 'move-line:line2',
    kind: 'move-line',
    at: ['line2'],
    changes: [
      add('arresters', 'w-a2', { kind: 'gas tube', on: 'entry', sparkover: '230 V', listed: 'yes' }),
      set('lines', 'line2', 'path', ['dipole', { bond: 'tower@2 ft' }, 'w-a2', { plug: 'j2' }, 'hf-radio']),
      set('lines', 'line2', 'lengths', null),
      set('lines', 'line2', 'length', '110 ft'),
    ],
    materials: [each('gas tube', 1)],
  },
  {
    id: 'put-right:phone-block',
    kind: 'put-right',
    at: ['phone-block'],
    changes: [set('arresters', 'phone-block', 'bonded', 'yes')],
    materials: [],
  },
  {
    id: 'move-panel:entry',
    kind: 'move-panel',
    at: ['entry'],
    changes: [set('bars', 'entry', 'at', [2, -0.5])],
    materials: [each('bolted lug', 2)],
  },
];

const options = { state: null, version: '0', checksum: '0', date: null, detail: false };

function studied(text: string, file: string, changes: readonly SiteChange[]): { text: string; study: Study } {
  const tried = tryChange(text, file, changes, options);
  if ('problem' in tried) throw new Error(JSON.stringify(tried.problem));
  return { text: tried.text, study: tried.run.study };
}

function planOf(text: string, file: string, typed: readonly Typed[]): WorksPlan {
  const before = studied(text, file, []).study;
  const steps: Step[] = [];
  let last = { text, study: before };
  for (const work of typed.map((t): Work => ({ answers: [], needs: [], runs: [], values: {}, ...t }))) {
    const alone = studied(text, file, work.changes).study;
    const next = studied(last.text, file, work.changes);
    steps.push({
      work,
      cost: costOf(work, before),
      alone: effectOf(outlookOf(before), outlookOf(alone)),
      inTurn: effectOf(outlookOf(last.study), outlookOf(next.study)),
    });
    last = next;
  }
  const wrong = before.findings.filter((f) => f.outcome === 'not met');
  const [moved] = typed.slice(-1);
  const left: Work = { answers: [], needs: [], runs: [], values: {}, ...moved!, id: 'add-rods:too-many' };
  return {
    format: 1,
    before,
    after: last.study,
    text: last.text,
    steps,
    leftOut: [
      { work: { ...left, kind: 'add-rods' }, why: 'over budget', brings: [], because: [] },
      { work: { ...left, id: 'move-panel:other' }, why: 'breaks another', brings: wrong.slice(0, 1), because: [] },
      { work: { ...left, id: 'move-panel:third' }, why: 'brings as much', brings: wrong.slice(1, 2), because: [] },
      { work: { ...left, id: 'move-panel:fourth' }, why: 'brings as much', brings: [], because: [] },
    ],
    searched: 'step by step',
    weighedBy: steps.every((s) => s.cost.price !== null) ? 'price' : 'material',
    limits: { budget: 1500, hours: null },
    stopped: false,
  };
}

const clubFile = 'marl-hill/marl-hill.site.yaml';
const exampleText = readFileSync(new URL(`../../examples/${clubFile}`, import.meta.url), 'utf8');
const clubText = exampleText.replace('  bolted lug: 3.5\n', '');

/** Prices for everything but two things. */
export const clubPlan = planOf(clubText, clubFile, clubWorks);

const morePrices = '  bolted lug: 6\n  acorn clamp: 5\n  rod coupler: 9\n  hour: 60\n';

/** With a price for everything, and for work. */
export const pricedPlan = planOf(clubText.trimEnd().concat('\n', morePrices), clubFile, clubWorks);

/** The same station under the other words, in metres. */
export const iecPlan = planOf(
  clubText.replace('region: us', 'region: iec').replace('supply: us-grounded', 'supply: tn-s'),
  clubFile,
  clubWorks,
);
