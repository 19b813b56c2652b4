import type { Interval } from '../units/interval.ts';
import { nearName } from '../units/near-name.ts';
import { type Citation, cite } from './source.ts';

/** A class of coaxial cable by its usual designation; no maker's type. null is not known. */
export interface Cable {
  readonly name: string;
  /** DC resistance of the shield. */
  readonly shieldOhmPerM: Interval | null;
  readonly shieldSource: Citation | null;
  /** Across the jacket. */
  readonly outsideM: Interval | null;
  /** Across the shield: the radius that its own inductance goes by. */
  readonly shieldDiameterM: Interval | null;
  readonly sizeSource: Citation | null;
}

const shields = cite('trade tables of coaxial cable, DC resistance of the shield', null, null, 'memory');
const military = cite('MIL-C-17 cable sheets', null, 'dimensions', 'memory');
const hardLines = cite('trade tables of corrugated coaxial cable', null, 'dimensions', 'memory');

export const cables: readonly Cable[] = [
  cable('RG-58 class', [13.5e-3], [4.8e-3, 5.1e-3], [3.4e-3, 3.8e-3], military),
  cable('RG-213 class', [3.9e-3], [10.1e-3, 10.5e-3], [7.9e-3, 8.3e-3], military),
  cable('RG-8X class', null, [6.0e-3, 6.3e-3], null, military),
  cable('RG-59 class', null, [6.0e-3, 6.3e-3], null, military),
  cable('RG-6 class', null, [6.7e-3, 7.1e-3], null, military),
  cable('RG-11 class', null, [10.1e-3, 10.5e-3], null, military),
  cable('400 class', null, [10.1e-3, 10.5e-3], null, hardLines),
  cable('1/2 in hard line', null, [15.5e-3, 16.5e-3], [13.5e-3, 14.2e-3], hardLines),
  cable('7/8 in hard line', null, [27e-3, 28.5e-3], [24.5e-3, 25.5e-3], hardLines),
];

export const cableNames: readonly string[] = cables.map((c) => c.name);

const otherNames: Readonly<Record<string, string>> = {
  rg8: 'RG-213 class',
  rg213: 'RG-213 class',
  rg58: 'RG-58 class',
  rg8x: 'RG-8X class',
  rg59: 'RG-59 class',
  rg6: 'RG-6 class',
  rg11: 'RG-11 class',
};

/** The class of cable that a text names (`RG-58`, `rg213/u`, `1/2 in hard line`, `7/8" hardline`); null for any other. */
export function readCable(text: string): Cable | null {
  const plain = plainCable(text);
  const name = otherNames[plain.replace(/(?:au|bu|cu|u)$/, '')];
  return cables.find((c) => c.name === name || plainCable(c.name) === plain) ?? null;
}

/** The class that was most likely meant; null when none is close. */
export function nearCable(text: string): string | null {
  return nearName(text, cableNames);
}

function plainCable(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/(?:"|inch|in)(?=[\s-]*hard)/, '')
    .replace(/\bclass$|[\s/-]+/g, (found) => (found === '/' ? '' : ''))
    .replace(/(?:class|cable|coax)$/, '');
}

function cable(
  name: string,
  shieldOhmPerM: readonly number[] | null,
  outsideM: readonly number[] | null,
  shieldDiameterM: readonly number[] | null,
  sizeSource: Citation,
): Cable {
  return {
    name,
    shieldOhmPerM: range(shieldOhmPerM),
    shieldSource: shieldOhmPerM === null ? null : shields,
    outsideM: range(outsideM),
    shieldDiameterM: range(shieldDiameterM),
    sizeSource,
  };
}

function range(figures: readonly number[] | null): Interval | null {
  const [low, high] = figures ?? [];
  return low === undefined ? null : { low, high: high ?? low };
}
