import type { StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { Work } from '../work.ts';
import { ownElectrodes } from './apart-groups.ts';
import { besideWall } from './building-walls.ts';
import { layConductor } from './lay-conductor.ts';
import { linePath, withStop } from './line-path.ts';
import { neededToLand, rodOfService } from './needed-first.ts';
import { each, newWork } from './new-work.ts';
import { typedPlace } from './owner-units.ts';
import { pathChanges } from './protector-works.ts';
import type { Scene } from './scene.ts';
import { spotsOf } from './way-to-lay.ts';

/** What the service itself lacks: a protector of the mains, a terminal for the bonds of telephone, cable and antenna. */
export function serviceWorks(scene: Scene): readonly Work[] {
  return [...mainsProtector(scene), ...outletProtectors(scene), ...intersystemBar(scene)];
}

function mainsProtector(scene: Scene): readonly Work[] {
  const { service } = scene.study.site;
  const wrong = scene.findings('service-surge-protector');
  const box = scene.part(service);
  if (wrong.length === 0 || box?.section !== 'equipment') return [];
  const id = scene.newId('mains-protector');
  return [
    newWork({
      kind: 'add-protector',
      words: 'mains-protector',
      subject: service,
      at: [service],
      answers: wrong.map((f) => f.id),
      changes: [unit(id, service, scene)],
      needs: rodOfService(scene),
      materials: [each('mains protector')],
      values: { panel: service, kind: 'mains protector' },
    }),
  ];
}

/** Leads of a hand's breadth: every metre of lead adds about a kilovolt (IEC 61643-12, from memory). */
function unit(id: string, on: string, scene: Scene): SiteChange {
  const lead = scene.study.site.units === 'ft' ? '6 in' : '15 cm';
  const fields = {
    kind: 'mains protector',
    on,
    lead,
    covers: 'all',
    listed: 'yes',
    joint: 'bolted lug',
    known: 'planned',
  };
  return { is: 'add', section: 'arresters', id, fields };
}

/** At the bar on which the protectors of the feed lines are, on each circuit that feeds a radio. */
function outletProtectors(scene: Scene): readonly Work[] {
  return scene.findings('mains-protector-at-panel').flatMap((f) => {
    const bars = scene.parts('bars');
    const bar = bars.find((b) => b.kind === 'station ground bar') ?? bars.find((b) => b.kind === 'entry panel');
    if (bar === undefined) return [];
    const changes = f.at.flatMap((line) => onCircuit(scene, line, bar.id));
    return changes.length === 0 ? [] : [ofCircuits(f, bar.id, changes, neededToLand(scene, bar.id))];
  });
}

function onCircuit(scene: Scene, line: string, bar: string): readonly SiteChange[] {
  const path = linePath(scene, line);
  if (path === null || path.stops.length < 2) return [];
  const id = scene.newId(`protector-${line}`);
  return [unit(id, bar, scene), ...pathChanges(line, path, withStop(path, path.stops.length - 1, id))];
}

function ofCircuits(f: StudyFinding, bar: string, changes: readonly SiteChange[], needs: readonly string[]): Work {
  const lines = f.at.join(', ');
  return newWork({
    kind: 'add-protector',
    words: 'outlet-protector',
    subject: f.at.join('+'),
    at: [...f.at, bar],
    answers: [f.id],
    changes,
    needs,
    materials: [each('mains protector', f.at.length)],
    values: { panel: bar, line: lines, kind: 'mains protector', count: f.at.length },
  });
}

/** Three terminals at least, by 6 AWG copper (NFPA 70, 250.94); on the electrode of the service where that is told. */
function intersystemBar(scene: Scene): readonly Work[] {
  const { service, units } = scene.study.site;
  const { main } = scene;
  return scene.findings('intersystem-bar-present').flatMap((f) => {
    if (f.because.key !== 'none there' || main === null || scene.part(service) === undefined) return [];
    const id = scene.newId('intersystem-bar');
    const [here] = spotsOf(scene.part(service));
    const spot = here === undefined ? null : besideWall(scene, scene.part(service)?.where ?? '', here, 0.3);
    const electrode = ownElectrodes(scene, main)[0];
    const to = electrode ?? service;
    const laid = layConductor(scene, { id: scene.newId(`bond-${id}`), from: id, to, duty: 'lead', way: shortLead });
    const fields = {
      kind: 'intersystem bonding termination',
      ...(spot === null ? {} : { at: typedPlace(spot, units) }),
      where: 'outside',
      terminals: 4,
      on_cover: 'no',
      known: 'planned',
    };
    return [
      newWork({
        kind: 'put-right',
        words: 'intersystem-bar',
        subject: id,
        at: [id, to],
        answers: [f.id],
        changes: [{ is: 'add', section: 'bars', id, fields }],
        laid: [laid],
        materials: [each('intersystem bonding termination')],
        values: { part: id, to, wire: laid.wire },
      }),
    ];
  });
}

/** It is mounted where the service comes in, above its electrode. */
const shortLead = { routeM: [], lengthM: 0.6 } as const;
