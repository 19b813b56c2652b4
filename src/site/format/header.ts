import { type IdSection, refuse } from '../reading/report.ts';
import { partSections } from '../site.ts';
import { agreementFields } from './agreement.ts';
import { list, listOfKnown, mapped, record, recordOr } from './collections.ts';
import { thingSections } from './common-fields.ts';
import { supplyWords } from './equipment.ts';
import { type FieldType, field, textOf } from './field.ts';
import { lines } from './lines.ts';
import { id, jointOrPoint } from './points.ts';
import { quantity } from './quantity.ts';
import { answer, date, oneOf, text } from './words.ts';

export const sectionNames = ['soil', 'buildings', 'places', ...partSections, 'states', 'readings', 'prices'] as const;

const regions = ['us', 'ca', 'iec', 'uk', 'au'] as const;

const serviceSections: readonly IdSection[] = ['equipment', 'bars', 'electrodes'];
const serviceId = id(serviceSections);

const service: FieldType<string> = {
  schema: { type: 'string' },
  expects: 'the id of the service panel, main bar or electrode, or none',
  read: (node, spot) => (node.is === 'text' && node.text.trim() === 'none' ? 'none' : serviceId.read(node, spot)),
};

const angle = quantity('angle', { signed: true });

/** Degrees, with or without the unit. */
const degrees: FieldType<number> = {
  schema: { type: ['number', 'string'] },
  expects: 'degrees, such as 12 deg',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'degrees, such as 12 deg');
    if (typed === null) return null;
    if (/^-?\d{1,3}(?:\.\d+)?$/.test(typed)) return Number(typed);
    const read = angle.read(node, spot);
    if (read === null) return null;
    const one = (read.low + read.high) / 2;
    return Number.isFinite(one) ? one : refuse(spot, node.at, 'coordinate-open', { text: typed });
  },
};

const code = recordOr(
  record({
    document: field(text(), 'Name of the code or standard.'),
    edition: field(text(), 'Its edition or year.'),
    amendments: field(text(), 'Local amendments.'),
  }),
  mapped(text(), (document) => ({ document, edition: null, amendments: null })),
);

const prepared = record({
  by: field(text(), 'Who prepared the file.'),
  for: field(text(), 'Who reads the report.'),
  date: field(date, 'Day that it was prepared.'),
});

const agreement = record(agreementFields(jointOrPoint([...thingSections, 'guys', 'buildings', 'plugs'])));

export const headerFields = {
  name: field(text(), 'Name of the site, as the report prints it.'),
  region: field(oneOf(regions), 'Whose codes and words: us, ca, iec, uk, au.'),
  units: field(oneOf(['ft', 'm']), 'Unit of bare numbers, and the one that is printed first.'),
  service: field(service, 'The panel, bar or electrode at which the power service is grounded; none: no service.'),
  supply: field(oneOf(supplyWords), 'How the supply is earthed: us-grounded, tn-s, tn-c-s, tt.'),
  code: field(list(code), 'The code that applies, with its edition; one or several.'),
  codes: field(
    listOfKnown(oneOf(regions)),
    'Whose conditions are asked where they are not the region’s alone; several give a column each.',
  ),
  prepared: field(prepared, 'By whom, for whom and when the file was prepared.'),
  address: field(text(), 'Address of the site.'),
  owner: field(text(), 'Whose site it is.'),
  permit: field(text(), 'Number of a permit.'),
  revision: field(text(), 'Revision of the file.'),
  north: field(degrees, 'Degrees from up on the plan to north, clockwise.'),
  claims: field(text(), 'A lightning protection class that somebody claims.'),
  standard: field(text(), 'A file with the limits of the owner or landlord.'),
  incomplete: field(listOfKnown(oneOf(sectionNames)), 'Sections that hold only some of what is there.'),
  without: field(listOfKnown(oneOf(Object.keys(lines.kinds))), 'Kinds of line that do not come in.'),
  certificate: field(text(), 'Who installed the lightning protection that is claimed, and its certificate.'),
  temporary: field(answer, 'Whether it is a field station.'),
  storm_plan: field(answer, 'Whether a field station has a plan to stop, lower and leave before a storm.'),
  services_located: field(answer, 'Whether buried pipes and cables were located before digging or driving.'),
  agreed: field(listOfKnown(agreement), 'Findings that were agreed to stand, with the reason.'),
  agreed_in: field(text(), 'A file beside this one with findings that were agreed to stand.'),
  note: field(text(), 'Anything worth knowing.'),
  photo: field(listOfKnown(text()), 'File names of photographs.'),
};
