import type { Study, StudyCondition, StudyFinding, StudySource } from '../../src/study/study.ts';

export const memory = (document: string, edition: string | null, clause: string | null): StudySource => ({
  document,
  edition,
  clause,
  provenance: 'memory',
});
export const ours: StudySource = { document: 'evenground', edition: null, clause: null, provenance: 'ours' };

const nec = (clause: string) => memory('NFPA 70', '2020', clause);

export function finding(
  rule: string,
  at: readonly string[],
  title: string,
  rest: Partial<StudyFinding> & { readonly why: string },
): StudyFinding {
  const { why, ...others } = rest;
  return {
    id: at.length === 0 ? rule : `${rule}:${at.join('+')}`,
    rule,
    family: 'code',
    codeSet: 'us',
    severity: 'defect',
    outcome: 'not met',
    at,
    under: null,
    title,
    because: { key: 'typed', values: {}, text: why },
    measured: null,
    source: ours,
    remedy: '',
    agreed: null,
    ...others,
  };
}

export const clubFindings: readonly StudyFinding[] = [
  finding(
    'all-electrodes-one-system',
    ['E-shack'],
    'Grounding electrode E-shack is not bonded to the system of the service',
    {
      severity: 'hazard',
      why: 'No permanent metal joins E-shack to the service.',
      source: nec('250.50'),
      remedy:
        'Run a bonding conductor outside the building from E-shack to the grounding electrode system of the service.',
    },
  ),
  finding(
    'outlet-ground-not-lightning-ground',
    ['entry'],
    'A power cord is the only tie between entry and the service',
    {
      severity: 'hazard',
      family: 'practice',
      under: 'all-electrodes-one-system:E-shack',
      why: 'The only way from entry to the service is the cord of hf-radio.',
      remedy: 'Bond entry to the service outside the building.',
    },
  ),
  finding('separation', ['gas', 'c8'], 'gas stands closer to c8 than a strike jumps', {
    severity: 'hazard',
    family: 'strike',
    why: 'At the assumed strike the voltage between the two exceeds what the gap holds.',
    measured: { value: 0.4, unit: 'm', limit: 1.2, text: '1.3 ft (0.4 m); at least 3.94 ft (1.2 m) is asked' },
    source: memory('IEC 62305-3', '2010', '6.3'),
    remedy:
      'Bond the gas pipe at its entry to the system of the service, by the gas supplier or a licensed electrician.',
  }),
  finding('rod-spacing-effective', ['tower-rods'], 'The rods of tower-rods stand too close to help one another', {
    severity: 'advice',
    family: 'practice',
    why: 'Rods closer than their own length share the same soil.',
    measured: {
      value: { low: 4.8, high: 4.9 },
      unit: 'm',
      limit: 4.88,
      text: '15.7 to 16.1 ft (4.8 to 4.9 m); at least 16 ft (4.88 m) is asked',
    },
    source: { document: 'IEEE Std 142', edition: '2007', clause: '4.2', provenance: 'second-hand' },
    remedy: 'Drive further rods at least two lengths away.',
  }),
  finding('joint-method-allowed', ['clamp2'], 'The joint clamp2 is of a kind that is not accepted', {
    why: 'A hose clamp loosens and corrodes in soil.',
    source: nec('250.8'),
    remedy: 'Replace it by a clamp that is listed for direct burial, or by an exothermic weld.',
  }),
  finding('clamp-listed-for-burial', ['clamp2'], 'clamp2 is not marked for burial', {
    under: 'joint-method-allowed:clamp2',
    why: 'The clamp is in soil and carries no mark.',
    source: nec('250.70'),
    remedy: 'Use a clamp that is listed for direct burial.',
  }),
  finding('mast-ground-size', ['mast-east'], 'mast-east is not grounded', {
    why: 'Nothing but the shield of line3 leads away from it.',
    source: { document: 'NFPA 70', edition: '2020', clause: '810.15', provenance: 'read' },
    remedy: 'Run at least 10 AWG (5.26 mm²) copper to a grounding electrode that is bonded to the service.',
  }),
  finding('no-orphan-equipment', ['rotator-box'], 'rotator-box is bonded to nothing', {
    severity: 'advice',
    family: 'practice',
    why: 'Its case hangs on the control line alone.',
    remedy: 'Bond it to station-bar.',
    agreed: { reason: 'to be replaced this winter', by: 'station committee', date: '2026-04-30' },
  }),
  finding('ring-is-closed', ['ring'], 'The ground ring is closed', {
    outcome: 'met',
    why: 'It was typed as closed.',
    source: nec('250.52(A)(4)'),
  }),
  finding('clamp-listed-for-burial', ['clamp1'], 'Clamps in soil are listed for burial', {
    outcome: 'cannot tell',
    why: 'The file does not say whether clamp1 is listed.',
    source: nec('250.70'),
    remedy: 'Read the marking on clamp1.',
  }),
  finding('telephone-protector-bonded', ['phone-block'], 'The telephone protector is bonded', {
    outcome: 'cannot tell',
    severity: 'hazard',
    why: 'Nobody knows whether phone-block is bonded.',
    source: nec('800.100'),
    remedy: 'Look for the conductor from phone-block to isb.',
  }),
  finding('arrester-bonded', ['phone-block'], 'Every arrester is bonded', {
    outcome: 'cannot tell',
    why: 'Nobody knows whether phone-block is bonded.',
    source: nec('810.20'),
    remedy: 'Look for the conductor from phone-block to isb.',
  }),
];

