import type { SurgeDevice } from '../../src/surge/device.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import type { Wave } from '../../src/surge/wave.ts';

/** A network under a stroke, and the name that its nodes and elements bear. */
export interface NamedNetwork {
  readonly name: string;
  readonly network: SurgeNetwork;
  readonly into: number;
  readonly devices?: readonly TimedDevice[];
}

/** A gap, and when it closes; null: never. */
export interface TimedDevice {
  readonly device: SurgeDevice;
  readonly closesAtS: number | null;
}

/** Several networks, each under the same wave, as one circuit with one earth. Steps are at most `stepS` long. */
export function ngspiceNetlist(
  networks: readonly NamedNetwork[],
  wave: Wave,
  untilS: number,
  stepS: number,
  options = 'reltol=1e-6 abstol=1e-3 vntol=1e-3 chgtol=1e-9',
): string {
  return [
    'networks of resistances and coupled inductances under one stroke',
    `Bwave wave 0 V = ${waveFormula(wave)}`,
    'Rwave wave 0 1',
    ...networks.flatMap(elements),
    `.options method=trap ${options}`,
    `.tran ${stepS} ${untilS} 0 ${stepS} uic`,
    '.end',
    '',
  ].join('\n');
}

/** Name of a node's voltage in the answer. */
export function nodeVector({ name }: NamedNetwork, node: number): string {
  return `v(${name}_${node})`;
}

/** Name of a branch's current in the answer. */
export function branchVector({ name }: NamedNetwork, branch: number): string {
  return `i(vb${name}_${branch})`;
}

/** Each branch with a voltage source of 0 V that shows its current. */
function elements({ name, network, into, devices = [] }: NamedNetwork): readonly string[] {
  const { branches, mutualH, earth } = network;
  const lines = [`Gs${name} 0 ${name}_${into} wave 0 1`];
  branches.forEach(({ from, to, resistanceOhm, inductanceH }, i) => {
    const [at, own] = [`${name}_${i}`, `${name}_b${i}`];
    lines.push(`Vb${at} ${name}_${from} ${own}a 0`);
    const end = `${name}_${to}`;
    const middle = inductanceH > 0 ? (resistanceOhm > 0 ? `${own}m` : `${own}a`) : end;
    if (resistanceOhm > 0) lines.push(`Rb${at} ${own}a ${middle} ${resistanceOhm}`);
    if (inductanceH > 0) lines.push(`Lb${at} ${middle} ${end} ${inductanceH} ic=0`);
  });
  if (mutualH !== null) lines.push(...couplings(name, branches.length, mutualH));
  return [...lines, ...electrodes(name, earth), ...devices.flatMap((device, d) => deviceElements(name, device, d))];
}

function couplings(name: string, count: number, mutualH: Float64Array): readonly string[] {
  const lines: string[] = [];
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      const share = mutualH[i * count + j]! / Math.sqrt(mutualH[i * (count + 1)]! * mutualH[j * (count + 1)]!);
      if (share !== 0 && Number.isFinite(share))
        lines.push(`K${name}_${i}_${j} Lb${name}_${i} Lb${name}_${j} ${share}`);
    }
  }
  return lines;
}

/** Name of a device's current in the answer. */
export function deviceVector({ name }: NamedNetwork, device: number): string {
  return `i(vd${name}_${device})`;
}

/** A gap closes at a time that is given, within a tenth of a nanosecond. A varistor of two points: a power law. */
function deviceElements(name: string, { device, closesAtS }: TimedDevice, d: number): readonly string[] {
  const [from, to] = [`${name}_${device.from}`, device.to === null ? '0' : `${name}_${device.to}`];
  const [at, own] = [`${name}_${d}`, `${name}_d${d}`];
  const sense = `Vd${at} ${from} ${own} 0`;
  const volts = `V(${own},${to})`;
  if (device.kind === 'gap') {
    if (closesAtS === null) return [sense, `Rd${at} ${own} ${to} 1e9`];
    // to the sixth: at a tenth of an ohm a hundredth of it would carry kiloamperes already
    const share = `pow(0.5+0.5*tanh((time-${closesAtS})/5e-11),6)`;
    return [
      sense,
      `Rd${at} ${own} ${to} 1e9`,
      `Bd${at} ${own} ${to} I=(${volts}-${device.arcV})/${device.slopeOhm}*${share}`,
    ];
  }
  const [a, b] = device.points as readonly [(typeof device.points)[number], (typeof device.points)[number]];
  const power = Math.log(b.currentA / a.currentA) / Math.log(b.volts / a.volts);
  return [sense, `Bd${at} ${own} ${to} I=sgn(${volts})*${a.currentA}*pow(abs(${volts})/${a.volts},${power})`];
}

/** What one electrode feels of another's current is a voltage source that the other's current steers. */
function electrodes(name: string, { nodes, resistanceOhm }: SurgeNetwork['earth']): readonly string[] {
  return nodes.flatMap((node, i) => {
    const row = resistanceOhm[i]!;
    const own = typeof row === 'number' ? row : row[i]!;
    const others = typeof row === 'number' ? [] : row.map((ohm, j) => [j, ohm] as const).filter(([j]) => j !== i);
    const felt = others.map(([j, ohm], k) => {
      const [from, to] = [k, k + 1].map((n) => (n === others.length ? '0' : `${name}_e${i}f${n}`));
      return `He${name}_${i}_${j} ${from} ${to} Ve${name}_${j} ${ohm}`;
    });
    const foot = others.length === 0 ? '0' : `${name}_e${i}f0`;
    return [`Ve${name}_${i} ${name}_${node} ${name}_e${i} 0`, `Re${name}_${i} ${name}_e${i} ${foot} ${own}`, ...felt];
  });
}

/** Written anew from the definitions of the waves, not from our own functions. */
function waveFormula(wave: Wave): string {
  switch (wave.kind) {
    case 'heidler': {
      const x = `pow(time/${wave.tau1S},${wave.n})`;
      return `${wave.peakA / wave.k}*${x}/(1+${x})*exp(-time/${wave.tau2S})`;
    }
    case 'double-exponential':
      return `${wave.factor * wave.peakA}*(1-exp(-time/${wave.frontS}))*exp(-time/${wave.tailS})`;
    case 'cubed-exponential':
      return `${wave.factorPerS3 * wave.peakA}*time*time*time*exp(-time/${wave.tauS})`;
    case 'damped-sine':
      return `${wave.factor * wave.peakA}*exp(-time/${wave.tauS})*sin(${wave.omegaPerS}*time)`;
  }
}
