import type { Dimension } from '../../units/dimension.ts';
import { arresters } from '../format/arresters.ts';
import { listOfKnown, mapped } from '../format/collections.ts';
import { electrodes } from '../format/electrodes.ts';
import { type Field, type Fields, type FieldType, field } from '../format/field.ts';
import { jointKind } from '../format/joint-uses.ts';
import { metal } from '../format/material-types.ts';
import { oneOf, text } from '../format/words.ts';
import { kindIn } from './kind-type.ts';
import { type Limit, limit } from './limit-type.ts';
import { type OwnCondition, type OwnSubject, ownSubjects } from './owner-standard.ts';

export const severities = ['hazard', 'defect', 'advice'] as const;

/** The keys of the file beside its groups, and the groups. */
export const standardFields = {
  name: field(text(), 'Name of the standard, as findings cite it; left out: the name of the file.'),
  edition: field(text(), 'Its edition or year.'),
} satisfies Fields;
export const standardGroups = {
  limits: 'Limits of the owner’s own, each under a name of its own.',
  rules: 'Rules of the pack as the owner asks them, each under its name.',
} as const;
export const noteFields = {
  note: field(text(), 'Anything worth knowing; it is not read further.'),
} satisfies Fields;

/** What a limit of the owner’s own is of. */
export const subjectFields = {
  of: field(oneOf(ownSubjects), `What it is asked of: ${ownSubjects.join(', ')}.`),
} satisfies Fields;

type ConditionField = Field<(name: string) => OwnCondition>;

/** A field whose limit is of a figure, in the unit that `key` ends in. */
function figure(key: string, dimension: Dimension, says: string): ConditionField {
  const type: FieldType<Limit> = limit(dimension);
  return field(
    mapped(
      type,
      ({ sense, value }) =>
        (name: string): OwnCondition => ({ is: 'figure', field: name, key, sense, value }),
    ),
    says,
  );
}

function words(type: FieldType<string>, says: string): ConditionField {
  return field(
    mapped(
      listOfKnown(type),
      (all) =>
        (name: string): OwnCondition => ({ is: 'word', field: name, words: all }),
    ),
    says,
  );
}

const metals = mapped(metal, (m) => m.name);
const yes = oneOf(['yes']);

const ofConductors = {
  wire: figure('areaM2', 'area', 'Its section, such as at least 2 AWG or at least 35 mm2.'),
  length: figure('lengthM', 'length', 'How long it may be, such as at most 3 ft.'),
  metal: words(metals, 'Metals that are allowed.'),
};
const ofJoints = {
  kind: words(jointKind, 'Kinds that are allowed.'),
  bolts: figure('bolts', 'number', 'How many bolts or holes, such as at least 2.'),
  resistance: figure('resistanceOhm', 'resistance', 'Its resistance, such as at most 1 mohm.'),
  listed: words(yes, 'Whether it has to be listed.'),
};
const ofElectrodes = {
  kind: words(kindIn(electrodes), 'Kinds that are allowed.'),
  metal: words(metals, 'Metals that are allowed.'),
  length: figure('rodLengthM', 'length', 'Its length, such as at least 10 ft.'),
  diameter: figure('diameterM', 'length', 'Its diameter, such as at least 5/8 in.'),
  resistance: figure('resistanceOhm', 'resistance', 'What it has alone, such as at most 10 ohm.'),
};
const ofArresters = {
  kind: words(kindIn(arresters), 'Kinds that are allowed.'),
  lead: figure('leadM', 'length', 'Its lead to ground, such as at most 1 ft.'),
  listed: words(yes, 'Whether it has to be listed.'),
};
const ofSite = { resistance: figure('resistanceOhm', 'resistance', 'Of the whole, such as at most 5 ohm.') };

/** What can be asked of each subject. */
export const conditionFields: Readonly<Record<OwnSubject, Readonly<Record<string, ConditionField>>>> = {
  conductors: ofConductors,
  'conductors between bars': ofConductors,
  'conductors to electrodes': ofConductors,
  'mast leads': ofConductors,
  joints: ofJoints,
  'joints on bars': ofJoints,
  'joints on electrodes': ofJoints,
  electrodes: ofElectrodes,
  rods: ofElectrodes,
  arresters: ofArresters,
  site: ofSite,
};

/** Beside what is asked: how bad it is, and the owner's own words. */
export const wordFields = {
  severity: field(oneOf(severities), 'How bad it is where it is not met: hazard, defect or advice; default defect.'),
  because: field(text(), 'Why it is asked, in the owner’s words.'),
  remedy: field(text(), 'How it is put right, in the owner’s words.'),
} satisfies Fields;

/** Of a rule of the pack: the owner's limit, read by the figure of the rule, and the owner's words. */
export const ruleLimitFields = {
  limit: 'Limit of the owner in place of that of the rule, such as at least 2 AWG or at most 0.5 m.',
} as const;
export const ruleWordFields = {
  severity: field(oneOf(severities), 'How bad it is where it is not met; left out: as the rule has it.'),
  because: wordFields.because,
} satisfies Fields;
