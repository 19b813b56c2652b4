import { jointNames } from '../../materials/joints.ts';
import { readWire, type Wire } from '../../materials/wire.ts';
import type { Material } from '../work.ts';

export type MaterialKind = 'conductor' | 'rod' | 'joint' | 'protector' | 'other';

/** A conductor whose size an electrician says. */
const protective = /\b(?:equipment grounding|protective) conductor\b/i;

/** What a material counts as in a list. */
export function materialKind({ name, unit }: Pick<Material, 'name' | 'unit'>): MaterialKind {
  if (unit === 'm') return wireNamed(name) === null && !protective.test(name) ? 'other' : 'conductor';
  if (isJoint(name)) return 'joint';
  if (/\brods?\b(?! (?:coupl|cap|stud|tip|head))/i.test(name)) return 'rod';
  return /\b(?:tube|protector|arrester|stub|dc-blocked|mov|gap|surge)\b/i.test(name) ? 'protector' : 'other';
}

/** The wire that a name stands for; conduit carries wires and is none. */
export function wireNamed(name: string): Wire | null {
  const read = readWire(name.replace(/\btape\b/gi, 'strap'));
  return read.ok && read.wire.form !== 'conduit' ? read.wire : null;
}

function isJoint(name: string): boolean {
  const plain = name.toLowerCase();
  if (/\b(?:clamp|weld|lug|crimp|splice|connector|jumper)s?\b/.test(plain)) return true;
  return jointNames.some((j) => j !== 'none' && plain.includes(j.toLowerCase()));
}
