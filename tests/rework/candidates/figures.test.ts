import { describe, expect, it } from 'vitest';
import { isInside, wallM } from '../../../src/rework/candidates/building-walls.ts';
import { type LinePath, withStop } from '../../../src/rework/candidates/line-path.ts';
import { placeM, plannedLength, typedPlace } from '../../../src/rework/candidates/owner-units.ts';
import { rodSpacingM } from '../../../src/rework/candidates/rod-spacing.ts';
import { rodSpot } from '../../../src/rework/candidates/rod-spot.ts';
import { type Scene, sceneOf } from '../../../src/rework/candidates/scene.ts';
import { sparkoverFor } from '../../../src/rework/candidates/sparkover-for.ts';
import { siteAtHand } from './sites-at-hand.ts';

const marlHill = sceneOf(siteAtHand('examples/marl-hill/marl-hill.site.yaml').study);
const town = sceneOf(siteAtHand('examples/town-flat/town-flat.site.yaml').study);

describe('figures as they are typed', () => {
  it('rounds lengths up, so that the wire reaches', () => {
    // 10 ft = 3.048 m exactly
    expect(plannedLength(3.048, 'ft')).toEqual({ text: '10 ft', lengthM: 3.048 });
    expect(plannedLength(3.05, 'ft').text).toBe('11 ft');
    expect(plannedLength(3.05, 'm')).toEqual({ text: '3.5 m', lengthM: 3.5 });
    expect(plannedLength(0, 'm').text).toBe('0.5 m');
  });

  it('rounds places to what a tape shows, and reads them back', () => {
    expect(typedPlace([3.1, -0.01], 'ft')).toEqual([10, 0]);
    expect(typedPlace([3.14, -2.26], 'm')).toEqual([3.1, -2.3]);
    expect(placeM([10, 0], 'ft')).toEqual([3.048, 0]);
  });
});

describe('a stop put into a path', () => {
  const path: LinePath = { stops: ['beam', { bend: 'tower@2 ft' }, 'radio'], lengths: ['90 ft'] };

  it('cuts the piece that it is in, bends left out', () => {
    const now = withStop(path, 2, 'a1', ['80 ft', '10 ft']);
    expect(now).toEqual({ stops: ['beam', { bend: 'tower@2 ft' }, 'a1', 'radio'], lengths: ['80 ft', '10 ft'] });
  });

  it('leaves the lengths open where nobody gives them, and the whole where only that is typed', () => {
    expect(withStop(path, 1, 'a1').lengths).toEqual(['unknown', 'unknown']);
    expect(withStop({ ...path, lengths: [] }, 1, 'a1').lengths).toEqual([]);
  });
});

describe('a tube for the power of a line', () => {
  const line = (scene: Scene, id: string) => scene.study.lines.find((l) => l.id === id)!;

  it('fires above 1.5 times the peak, a fifth below its figure taken off', () => {
    // 600 W, SWR 2 of the transceiver, 50 ohm: sqrt(2 * 600 * 50 * 2) = 346 V; 1.5 * 346 / 0.8 = 650 V: the step of 1000 V
    expect(sparkoverFor(marlHill, line(marlHill, 'line1'))).toBe(1000);
    // 50 W, SWR 1.5: sqrt(2 * 50 * 50 * 1.5) = 86.6 V; 1.5 * 86.6 / 0.8 = 162 V: the step of 230 V
    expect(sparkoverFor(town, line(town, 'coax'))).toBe(230);
  });
});

describe('where a rod goes', () => {
  it('stands twice its length off where nothing was worked out, never nearer than it is long', () => {
    // no solve in a check without details: 2 * 8 ft
    expect(rodSpacingM({ ...marlHill, study: { ...marlHill.study, earth: noGains(marlHill) } }, 'E1')).toBeCloseTo(
      4.877,
      3,
    );
  });

  it('takes the least distance that brings nine tenths of what the farthest brings', () => {
    const gains = { electrode: 'E1', points: [at(1, 0.3), at(2.5, 0.4), at(3, 0.45), at(6, 0.48), at(12, 0.5)] };
    const earth = { ...noGains(marlHill), spacingGains: [gains] };
    expect(rodSpacingM({ ...marlHill, study: { ...marlHill.study, earth } }, 'E1')).toBe(3);
  });

  it('is outside, off the walls and as far from the other electrodes as can be', () => {
    for (const beside of [
      [0, 0],
      [14.9, 7.3],
      [5, -3],
    ] as const) {
      const spot = rodSpot(marlHill, beside, 5)!;
      expect(Math.hypot(spot[0] - beside[0], spot[1] - beside[1])).toBeCloseTo(5, 9);
      for (const { id } of marlHill.study.buildings) {
        expect(isInside(marlHill, id, spot)).toBe(false);
        expect(wallM(marlHill, id, spot)!).toBeGreaterThanOrEqual(0.7);
      }
    }
  });

  it('is nowhere in the middle of a house', () => {
    expect(rodSpot(marlHill, [7.3, 4.6], 2)).toBeNull();
  });
});

const at = (spacingM: number, gainShare: number) => ({ spacingM, ohm: 10, gainShare });
const noGains = ({ study }: Scene) => ({ ...study.earth, spacingGains: [] });
