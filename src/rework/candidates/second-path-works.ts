import type { Study, StudyFinding } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { ownElectrodes } from './apart-groups.ts';
import { layConductor } from './lay-conductor.ts';
import { legsOf } from './legs-of.ts';
import { newWork } from './new-work.ts';
import { ownerOf, type Scene } from './scene.ts';
import { shortestPair } from './shortest-pair.ts';

const pathRules: readonly string[] = ['single-point-of-failure-joint', 'two-paths-from-strike-point'];

/** A second way for what hangs on one clamp or wire, and a lead for each leg of a tower that has none. */
export function secondPathWorks(scene: Scene): readonly Work[] {
  return [...secondWays(scene), ...legLeads(scene)];
}

function secondWays(scene: Scene): readonly Work[] {
  const wrong = scene.findings(...pathRules);
  const asked = wrong.flatMap((f) => hanging(scene, f).map((part) => ({ part, f })));
  const parts = [...new Set(asked.map((a) => a.part))];
  return parts.flatMap((part) => {
    const answers = asked.filter((a) => a.part === part).map((a) => a.f);
    const group = scene.groupOf(part);
    if (group === null) return [];
    const from = pointOf(scene, part);
    const used = scene.study.conductors.filter((c) => [c.from, c.to].some((p) => ownerOf(p) === part));
    const landed = new Set(used.flatMap((c) => [ownerOf(c.from), ownerOf(c.to)]));
    const cut = new Set(answers.flatMap((f) => f.at));
    const all = ownElectrodes(scene, group).filter((e) => !cut.has(e));
    const fresh = all.filter((e) => !landed.has(e));
    const pair = shortestPair(scene, [from], fresh.length > 0 ? fresh : all);
    if (pair === null) return [];
    const id = scene.newId(`second-${part}`);
    const laid = layConductor(scene, { id, ...pair, duty: inSoil(scene, part) ? 'in soil' : 'lead' });
    return [
      newWork({
        kind: 'second-path',
        subject: part,
        at: [part, ownerOf(pair.to)],
        answers: answers.map((f) => f.id),
        laid: [laid],
        values: { from, to: pair.to, wire: laid.wire, lengthM: laid.run.lengthM, depthM: laid.run.depthM },
      }),
    ];
  });
}

/** What loses its way: a mast or a bar before an arrester that is on it, one work for all that hang together. */
function hanging(scene: Scene, { because, at }: StudyFinding): readonly string[] {
  const listed = because.values.parts;
  const parts = Array.isArray(listed) ? listed.map(String) : at.slice(0, 1);
  const of = (section: string) => parts.filter((id) => scene.part(id)?.section === section);
  const first = [...of('bars'), ...of('supports')];
  return first.length > 0 ? first.slice(0, 1) : of('arresters').slice(0, 1);
}

function pointOf(scene: Scene, part: string): string {
  return scene.part(part)?.section === 'supports' ? `${part}@base` : part;
}

function inSoil(scene: Scene, part: string): boolean {
  return scene.part(part)?.section === 'supports' && (scene.part(part)?.positionM?.[2] ?? 0) < 1;
}

function legLeads(scene: Scene): readonly Work[] {
  return scene.findings('tower-leg-connections').flatMap((f) => {
    const [tower] = f.at;
    const group = tower === undefined ? null : scene.groupOf(tower);
    if (tower === undefined || group === null) return [];
    const bare = bareLegs(scene, tower);
    const electrodes = ownElectrodes(scene, group);
    const laid = bare.flatMap((leg) => {
      const pair = shortestPair(scene, [`${tower}.leg${leg}@base`], electrodes);
      return pair === null
        ? []
        : [layConductor(scene, { id: scene.newId(`${tower}-leg${leg}`), ...pair, duty: 'in soil' })];
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
        values: { support: tower, legs: bare.join(', '), count: laid.length, wire: laid[0]!.wire },
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
