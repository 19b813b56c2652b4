import type { Study, StudyFinding } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { ownElectrodes } from './apart-groups.ts';
import { dutyOf } from './bond-works.ts';
import { isUp } from './foot-height.ts';
import { type Laid, layConductor } from './lay-conductor.ts';
import { legsOf } from './legs-of.ts';
import { newWork } from './new-work.ts';
import { ownerOf, type Scene } from './scene.ts';
import { type Pair, shortestPair } from './shortest-pair.ts';
import { sidesOf } from './sides-of.ts';

const pathRules: readonly string[] = ['single-point-of-failure-joint', 'two-paths-from-strike-point'];

/** A second way for what hangs on one clamp or wire, and a lead for each leg of a tower that has none. */
export function secondPathWorks(scene: Scene): readonly Work[] {
  return [...secondWays(scene), ...legLeads(scene)];
}

function secondWays(scene: Scene): readonly Work[] {
  return scene.findings(...pathRules).flatMap((f) => {
    const [part] = hanging(scene, f);
    const group = part === undefined ? null : scene.groupOf(part);
    if (part === undefined || group === null) return [];
    const sides = sidesOf(scene, group, new Set(cutBy(scene, f, part)), part);
    const pair = shortestPair(scene, sides.lost, sides.kept);
    if (pair === null) return [];
    const subject = f.because.key === 'single' ? f.at[0]! : part;
    const laid = second(scene, scene.newId(`second-${subject}`), pair);
    return [
      newWork({
        kind: 'second-path',
        subject,
        at: [part, ...[pair.from, pair.to].map(ownerOf).filter((id) => id !== part)],
        answers: [f.id],
        laid: [laid],
        values: {
          part,
          from: pair.from,
          to: pair.to,
          wire: laid.wire,
          lengthM: laid.run.lengthM,
          depthM: laid.run.depthM,
          ...laid.says,
        },
      }),
    ];
  });
}

/** Beside a wire that is there it takes as long a way as that one, whatever a plan shows. */
function second(scene: Scene, id: string, pair: Pair): Laid {
  const duty = dutyOf(scene, pair);
  const laid = layConductor(scene, { id, ...pair, duty });
  const thereM = Math.min(Infinity, ...between(scene, pair).map((c) => c.lengthM?.high ?? Infinity));
  const isShorter = laid.run.lengthM !== null && laid.run.lengthM.high < thereM && Number.isFinite(thereM);
  if (!isShorter) return laid;
  const way = { routeM: pair.way?.routeM ?? [], lengthM: thereM };
  return layConductor(scene, { id, ...pair, duty, way, slackM: 0 });
}

/** Conductors that join the same two points. */
function between(scene: Scene, { from, to }: Pair): Study['conductors'] {
  const plain = (point: string) => point.replace(/@base$/, '');
  const wanted = [from, to].map(plain).sort().join(' ');
  return scene.study.conductors.filter((c) => [c.from, c.to].map(plain).sort().join(' ') === wanted);
}

/** What loses its way: a bar or a mast before an arrester. */
function hanging(scene: Scene, { because, at }: StudyFinding): readonly string[] {
  const listed = because.values.parts;
  const parts = Array.isArray(listed) ? listed.map(String) : at.slice(0, 1);
  return ['bars', 'supports', 'arresters'].flatMap((section) =>
    parts.filter((id) => scene.part(id)?.section === section),
  );
}

/** What any one failure takes: what the finding names, else every weak point of the part. */
function cutBy(scene: Scene, { because, at }: StudyFinding, part: string): readonly string[] {
  if (because.key === 'single') return at;
  const weak = scene.study.bonding.weakPoints.filter((w) => w.kind !== 'part' && w.losesEarth.includes(part));
  return weak.map((w) => w.at);
}

function legLeads(scene: Scene): readonly Work[] {
  return scene.findings('tower-leg-connections').flatMap((f) => {
    const [tower] = f.at;
    const group = tower === undefined ? null : scene.groupOf(tower);
    if (tower === undefined || group === null) return [];
    const bare = bareLegs(scene, tower);
    const duty = isUp(scene.part(tower)) ? 'lead' : 'in soil';
    const electrodes = ownElectrodes(scene, group);
    const laid = bare.flatMap((leg) => {
      const pair = shortestPair(scene, [`${tower}.leg${leg}@base`], electrodes);
      return pair === null ? [] : [layConductor(scene, { id: scene.newId(`${tower}-leg${leg}`), ...pair, duty })];
    });
    if (laid.length === 0) return [];
    return [
      newWork({
        kind: 'second-path',
        words: 'leg-leads',
        subject: `${tower}-legs`,
        at: [tower],
        answers: [f.id],
        laid,
        values: { support: tower, legs: bare.join(', '), count: laid.length, wire: laid[0]!.wire, ...laid[0]!.says },
      }),
    ];
  });
}

/** Legs without a lead; a lead of which nobody said at which leg it is clamped takes the first. */
function bareLegs(scene: Scene, tower: string): readonly number[] {
  const points = scene.study.conductors.flatMap((c) => ends(c)).filter((p) => ownerOf(p) === tower);
  const named = new Set(points.flatMap((p) => /\.leg(\d+)/.exec(p)?.[1] ?? []).map(Number));
  const untold = points.filter((p) => !/\.leg\d/.test(p)).length;
  const free = Array.from({ length: legsOf(scene, tower) }, (_, i) => i + 1).filter((leg) => !named.has(leg));
  return free.slice(Math.min(untold, Math.max(0, free.length - 1)));
}

function ends({ from, to }: Study['conductors'][number]): readonly string[] {
  return [from, to];
}
