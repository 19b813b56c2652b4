import type { Work } from '../work.ts';
import { bondIdFor } from './apart-groups.ts';
import { guyClamp } from './joint-works.ts';
import { landingsOf } from './landings.ts';
import { layConductor } from './lay-conductor.ts';
import { driveRod, usualRod } from './new-rod.ts';
import { newWork } from './new-work.ts';
import { rodSpot } from './rod-spot.ts';
import { ownerOf, type Scene } from './scene.ts';
import { type Spot, spotsOf } from './way-to-lay.ts';

/** Anchors of guys without an electrode: a rod of the anchor's own metal, tied to the guy and to the electrodes of its mast. */
export function guyWorks(scene: Scene): readonly Work[] {
  return scene.findings('guy-anchor-grounded').flatMap((f) => {
    const guy = scene.study.guys.find((g) => g.id === f.at[0]);
    const group = guy === undefined ? null : scene.groupOf(guy.support);
    if (guy === undefined || group === null) return [];
    const anchor: Spot | null = guy.anchorM === null ? null : [guy.anchorM[0], guy.anchorM[1]];
    const spot = anchor === null ? null : rodSpot(scene, anchor, besideM);
    const landings = landingsOf(scene, group);
    const ranked = [...landings].sort((a, b) => farM(scene, a, spot) - farM(scene, b, spot));
    const to = ranked[0];
    if (to === undefined) return [];
    const rod = scene.newId(`rod-${guy.id}`);
    const driven = driveRod(scene, {
      id: rod,
      to,
      spot,
      spacingM: null,
      metal: 'galvanised steel',
      wire: tinned(scene),
    });
    const lead = layConductor(scene, {
      id: scene.newId(`lead-${guy.id}`),
      from: `${guy.id}@tower`,
      to: rod,
      duty: 'lead',
      wire: tinned(scene),
      way: { routeM: spot === null || anchor === null ? [] : [anchor, spot], lengthM: besideM },
      joints: [guyClamp, null],
      rods: [rod],
    });
    const bond = bondIdFor(scene, guy.support);
    const size = usualRod(scene);
    return [
      newWork({
        kind: 'add-rods',
        words: 'guy-rod',
        subject: guy.id,
        at: [guy.id, ownerOf(to)],
        answers: [f.id],
        changes: driven.changes,
        laid: [lead],
        needs: bond === null ? [] : [bond],
        materials: driven.materials,
        runs: driven.runs,
        values: { to, guy: guy.id, count: 1, spacingM: besideM, rodLengthM: size.lengthM },
      }),
    ];
  });
}

/** From the anchor to its rod. */
const besideM = 0.9;

function tinned({ study }: Scene): string {
  return study.site.units === 'ft' ? '6 AWG tinned copper' : '16 mm2 tinned copper';
}

function farM(scene: Scene, point: string, spot: Spot | null): number {
  if (spot === null) return 0;
  return Math.min(
    Infinity,
    ...spotsOf(scene.part(ownerOf(point))).map((s) => Math.hypot(s[0] - spot[0], s[1] - spot[1])),
  );
}
