export type System = 'us' | 'si';

/** How a figure was typed: the unit systems in which a text has it, and whether as a wire gauge. */
export interface Typed {
  readonly systems: ReadonlySet<System>;
  readonly gauge: boolean;
}

const lengths: Readonly<Record<string, readonly [System, number]>> = {
  um: ['si', 1e-6],
  mm: ['si', 1e-3],
  cm: ['si', 1e-2],
  m: ['si', 1],
  mil: ['us', 0.0254e-3],
  in: ['us', 0.0254],
  ft: ['us', 0.3048],
};
const areas: Readonly<Record<string, readonly [System, number]>> = {
  mm2: ['si', 1e-6],
  cm2: ['si', 1e-4],
  m2: ['si', 1],
  kcmil: ['us', 0.5067e-6],
  'sq in': ['us', 0.0254 ** 2],
  'sq ft': ['us', 0.3048 ** 2],
};

interface Figure {
  readonly value: number;
  readonly system: System;
  readonly gauge: boolean;
}

/** By the figures of the text that are this value; where none is (a distance between two places), by the unit of the file. */
export function systemsOf(text: string, value: number, key: string): Typed {
  const same = figuresIn(text, key).filter((f) => Math.abs(f.value / value - 1) <= 0.02);
  const [, unit] = /\bunits: (ft|m)\b/.exec(text) ?? [];
  const ofFile: readonly System[] = unit === 'ft' ? ['us'] : unit === 'm' ? ['si'] : [];
  return {
    systems: new Set(same.length > 0 ? same.map((f) => f.system) : ofFile),
    gauge: same.some((f) => f.gauge),
  };
}

/** The unit systems in which a text has a figure within a tenth of this value. */
export function typedNear(text: string, value: number, key: string): ReadonlySet<System> {
  const near = figuresIn(text, key).filter((f) => Math.abs(f.value / value - 1) <= 0.1);
  return new Set(near.map((f) => f.system));
}

const figuresIn = (text: string, key: string): readonly Figure[] =>
  key.endsWith('M2') ? areasIn(text) : lengthsIn(text);

const number = String.raw`(\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?)`;

function lengthsIn(text: string): readonly Figure[] {
  return [...text.matchAll(new RegExp(String.raw`${number} ?(um|mm|cm|mil|in|ft|m)\b`, 'g'))].map(([, n, unit]) => {
    const [system, factor] = lengths[unit!]!;
    return { value: figure(n!) * factor, system, gauge: false };
  });
}

function areasIn(text: string): readonly Figure[] {
  const plain = [...text.matchAll(new RegExp(String.raw`${number} ?(mm2|cm2|m2|kcmil|sq in|sq ft)(?!\w)`, 'g'))].map(
    ([, n, unit]): Figure => {
      const [system, factor] = areas[unit!]!;
      return { value: figure(n!) * factor, system, gauge: false };
    },
  );
  const gauges = [...text.matchAll(/(\d+(?:\/0)?) AWG/g)].map(
    ([, n]): Figure => ({ value: gaugeM2(n!), system: 'us', gauge: true }),
  );
  const rounds = [...text.matchAll(new RegExp(`round ${number} ?(mm|in)`, 'g'))].map(([, n, unit]): Figure => {
    const [system, factor] = lengths[unit!]!;
    return { value: (Math.PI / 4) * (figure(n!) * factor) ** 2, system, gauge: false };
  });
  return [...plain, ...gauges, ...rounds, ...productsIn(text)];
}

/** A strap or a plate: width by thickness, or two sides. */
function productsIn(text: string): readonly Figure[] {
  const sides = lengthsIn(text);
  return sides.slice(1).map((b, i) => ({ value: sides[i]!.value * b.value, system: b.system, gauge: false }));
}

function figure(text: string): number {
  return text.split(' ').reduce((sum, part) => {
    const [a, b = 1] = part.split('/').map(Number);
    return sum + a! / b;
  }, 0);
}

/** ASTM B258: d = 0.127 mm x 92^((36 - n)/39). */
function gaugeM2(name: string): number {
  const n = name.endsWith('/0') ? 1 - Number(name.slice(0, -2)) : Number(name);
  return (Math.PI / 4) * (0.127e-3 * 92 ** ((36 - n) / 39)) ** 2;
}
