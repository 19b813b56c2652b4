import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import type { Wave } from '../../src/surge/wave.ts';
import { wave0p25x100, wave1p2x50, wave1x200, wave8x20, wave10x350 } from '../../src/surge/wave-presets.ts';
import type { LightningCase } from './lightning-cases.ts';

export interface CaseNetwork {
  readonly network: SurgeNetwork;
  readonly nodes: readonly string[];
  readonly names: readonly string[];
}

export function caseNetwork({ branches, electrodes }: Pick<LightningCase, 'branches' | 'electrodes'>): CaseNetwork {
  const wires = branches.split('; ').map((text) => {
    const [name, ends, milliohm, microhenry] = text.split(' ');
    const [from, to] = ends!.split('-');
    return {
      name: name!,
      from: from!,
      to: to!,
      resistanceOhm: Number(milliohm) * 1e-3,
      inductanceH: Number(microhenry) * 1e-6,
    };
  });
  const rods = electrodes.split(', ').map((text) => ({ node: text.split(' ')[0]!, ohm: Number(text.split(' ')[1]) }));
  const nodes = [...new Set([...wires.flatMap((w) => [w.from, w.to]), ...rods.map((r) => r.node)])];
  const at = (node: string) => nodes.indexOf(node);
  const network: SurgeNetwork = {
    nodeCount: nodes.length,
    branches: wires.map((w) => ({
      from: at(w.from),
      to: at(w.to),
      resistanceOhm: w.resistanceOhm,
      inductanceH: w.inductanceH,
    })),
    mutualH: null,
    earth: { nodes: rods.map((r) => at(r.node)), resistanceOhm: rods.map((r) => r.ohm) },
  };
  return { network, nodes, names: wires.map((w) => w.name) };
}

export function caseWave({ wave, peakA }: Pick<LightningCase, 'wave' | 'peakA'>): Wave {
  if (wave === 'first positive') return wave10x350(peakA);
  if (wave === 'first negative') return wave1x200(peakA);
  if (wave === 'subsequent') return wave0p25x100(peakA);
  return wave === '8/20' ? wave8x20(peakA) : { ...wave1p2x50(peakA) };
}