function condition(
  rule: string,
  title: string,
  outcome: StudyCondition['outcome'],
  rest: Partial<StudyCondition> = {},
): StudyCondition {
  const count = (is: StudyCondition['outcome']) => (outcome === is ? 1 : 0);
  const counts = { met: count('met'), notMet: count('not met'), cannotTell: count('cannot tell') };
  return {
    rule,
    family: 'code',
    codeSet: 'us',
    severity: 'defect',
    title,
    source: ours,
    outcome,
    because: '',
    ...counts,
    ...rest,
  };
}

export const clubConditions: Study['conditions'] = [
  condition(
    'all-electrodes-one-system',
    'Every grounding electrode belongs to one bonded system with the service',
    'not met',
    { severity: 'hazard', notMet: 3, met: 2, cannotTell: 1, source: nec('250.50') },
  ),
  condition(
    'outlet-ground-not-lightning-ground',
    'Nothing outdoors hangs on the service by a power cord’s equipment grounding conductor alone',
    'not met',
    { family: 'practice' },
  ),
  condition('neutral-bonded-once', 'The neutral (grounded conductor) is bonded once', 'met', { source: nec('250.24') }),
  condition('guy-anchor-grounded', 'Every guy anchor is grounded', 'not looked at', {
    because: 'No guy was typed.',
    family: 'practice',
  }),
  condition('iec-mast-earthed', 'Masts reach the system of the service', 'not applicable', {
    codeSet: 'iec',
    because: 'Asked in IEC only.',
  }),
  condition('joint-method-allowed', 'Every joint is of an accepted kind', 'not met', { source: nec('250.8') }),
  condition('clamp-listed-for-burial', 'Clamps in soil are listed for burial', 'not met', {
    notMet: 1,
    cannotTell: 1,
    source: nec('250.70'),
  }),
  condition('telephone-protector-bonded', 'The telephone protector is bonded', 'cannot tell', {
    severity: 'hazard',
    source: nec('800.100'),
  }),
  condition('arrester-bonded', 'Every arrester is bonded', 'cannot tell', { met: 5, source: nec('810.20') }),
  condition('mast-ground-size', 'Masts are grounded by a conductor of sufficient size', 'not met', {
    met: 1,
    source: nec('810.15'),
  }),
  condition('ring-is-closed', 'The ground ring is closed', 'met', { source: nec('250.52(A)(4)') }),
  condition('rod-spacing-effective', 'Rods stand far enough apart to help one another', 'not met', {
    severity: 'advice',
    family: 'practice',
  }),
  condition('separation', 'Other metal stands clear of lightning paths', 'not met', {
    family: 'strike',
    severity: 'hazard',
  }),
  condition('no-orphan-equipment', 'Every box is bonded', 'not met', { severity: 'advice', family: 'practice' }),
];
